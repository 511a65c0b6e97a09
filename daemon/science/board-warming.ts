import { positive, within } from './argument-range.ts';
import { lagged } from './hourly-lag.ts';

/** How a board meets the air when it is warmed. */
export type WarmedBoard = {
  /** mm, 1 to 300 */
  readonly thicknessMm: number;
  /** 2 in stick, 1 when the other face is closed */
  readonly openFaces: 1 | 2;
};

/** Density of air-dry softwood, kg/m³. **Source:** wood information pages: Scots pine 510 to 550, Norway spruce 441; between them. */
const DENSITY_KG_PER_M3 = 500;
/** Its specific heat at about 12 % moisture and room temperature, J/(kg·K). **Source:** Wood Handbook, from memory. */
const SPECIFIC_HEAT = 1600;
/** Its conductivity across the grain, W/(m·K). **Source:** Wood Handbook, from memory. */
const CONDUCTIVITY = 0.12;
/** Heat passed by still indoor air and radiation, W/(m²·K). **Source:** 1/0.13 m²·K/W, inner surface resistance of ISO 6946, from memory. */
const SURFACE_COEFFICIENT = 1 / 0.13;
const SECONDS_PER_HOUR = 3600;

/**
 * Estimate of the time in which a board goes 63 % of its way to a warmer air.
 *
 * @param board - thickness and open faces
 * @returns hours, 0.1 and more; right within a factor of about two: boards lying close, or away from
 *   the heater, take longer
 * @throws RangeError outside the range
 *
 * **Source:** heat stored over heat passed, the wood's own resistance counted by a third (the usual
 * lumped estimate for a slab, own algebra); figures see the constants.
 */
export function estimatedWarmingHours({ thicknessMm, openFaces }: WarmedBoard): number {
  const pathM = within('thicknessMm', thicknessMm, 1, 300) / 1000 / openFaces;
  const resistance = 1 / SURFACE_COEFFICIENT + pathM / (3 * CONDUCTIVITY);
  return (DENSITY_KG_PER_M3 * SPECIFIC_HEAT * pathM * resistance) / SECONDS_PER_HOUR;
}

/**
 * Temperature of boards that were as warm as the air and lag behind it when it is changed.
 *
 * @param before - air temperature of each hour as it would have been, °C
 * @param after - as it is made, °C
 * @param lagHours - see {@link estimatedWarmingHours}, above 0
 * @returns temperature of the boards in each hour, °C; never outside the two
 * @throws RangeError on a lag that is not above 0
 */
export function laggingBoards(
  before: readonly number[],
  after: readonly number[],
  lagHours: number,
): number[] {
  positive('lagHours', lagHours);
  const change = lagged(
    [0, ...after.map((value, hour) => value - (before[hour] as number))],
    lagHours,
  );
  return before.map((value, hour) => {
    const made = after[hour] as number;
    const board = value + (change[hour + 1] as number);
    return Math.min(Math.max(value, made), Math.max(Math.min(value, made), board));
  });
}
