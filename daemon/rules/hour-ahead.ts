import { dewMargin } from '../science/dew-margin.ts';
import { atLocal, localTime } from './local-time.ts';

/** What is expected of one hour at a place. */
export interface HourAhead {
  /** Start of the hour, UTC epoch ms. */
  at: number;
  tempC: number;
  /** Standard deviation of the error, K. */
  errorK: number;
  /** null where humidity was never read, nor forecast. */
  rhPercent: number | null;
  /** null where nobody forecasts rain; 0 under a roof. */
  rainMm: number | null;
}

/** How far the timber is above the dew point in an hour, taken to be as warm as the air; K. */
export const marginOf = ({ tempC, rhPercent }: Pick<HourAhead, 'tempC' | 'rhPercent'>) =>
  rhPercent === null ? null : dewMargin(tempC, { tempC, rhPercent });

/** The night by the clock: from when to when boards are left to themselves. Assumption. */
const nightFromMinute = 20 * 60;
const nightToMinute = 8 * 60;

/** The coldest and dampest of a night. */
export interface NightAhead {
  fromAt: number;
  toAt: number;
  lowC: number;
  lowAt: number;
  lowErrorK: number;
  leastMarginK: number | null;
  highestRhPercent: number | null;
  rainMm: number | null;
}

/**
 * The coming night, or the rest of the one that is.
 *
 * @param hours - hours ahead from now on, ascending
 * @returns null where the hours do not reach into it
 */
export function nightAhead(
  hours: readonly HourAhead[],
  now: number,
  timeZone: string,
): NightAhead | null {
  const { day, minute } = localTime(now, timeZone);
  const isMorning = minute < nightToMinute;
  const fromAt = atLocal(day, isMorning ? nightFromMinute - 1440 : nightFromMinute, timeZone);
  const toAt = atLocal(day, isMorning ? nightToMinute : nightToMinute + 1440, timeZone);
  const night = hours.filter(({ at }) => at >= Math.max(now - 3_600_000, fromAt) && at < toAt);
  const [first] = night;
  if (!first) return null;
  const coldest = night.reduce((low, hour) => (hour.tempC < low.tempC ? hour : low), first);
  const margins = night.map(marginOf).filter((margin) => margin !== null);
  const damp = night.flatMap(({ rhPercent }) => (rhPercent === null ? [] : [rhPercent]));
  const rain = night.flatMap(({ rainMm }) => (rainMm === null ? [] : [rainMm]));
  return {
    fromAt,
    toAt,
    lowC: coldest.tempC,
    lowAt: coldest.at,
    lowErrorK: coldest.errorK,
    leastMarginK: margins.length === 0 ? null : Math.min(...margins),
    highestRhPercent: damp.length === 0 ? null : Math.max(...damp),
    rainMm: rain.length === 0 ? null : rain.reduce((sum, mm) => sum + mm, 0),
  };
}
