import { positive, within } from './argument-range.ts';

/**
 * Air changes per hour from two concentrations of a tracer that only dies away.
 *
 * @param input - `from` and `to` above the background, in one unit; `hours` between them
 * @returns air changes per hour; negative when the concentration rose
 * @throws RangeError on a concentration not above the background
 *
 * **Source:** concentration decay, ASTM E741 (equation from memory); CDC, MMWR 43(RR-13), 1994,
 * table S3-1.
 */
export function decayAirChange(input: {
  readonly from: number;
  readonly to: number;
  readonly background?: number | undefined;
  readonly hours: number;
}): number {
  const background = within('background', input.background ?? 0, 0, 1e9);
  const above = (name: string, value: number): number => {
    if (!(value > background) || !Number.isFinite(value)) {
      throw new RangeError(`${name} is ${value}; allowed: above the background ${background}`);
    }
    return value - background;
  };
  const ratio = above('from', input.from) / above('to', input.to);
  return Math.log(ratio) / positive('hours', input.hours);
}

/**
 * Time in which a share of what is in the air is carried off, at steady mixing.
 *
 * @param airChangesPerHour - above 0
 * @param sharePercent - share to remove, 0 to below 100 %
 * @returns hours
 * @throws RangeError outside the range
 *
 * **Source:** CDC, MMWR 43(RR-13), 1994, table S3-1 and its formula.
 */
export function removalHours(airChangesPerHour: number, sharePercent: number): number {
  within('sharePercent', sharePercent, 0, 99.999999);
  return -Math.log1p(-sharePercent / 100) / positive('airChangesPerHour', airChangesPerHour);
}
