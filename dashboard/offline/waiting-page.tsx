import type { Problem } from '../../daemon/contract/problem.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import type { Words } from '../words/words.ts';
import { WaitingEntry } from './waiting-entry.tsx';

/** What was entered here and is not sent yet, in the order in which it goes. */
export function WaitingPage() {
  const { outbox } = useShed();
  const { offline } = useReader().words;
  const entries = outbox.entries.value;
  const stoppedBy = outbox.stoppedBy.value;
  const behind = new Set<string>();
  return (
    <main class="page waiting">
      <h1>{offline.title}</h1>
      {!outbox.keeps.value && (
        <p class="why-closed" role="alert">
          {offline.keepsNothing}
        </p>
      )}
      {entries.length === 0 ? (
        <p>{offline.nothing}</p>
      ) : (
        <>
          <p>{offline.how}</p>
          {stoppedBy !== null && <p class="why-closed">{whyStopped(stoppedBy, offline)}</p>}
          <button
            type="button"
            class="button button-main button-thumb"
            onClick={() => void outbox.flush(true)}
          >
            {offline.sendNow}
          </button>
          <ol class="waiting-list">
            {entries.map((entry) => {
              const isHeldUp = entry.batchIds.some((id) => behind.has(id));
              if (entry.refused !== null) for (const id of entry.batchIds) behind.add(id);
              return <WaitingEntry key={entry.id} entry={entry} isHeldUp={isHeldUp} />;
            })}
          </ol>
        </>
      )}
    </main>
  );
}

function whyStopped({ code }: Problem, { why }: Words['offline']): string {
  if (code === 'AWAY' || code === 'UNREADABLE') return why.away;
  if (code === 'BC_LOGIN_NEEDED' || code === 'BC_ROLE_TOO_SMALL') return why.pin;
  return code === 'BC_WRITE_NOT_ALLOWED' ? why.notFromHere : why.otherwise;
}
