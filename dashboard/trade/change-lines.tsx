import type { GateChange } from '../../daemon/contract/coat.ts';
import { changeLine } from '../format/changes.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

/** What a touch test changed, one line a job. */
export function ChangeLines({ changed }: { changed: readonly GateChange[] }) {
  const { live } = useShed();
  const { words, calendar } = useReader();
  if (changed.length === 0) return <p>{words.trade.change.nothing}</p>;
  return (
    <ul class="change-lines">
      {changed.map((change) => (
        <li key={change.gate}>{changeLine(change, live.now.peek(), calendar, words)}</li>
      ))}
    </ul>
  );
}
