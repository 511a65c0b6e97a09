import type { TopicRule } from '../../daemon/contract/topic-rule.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useShed } from '../shed-context.ts';
import { quantityWords } from '../words/thing-words.ts';
import { payloadWords } from '../words/topic-words.ts';

interface RuleListProps {
  rules: readonly TopicRule[];
  onChange: (rule: TopicRule) => void;
  onGone: (said: string) => void;
}

/** The rules in the order in which they are asked. */
export function RuleList({ rules, onChange, onGone }: RuleListProps) {
  if (rules.length === 0) {
    return <p class="quiet">None yet. Sensors on the default topics need none.</p>;
  }
  return (
    <ol class="rule-list">
      {rules.map((rule) => (
        <RuleEntry
          key={rule.id}
          rule={rule}
          hiddenBy={rules.find(({ id }) => id === rule.hiddenBy)?.pattern ?? null}
          onChange={() => onChange(rule)}
          onGone={onGone}
        />
      ))}
    </ol>
  );
}

interface RuleEntryProps {
  rule: TopicRule;
  hiddenBy: string | null;
  onChange: () => void;
  onGone: (said: string) => void;
}

function RuleEntry({ rule, hiddenBy, onChange, onGone }: RuleEntryProps) {
  const { api } = useShed();
  const sending = useSending();
  async function remove(): Promise<void> {
    const gone = await sending.send(() => api.call('removeTopicRule', { params: { id: rule.id } }));
    if (gone !== null) onGone(`The rule for ${rule.pattern} is taken away; its readings stay.`);
  }
  const brings = rule.values.map(({ quantity }) => quantityWords[quantity].name.toLowerCase());
  return (
    <li class="rule">
      <h3>
        <code>{rule.pattern}</code>
      </h3>
      <p class="sensor-latest">
        <span>
          {payloadWords[rule.payload]}
          {brings.length > 0 && `: ${brings.join(', ')}`}
        </span>
        <span>
          of <code>{rule.sensor}</code>
        </span>
      </p>
      {hiddenBy !== null && (
        <p class="field-fault">
          It gets nothing: the rule for <code>{hiddenBy}</code> comes first and takes all its
          topics.
        </p>
      )}
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={remove}>
        <div class="action-row">
          <button type="button" class="button" onClick={onChange}>
            Change it
          </button>
          <button type="submit" class="button button-quiet">
            Take it away
          </button>
        </div>
      </WriteFrame>
    </li>
  );
}
