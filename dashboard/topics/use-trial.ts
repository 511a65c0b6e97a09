import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { RuleTrialReply } from '../../daemon/contract/found-topic.ts';
import type { TopicRuleDraft } from '../../daemon/contract/topic-rule.ts';
import type { Api } from '../api.ts';

/** After the last key, ms: whoever types is not interrupted. */
const QUIET_MS = 350;
/** New messages are tried as well, ms. */
const AGAIN_MS = 4000;

/**
 * Tries a rule against the last messages while it is being written.
 *
 * @param id - of the rule that it replaces; null for a new one
 * @param may - false where the daemon would ask for a log-in
 * @returns the last answer, and how to tell that the rule has changed
 */
export function useTrial(api: Api, id: string | null, may: boolean) {
  const [trial, setTrial] = useState<RuleTrialReply | null>(null);
  const draft = useRef<TopicRuleDraft | null>(null);
  const waiting = useRef<ReturnType<typeof setTimeout> | null>(null);

  const ask = useCallback(async () => {
    const rule = draft.current;
    if (rule === null || !may) return;
    const outcome = await api.call('tryTopicRule', {
      body: { rule, ...(id === null ? {} : { id }) },
    });
    // An answer to what was typed before is of no use any more.
    if (draft.current === rule && outcome.kind === 'done') setTrial(outcome.reply);
  }, [api, id, may]);

  useEffect(() => {
    const trying = setInterval(() => void ask(), AGAIN_MS);
    return () => clearInterval(trying);
  }, [ask]);
  useEffect(
    () => () => {
      if (waiting.current !== null) clearTimeout(waiting.current);
    },
    [],
  );

  const changed = useCallback(
    (rule: TopicRuleDraft) => {
      draft.current = rule;
      if (waiting.current !== null) clearTimeout(waiting.current);
      waiting.current = setTimeout(() => void ask(), QUIET_MS);
    },
    [ask],
  );
  return { trial, changed };
}
