import type { BatchSummary } from '../../daemon/contract/batch.ts';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';

/** All batches, the newest first, the closed ones too. */
export function BatchIndex({ batches }: { batches: readonly BatchSummary[] }) {
  const { words, calendar } = useReader();
  const { title, since, sinceClosed } = words.setup.batches;
  if (batches.length === 0) return null;
  const newest = [...batches].sort((a, b) => b.createdAt.localeCompare(a.createdAt));
  return (
    <section class="panel" aria-labelledby="index-title">
      <h2 id="index-title">{title}</h2>
      <ul class="batch-index">
        {newest.map((batch) => (
          <li key={batch.id}>
            <a href={batchAddress(batch.id)}>{batch.name}</a>
            <span>
              {(batch.closed ? sinceClosed : since)(
                words.things.boards(batch.boards.count),
                calendar.date(Date.parse(batch.createdAt)),
              )}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
