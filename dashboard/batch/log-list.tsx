import type { Batch } from '../../daemon/contract/batch.ts';
import { PaintersMoment } from '../painters-moment.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { logEntries } from './log-entries.ts';

/** Moves, touch tests, remarks and hand readings, the newest first. */
export function LogList({ batch }: { batch: Batch }) {
  const { live } = useShed();
  const reader = useReader();
  const { words } = reader;
  const { log } = words.batch;
  const names = new Map(live.overview.value?.places.map((place) => [place.id, place.name]) ?? []);
  const entries = logEntries(batch, (id) => names.get(id) ?? words.actions.move.somewhere, reader);
  return (
    <section class="log" aria-labelledby="log-title">
      <h2 id="log-title">{log.title}</h2>
      {entries.length === 0 ? (
        <p class="quiet">{log.nothing}</p>
      ) : (
        <ol class="log-list">
          {entries.map((entry) => (
            <li key={entry.id}>
              <span class="log-when">
                <PaintersMoment at={entry.at} />
              </span>
              <span>{entry.what}</span>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
