import type { BatchSummary } from '../../daemon/contract/batch.ts';
import { batchAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';

/** All batches, the newest first, the closed ones too. */
export function BatchIndex({ batches }: { batches: readonly BatchSummary[] }) {
  const { calendar } = useShed();
  if (batches.length === 0) return null;
  const newest = [...batches].sort((a, b) => b.createdAt.localeCompare(a.createdAt));
  return (
    <section aria-labelledby="index-title">
      <h2 id="index-title">All batches</h2>
      <ul class="batch-index">
        {newest.map((batch) => (
          <li key={batch.id}>
            <a href={batchAddress(batch.id)}>{batch.name}</a>
            <span>
              {batch.boards.count} boards, since {calendar.date(Date.parse(batch.createdAt))}
              {batch.closed ? ', closed' : ''}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
