import type { LastStartReply, PlanAhead } from '../../daemon/contract/plan-ahead.ts';
import { listLine } from '../format/lists.ts';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { lastStartLine } from './last-start.ts';

interface LastStartsProps {
  plan: PlanAhead;
  placeName: (id: string) => string;
}

/** By when each coat must be begun to cure before the cold; what has one answer stands together. */
export function LastStarts({ plan, placeName }: LastStartsProps) {
  const { words, calendar, locale } = useReader();
  const ownName = useOwnName();
  const { winter } = words.ahead;
  if (plan.lastStarts.length === 0) return <p class="quiet">{winter.noCoat}</p>;
  const nameOf = (batchId: string | null) =>
    plan.batches.find((batch) => batch.batchId === batchId)?.name || winter.askedAbout;
  return (
    <ul class="last-starts">
      {grouped(plan.lastStarts, (start) => lastStartLine(start, winter, calendar)).map(
        ([line, starts]) => (
          <li key={line} class={`last-start last-start-${starts[0]?.answer}`}>
            <p class="last-start-words">{line}</p>
            <ul class="last-start-coats">
              {grouped(starts, (start) =>
                winter.coatAt(ownName(start.name), placeName(start.placeId)),
              ).map(([what, of]) => (
                <li key={what}>
                  {winter.coatOf(
                    what,
                    listLine(
                      of.map((start) => nameOf(start.batchId)),
                      locale,
                    ),
                  )}
                </li>
              ))}
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
