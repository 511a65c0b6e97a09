import type { RecordedDay } from '../rules/ahead/season-rate.ts';
import type { WorkDay } from '../rules/ahead/work-calendar.ts';
import { hourMs } from '../rules/cure-span.ts';
import { rateAt } from '../science/cure.ts';
import type { NamedModel } from './hour-book.ts';
import { curing } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';

/** How far back a place’s days are looked at: a year and what surrounds the same date in it. */
const recordDays = 400;
const dayMs = 24 * hourMs;

/**
 * What past days gave at places, by the temperature at each full hour. Each day is looked up once;
 * days are counted from the site’s midnight, so that clock changes do not tear them.
 */
export function seasonRecord(air: PlaceAirReader, ruling: NamedModel) {
  const kept = new Map<string, Map<number, RecordedDay>>();

  function lookUp(placeId: string, startAt: number): RecordedDay {
    const samples = air.sparse(placeId, curing, startAt, startAt + dayMs, hourMs);
    const hoursAt20 = samples.reduce((sum, sample) => sum + rateAt(ruling.model, sample.value), 0);
    return { startAt, hoursAt20, coveredHours: samples.length };
  }

  return {
    /** The whole days before today that were read at a place, ascending. */
    recordedAt(placeId: string, today: WorkDay): RecordedDay[] {
      if (air.latest(placeId, curing) === null) return [];
      const days = kept.get(placeId) ?? new Map<number, RecordedDay>();
      kept.set(placeId, days);
      const recorded: RecordedDay[] = [];
      for (let back = recordDays; back >= 1; back--) {
        const startAt = today.startAt - back * dayMs;
        let day = days.get(startAt);
        if (!day) {
          day = lookUp(placeId, startAt);
          days.set(startAt, day);
        }
        if (day.coveredHours > 0) recorded.push(day);
      }
      for (const startAt of days.keys()) {
        if (startAt < today.startAt - recordDays * dayMs) days.delete(startAt);
      }
      return recorded;
    },
    /** Called when readings of the past, their places or their corrections changed. */
    forget: (): void => kept.clear(),
  };
}
export type SeasonRecord = ReturnType<typeof seasonRecord>;
