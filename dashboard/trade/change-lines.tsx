import type { GateChange } from '../../daemon/contract/coat.ts';
import { useShed } from '../shed-context.ts';
import { changeWords } from '../words/trade-words.ts';

/** What a touch test changed, one line a job. */
export function ChangeLines({ changed }: { changed: readonly GateChange[] }) {
  const { live, calendar } = useShed();
  if (changed.length === 0) return <p>It was expected so: nothing changed.</p>;
  return (
    <ul class="change-lines">
      {changed.map((change) => (
        <li key={change.gate}>{changeWords(change, live.now.peek(), calendar)}</li>
      ))}
    </ul>
  );
}
