import type { Batch } from '../../daemon/contract/batch.ts';
import { useShed } from '../shed-context.ts';
import { logEntries } from './log-entries.ts';

/** Moves, touch tests, remarks and hand readings, the newest first. */
export function LogList({ batch }: { batch: Batch }) {
  const { live, calendar } = useShed();
  const names = new Map(live.overview.value?.places.map((place) => [place.id, place.name]) ?? []);
  const entries = logEntries(batch, (id) => names.get(id) ?? 'another place');
  return (
    <section class="log" aria-labelledby="log-title">
      <h2 id="log-title">What was recorded</h2>
      {entries.length === 0 ? (
        <p class="quiet">Nothing yet. A touch test teaches more than any table.</p>
      ) : (
        <ol class="log-list">
          {entries.map((entry) => (
            <li key={entry.id}>
              <time dateTime={new Date(entry.at).toISOString()}>{calendar.exact(entry.at)}</time>
              <span>{entry.what}</span>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
