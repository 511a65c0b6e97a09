import type { FitWord } from '../contract/fit-to-brush.ts';
import type { Sentence } from '../contract/sentence.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
import { sentence } from '../wording/english.ts';
import { type HourAhead, marginOf } from './hour-ahead.ts';
import { localTime } from './local-time.ts';

const hourMs = 3_600_000;
/** Less than this is no rain worth stopping for, mm in an hour. Assumption. */
const leastRainMm = 0.1;

/** What stands against brushing in an hour: codes, the grave ones apart. */
export interface AgainstHour {
  grave: ('cold' | 'hot' | 'damp' | 'dew' | 'rain')[];
  mild: ('slow' | 'warm')[];
}

export function againstHour(hour: HourAhead, limits: ApplicationLimits): AgainstHour {
  const margin = marginOf(hour);
  const grave: AgainstHour['grave'] = [];
  const mild: AgainstHour['mild'] = [];
  if (hour.tempC < limits.coldestC) grave.push('cold');
  else if (hour.tempC < limits.slowBelowC) mild.push('slow');
  if (hour.tempC > limits.hottestC) grave.push('hot');
  else if (hour.tempC > limits.warmAboveC) mild.push('warm');
  if (hour.rhPercent !== null && hour.rhPercent > limits.dampestRhPercent) grave.push('damp');
  if (margin !== null && margin < limits.dewMarginK) grave.push('dew');
  if (hour.rainMm !== null && hour.rainMm >= leastRainMm) grave.push('rain');
  return { grave, mild };
}

export function wordOfHour({ grave, mild }: AgainstHour, hour: HourAhead): FitWord {
  if (grave.length > 0) return 'no';
  if (hour.rhPercent === null) return 'cannot-tell';
  return mild.length > 0 ? 'poor' : 'good';
}

/**
 * When to put the brush down: so long before dew, damp or cold, or before rain, that the coat is
 * not caught wet.
 *
 * @param hours - ascending; looked at from `now` on
 * @returns the moment (not before now) and why; null where nothing within the hours asks for it
 */
export function latestStop(
  hours: readonly HourAhead[],
  now: number,
  limits: ApplicationLimits,
  timeZone: string,
): { at: number; because: Sentence } | null {
  const stops = hours.flatMap((hour) => {
    const { grave } = againstHour(hour, limits);
    if (hour.at + hourMs <= now) return [];
    return grave.map((what) => {
      const leadHours =
        what === 'hot'
          ? 0
          : what === 'rain'
            ? limits.dryBeforeRainHours
            : limits.stopBeforeDewHours;
      return { at: Math.max(now, hour.at - leadHours * hourMs), what, hour, leadHours };
    });
  });
  const first = stops.reduce<(typeof stops)[number] | null>(
    (soonest, stop) => (soonest === null || stop.at < soonest.at ? stop : soonest),
    null,
  );
  if (!first) return null;
  const sameDay = localTime(first.hour.at, timeZone).day === localTime(now, timeZone).day;
  const told = { at: first.hour.at, tomorrow: !sameDay, leadHours: first.leadHours };
  return { at: first.at, because: sentence(`stop-${first.what}`, told, timeZone) };
}

/** Why there is no moment to stop at. @param hours - how many of the hours ahead are known */
export const noStop = (hours: number): Sentence =>
  hours === 0 ? sentence('stop-unknown', {}) : sentence('stop-none', { hours });
