import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { needsSomebody } from './entry.ts';

/** On every page while something that was entered here has not arrived. */
export function WaitingBar() {
  const { outbox, live } = useShed();
  const { unsent } = useReader().words;
  const now = live.deviceNow.value;
  // What is held for a moment to be taken back is told where it was entered.
  const entries = outbox.entries.value.filter(({ notBefore }) => notBefore <= now);
  const refused = entries.filter((entry) => entry.refused !== null).length;
  const waits = entries.length - refused;
  const stoppedBy = outbox.stoppedBy.value;
  if (entries.length === 0) {
    return outbox.keeps.value ? null : (
      <p class="unsent unsent-loud" role="alert">
        {unsent.keepsNothing}
      </p>
    );
  }
  return (
    <p class={refused > 0 ? 'unsent unsent-loud' : 'unsent'} role="status">
      <a href="#/waiting">
        {waits > 0 && <span>{unsent.waits(waits)}</span>}
        {waits > 0 && stoppedBy !== null && needsSomebody(stoppedBy) && (
          <span>{unsent.needsPin}</span>
        )}
        {refused > 0 && <strong>{unsent.refused(refused)}</strong>}
      </a>
    </p>
  );
}
