import type { LockUp } from '../contract/lock-up.ts';
import { toMoment } from '../contract/moment.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
import { placeOfBatch } from '../rules/batch.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { LockUpTickFact, NoticeFact } from '../rules/facts.ts';
import { nightAhead } from '../rules/hour-ahead.ts';
import { workingDay } from '../rules/local-time.ts';
import {
  coatingDayReasons,
  lineState,
  lockUpLines,
  lockUpWords,
  nightRisks,
} from '../rules/lock-up.ts';
import type { BatchAssessor } from './assess-batch.ts';
import type { AirAheadReader } from './hours-ahead.ts';
import type { SiteFacts } from './site-facts.ts';

/** A coat this young is caught wet by whatever comes, h. Common practice, no source: the first night. */
const wetForHours = 24;

interface LockUpParts {
  facts: () => SiteFacts;
  source: { notices(): NoticeFact[]; lockUpTicks(): LockUpTickFact[] };
  assess: Pick<BatchAssessor, 'coat'>;
  airAhead: AirAheadReader;
  limits: ApplicationLimits;
  timeZone: string;
}

/** What is to be seen to before the shed is left, and what the night may do to wet boards. */
export function lockUpList({ facts, source, assess, airAhead, limits, timeZone }: LockUpParts) {
  function tonight(now: number): LockUp['night'] {
    const { batches, coats, moves, places } = facts();
    const byPlace = new Map<string, { batchId: string; name: string }[]>();
    for (const batch of batches.values()) {
      const coat = coats.get(batch.id)?.at(-1);
      const placeId = placeOfBatch(moves.get(batch.id) ?? [], now);
      if (batch.closedAt !== null || !coat || placeId === null) continue;
      const isYoung = now - coat.finishedAt < wetForHours * hourMs;
      if (!isYoung && assess.coat(coat, now).stage !== 'wet') continue;
      byPlace.set(placeId, [
        ...(byPlace.get(placeId) ?? []),
        { batchId: batch.id, name: batch.name },
      ]);
    }
    return [...byPlace].map(([placeId, wet]) => {
      const night = nightAhead(airAhead(placeId, now).hours, now, timeZone);
      const reasons = night ? nightRisks(night, limits) : [];
      return {
        placeId,
        placeName: places.get(placeId)?.name ?? placeId,
        lowC: night?.lowC ?? null,
        lowErrorK: night?.lowErrorK ?? null,
        lowAt: toMoment(night?.lowAt ?? null),
        atRisk: reasons.length === 0 ? [] : wet.map((batch) => ({ ...batch, reasons })),
      };
    });
  }

  /** @param day - working day of the site, `yyyy-mm-dd`; the present one when left out */
  return (now: number, day: string = workingDay(now, timeZone)): LockUp => {
    const { batches, coats, remarks, coatings } = facts();
    const named = <T extends { batchId: string }>(one: T) => ({
      ...one,
      batchName: batches.get(one.batchId)?.name ?? one.batchId,
    });
    const becauseSaid = coatingDayReasons(day, timeZone, {
      coats: [...coats.values()].flat().map(named),
      remarks: [...remarks.values()].flat().map(named),
      // One that was finished stands among the coats.
      begun: [...coatings.values()]
        .flat()
        .filter(({ coatId }) => coatId === null)
        .map(named)
        .map(({ begunAt, batchName }) => ({ at: begunAt, batchName })),
    });
    const notices = source.notices();
    const ticks = source.lockUpTicks();
    const isToday = day === workingDay(now, timeZone);
    const ragsOpen =
      isToday && notices.some(({ kind, clearedAt }) => kind === 'rags' && clearedAt === null);
    const isCoatingDay = becauseSaid.length > 0;
    const states = lockUpLines.map((line) => ({ line, ...lineState(line, day, ticks, notices) }));
    // Rags of another day that nobody ticked are still lying somewhere; who ticked them today sees that.
    const shown = states.filter(
      ({ line, done }) => isCoatingDay || (line === 'rags' && (ragsOpen || done)),
    );
    return {
      day,
      isCoatingDay,
      because: becauseSaid.map(({ text }) => text),
      becauseSaid,
      lines: shown.map(({ line, done, at, by }) => {
        const repeats = line === 'rags';
        return { line, ...lockUpWords(line), done, at: toMoment(at), by, repeats };
      }),
      card: lockUpLines.map(lockUpWords),
      night: isToday ? tonight(now) : [],
    };
  };
}
export type LockUpList = ReturnType<typeof lockUpList>;
