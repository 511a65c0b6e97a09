import type { TopicRule } from '../../daemon/contract/topic-rule.ts';
import { useSending } from '../forms/use-sending.ts';
import { WriteFrame } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

interface RuleListProps {
  rules: readonly TopicRule[];
  onChange: (rule: TopicRule) => void;
  onGone: (said: string) => void;
}

/** The rules in the order in which they are asked. */
export function RuleList({ rules, onChange, onGone }: RuleListProps) {
  const { list } = useReader().words.topics;
  if (rules.length === 0) return <p class="quiet">{list.none}</p>;
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
  const { things, topics } = useReader().words;
  const { list } = topics;
  const sending = useSending();
  async function remove(): Promise<void> {
    const gone = await sending.send(() => api.call('removeTopicRule', { params: { id: rule.id } }));
    if (gone !== null) onGone(list.gone(rule.pattern));
  }
  const brings = rule.values.map(({ quantity }) => things.quantitiesWithin[quantity]);
  return (
    <li class="rule">
      <h3>
        <code>{rule.pattern}</code>
      </h3>
      <p class="sensor-latest">
        <span>
          {brings.length > 0
            ? list.brings(topics.payloads[rule.payload], brings.join(', '))
            : topics.payloads[rule.payload]}
        </span>
        <span>{list.ofSensor(<code>{rule.sensor}</code>)}</span>
      </p>
      {hiddenBy !== null && <p class="field-fault">{list.hiddenBy(<code>{hiddenBy}</code>)}</p>}
      <WriteFrame problem={sending.problem} busy={sending.busy} onSend={remove}>
        <div class="action-row">
          <button type="button" class="button" onClick={onChange}>
            {list.change}
          </button>
          <button type="submit" class="button button-quiet">
            {list.takeAway}
          </button>
        </div>
      </WriteFrame>
    </li>
  );
}
