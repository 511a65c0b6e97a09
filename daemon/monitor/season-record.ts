import type { RecordedDay } from '../rules/ahead/season-rate.ts';
import type { WorkDay } from '../rules/ahead/work-calendar.ts';
import { hourMs } from '../rules/cure-span.ts';
import { rateAt } from '../science/cure-rate.ts';
import type { NamedModel } from './hour-book.ts';
import { curing } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';

/** How far back a place’s days are looked at: a year and what surrounds the same date in it. */
const recordDays = 400;
const dayMs = 24 * hourMs;
/** How often a past day is looked up, h: its mean needs no more, and a year of it stays quick. */
const stepHours = 3;

/**
 * What past days gave at places, by the temperature every three hours. Each day is looked up once;
 * days are counted from the site’s midnight, so that clock changes do not tear them.
 */
export function seasonRecord(air: PlaceAirReader, ruling: NamedModel) {
  const kept = new Map<string, Map<number, RecordedDay>>();

  function lookUp(placeId: string, startAt: number): RecordedDay {
    const stepMs = stepHours * hourMs;
    const samples = air.sparse(placeId, curing, startAt + stepMs / 2, startAt + dayMs, stepMs);
    const rates = samples.reduce((sum, sample) => sum + rateAt(ruling.model, sample.value), 0);
    return {
      startAt,
      hoursAt20: rates * stepHours,
      coveredHours: samples.length * stepHours,
    };
  }

  return {
    /** The whole days before today that were read at a place, ascending. */
    recordedAt(placeId: string, today: WorkDay): RecordedDay[] {
      const days = kept.get(placeId) ?? new Map<number, RecordedDay>();
      kept.set(placeId, days);
      const recorded: RecordedDay[] = [];
      for (let back = 1; back <= recordDays; back++) {
        const startAt = today.startAt - back * dayMs;
        const newest = air.newestUpTo(placeId, curing, startAt + dayMs - 1);
        if (newest === null) break;
        if (newest < startAt) {
          // Nothing was read for days: on to the day when something was.
          back += Math.floor((startAt - newest) / dayMs);
          continue;
        }
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
      return recorded.reverse();
    },
    /** Called when readings of the past, their places or their corrections changed. */
    forget: (): void => kept.clear(),
  };
}
export type SeasonRecord = ReturnType<typeof seasonRecord>;
