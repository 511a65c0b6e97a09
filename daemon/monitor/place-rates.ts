import { type DayRate, type OutlookDay, seasonRates } from '../rules/ahead/season-rate.ts';
import type { WorkDay } from '../rules/ahead/work-calendar.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { CureAhead } from '../science/cure-ahead.ts';
import { degreeHoursPerEquivalentHour, rateAt } from '../science/cure-rate.ts';
import type { ModelPair } from './hour-book.ts';
import type { PlaceOutlooks } from './place-outlook.ts';
import type { SeasonRecord } from './season-record.ts';
import type { SiteFacts } from './site-facts.ts';

interface RateParts {
  facts: () => SiteFacts;
  outlooks: PlaceOutlooks;
  record: SeasonRecord;
  models: ModelPair;
  /** Mean outdoor temperature of each month, °C; null where nobody typed them. */
  monthlyMeanC: readonly number[] | null;
}

/** What coming days are expected to give at places. */
export function placeRates({ facts, outlooks, record, models, monthlyMeanC }: RateParts) {
  const { model } = models.ruling;
  const perHour = degreeHoursPerEquivalentHour(model);
  const outdoorMonths = monthlyMeanC?.map((meanC) => 24 * rateAt(model, meanC)) ?? null;

  function ofPlace(placeId: string, days: readonly WorkDay[]): DayRate[] | null {
    const kind = facts().places.get(placeId)?.kind;
    const ahead = outlooks.outlookAt(placeId)?.ruling;
    return seasonRates(days, {
      outlook: ahead ? outlookDays(ahead, days, perHour) : [],
      recorded: record.recordedAt(placeId, days[0] as WorkDay),
      months: kind === 'outdoors' || kind === 'wall' ? outdoorMonths : null,
    });
  }

  return (placeId: string, days: readonly WorkDay[]): DayRate[] | null => {
    const { places } = facts();
    const own = ofPlace(placeId, days);
    if (own !== null || places.get(placeId)?.kind !== 'wall') return own;
    // A wall without a sensor of its own has the air outdoors.
    for (const place of places.values()) {
      const outside = place.kind === 'outdoors' ? ofPlace(place.id, days) : null;
      if (outside !== null) return outside;
    }
    return null;
  };
}
export type PlaceRates = ReturnType<typeof placeRates>;

/**
 * What an outlook gives each day, as if it gave that all day long; today counts from the outlook’s
 * start on, and a last day that it does not reach through is left out.
 */
export function outlookDays(
  ahead: CureAhead,
  days: readonly WorkDay[],
  degreeHoursPerHour: number,
): OutlookDay[] {
  const middle = ahead.deviations.indexOf(0);
  const paths = [middle - 1, middle, middle + 1].map((index) => ahead.paths[index] ?? []);
  const width = (ahead.deviations[middle + 1] ?? 1) - (ahead.deviations[middle - 1] ?? -1);
  const hours = (ahead.paths[middle]?.length ?? 1) - 1;
  const found: OutlookDay[] = [];
  for (let i = 0; i + 1 < days.length; i++) {
    const from = Math.max(0, ((days[i] as WorkDay).startAt - ahead.fromAt) / hourMs);
    const ends = ((days[i + 1] as WorkDay).startAt - ahead.fromAt) / hourMs;
    // In the last hour before midnight today is told by the hour to come.
    const to = Math.max(ends, from + 1);
    if (to > hours) break;
    const [colder = 0, expected = 0, warmer = 0] = paths.map(
      (path) => (valueAt(path, to) - valueAt(path, from)) * (24 / (to - from) / degreeHoursPerHour),
    );
    found.push({ hoursAt20: expected, spread: Math.max(0, (warmer - colder) / width) });
  }
  return found;
}

function valueAt(path: readonly number[], hour: number): number {
  const whole = Math.floor(hour);
  const at = path[whole] ?? path.at(-1) ?? 0;
  const next = path[whole + 1] ?? at;
  return at + (next - at) * (hour - whole);
}
