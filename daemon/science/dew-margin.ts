import { dewPoint } from './air.ts';
import { within } from './argument-range.ts';

/** Least distance of a surface from the dew point for coating it, K. **Source:** common practice with ISO 8502-4, which is written for steel (a coatings-inspection page citing it was read, not the standard). */
export const LEAST_DEW_MARGIN_K = 3;
/** Drier air than this has no dew point worth reckoning, %. */
const DRIEST_PERCENT = 0.1;

/**
 * How far a surface is above the dew point of the air at it.
 *
 * @param surfaceTempC - temperature of the surface, −90 to 150 °C
 * @param air - temperature and relative humidity (over water) of the air
 * @returns K; below 0 water condenses, below 3 ({@link LEAST_DEW_MARGIN_K}) nothing should be coated
 * @throws RangeError outside the range
 */
export function dewMargin(
  surfaceTempC: number,
  air: { readonly tempC: number; readonly rhPercent: number },
): number {
  within('surfaceTempC', surfaceTempC, -90, 150);
  within('rhPercent', air.rhPercent, 0, 100);
  const rhPercent = Math.max(DRIEST_PERCENT, air.rhPercent);
  return surfaceTempC - dewPoint(air.tempC, rhPercent, { over: 'water' });
}
