import type { LastStartReply, PlanAhead } from '../../daemon/contract/plan-ahead.ts';
import { useShed } from '../shed-context.ts';
import { lastStartWords } from '../words/ahead-words.ts';

interface LastStartsProps {
  plan: PlanAhead;
  placeName: (id: string) => string;
}

/** By when each coat must be begun to cure before the cold; what has one answer stands together. */
export function LastStarts({ plan, placeName }: LastStartsProps) {
  const { calendar } = useShed();
  if (plan.lastStarts.length === 0) return <p class="quiet">No coat is to come.</p>;
  const nameOf = (batchId: string | null) =>
    plan.batches.find((batch) => batch.batchId === batchId)?.name || 'the boards you asked about';
  return (
    <ul class="last-starts">
      {grouped(plan.lastStarts, (start) => lastStartWords(start, calendar)).map(
        ([words, starts]) => (
          <li key={words} class={`last-start last-start-${starts[0]?.answer}`}>
            <p class="last-start-words">{words}</p>
            <ul class="last-start-coats">
              {grouped(starts, (start) => `${start.name} at ${placeName(start.placeId)}`).map(
                ([what, of]) => (
                  <li key={what}>
                    {what}: {of.map((start) => nameOf(start.batchId)).join(', ')}
                  </li>
                ),
              )}
            </ul>
          </li>
        ),
      )}
    </ul>
  );
}

function grouped(
  starts: readonly LastStartReply[],
  key: (start: LastStartReply) => string,
): [string, LastStartReply[]][] {
  const groups = new Map<string, LastStartReply[]>();
  for (const start of starts) groups.set(key(start), [...(groups.get(key(start)) ?? []), start]);
  return [...groups];
}
