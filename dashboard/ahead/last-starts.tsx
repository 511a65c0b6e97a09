import type { PlanAhead } from '../../daemon/contract/plan-ahead.ts';
import { useShed } from '../shed-context.ts';
import { lastStartWords } from '../words/ahead-words.ts';

/** By when each coat must be begun to cure before the cold. */
export function LastStarts({
  plan,
  placeName,
}: {
  plan: PlanAhead;
  placeName: (id: string) => string;
}) {
  const { calendar } = useShed();
  if (plan.lastStarts.length === 0) return <p class="quiet">No coat is to come.</p>;
  const name = (batchId: string | null) =>
    plan.batches.find((batch) => batch.batchId === batchId)?.name || 'the boards you asked about';
  return (
    <ul class="last-starts">
      {plan.lastStarts.map((start) => (
        <li key={`${start.batchId} ${start.coat}`} class={`last-start last-start-${start.answer}`}>
          <h3>
            {start.name}
            <small>
              {name(start.batchId)}, {placeName(start.placeId)}
            </small>
          </h3>
          <p>{lastStartWords(start, calendar)}</p>
        </li>
      ))}
    </ul>
  );
}
