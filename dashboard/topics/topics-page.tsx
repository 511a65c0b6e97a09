import { useCallback, useEffect, useState } from 'preact/hooks';
import type { TopicRuleDraft } from '../../daemon/contract/topic-rule.ts';
import { mayTry, WhyClosed } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { FoundTopics } from './found-topics.tsx';
import { blankRule } from './rule-draft.ts';
import { RuleEditor } from './rule-editor.tsx';
import { RuleList } from './rule-list.tsx';

interface Edited {
  id: string | null;
  initial: TopicRuleDraft;
}

/** Topics beside the default ones: what was found, the rules, and a rule’s editor. */
export function TopicsPage({ from }: { from: string | null }) {
  const { api, live } = useShed();
  const { topics } = useReader().words;
  const rules = useReply(useCallback(() => api.call('listTopicRules', {}), [api]));
  const [edited, setEdited] = useState<Edited | null>(null);
  const [said, setSaid] = useState('');
  useEffect(() => {
    if (from === null) return;
    void api.call('foundTopics', {}).then((outcome) => {
      if (outcome.kind === 'problem') return;
      const found = outcome.reply.topics.find(({ topic }) => topic === from);
      setEdited({ id: null, initial: found?.suggestion ?? { ...blankRule, pattern: from } });
    });
  }, [api, from]);
  const overview = live.overview.value;
  if (overview === null) return <main class="page" />;
  const done = (news: string) => {
    setSaid(news);
    setEdited(null);
    rules.again();
  };
  return (
    <main class="page setup">
      <h1>{topics.title}</h1>
      <p class="prose topics-about">{topics.about}</p>
      {!mayTry(overview) && <WhyClosed />}
      <p class="action-said" role="status">
        {said}
      </p>
      {edited === null ? (
        <div class="setup-columns">
          <section class="panel" aria-labelledby="found-title">
            <h2 id="found-title">{topics.foundTitle}</h2>
            <FoundTopics overview={overview} />
          </section>
          <section class="panel" aria-labelledby="rules-title">
            <h2 id="rules-title">{topics.rulesTitle}</h2>
            {rules.replied.kind === 'there' && (
              <RuleList
                rules={rules.replied.reply}
                onChange={(rule) => setEdited({ id: rule.id, initial: draftOfRule(rule) })}
                onGone={done}
              />
            )}
            <p class="rule-new">
              <button
                type="button"
                class="button"
                onClick={() => setEdited({ id: null, initial: blankRule })}
              >
                {topics.writeNew}
              </button>
            </p>
          </section>
        </div>
      ) : (
        <section class="panel" aria-labelledby="editor-title">
          <h2 id="editor-title">{edited.id === null ? topics.newRule : topics.changeRule}</h2>
          <RuleEditor
            key={edited.id ?? edited.initial.pattern}
            overview={overview}
            initial={edited.initial}
            id={edited.id}
            onSaved={done}
          />
          <button type="button" class="button button-quiet" onClick={() => setEdited(null)}>
            {topics.leaveAsItWas}
          </button>
        </section>
      )}
    </main>
  );
}

function draftOfRule({
  pattern,
  sensor,
  payload,
  values,
  time,
}: Required<Pick<TopicRuleDraft, 'pattern' | 'sensor' | 'payload' | 'values'>> & {
  time: NonNullable<TopicRuleDraft['time']> | null;
}): TopicRuleDraft {
  return { pattern, sensor, payload, values, ...(time === null ? {} : { time }) };
}
