import { within } from './argument-range.ts';

/** Salts whose saturated solution holds the air above it at a known humidity. */
export const salts = [
  'lithium-chloride',
  'magnesium-chloride',
  'magnesium-nitrate',
  'sodium-chloride',
  'potassium-chloride',
  'potassium-sulfate',
] as const;
export type Salt = (typeof salts)[number];

/** Temperatures of the columns of {@link SALT_PERCENT}, °C. */
const COLUMNS_C = [0, 5, 10, 15, 20, 25, 30, 35, 40] as const;

/**
 * Humidity over saturated solutions, % by temperature.
 *
 * **Source:** Greenspan 1977, "Humidity fixed points of binary saturated aqueous solutions", Journal
 * of Research of the National Bureau of Standards 81A, 89–96, Table 2; all cells from memory. Two
 * anchors named independently of it agree: 75.3 % over sodium chloride and 32.8 % over magnesium
 * chloride at 25 °C.
 */
const SALT_PERCENT: Readonly<Record<Salt, readonly number[]>> = {
  'lithium-chloride': [11.23, 11.26, 11.29, 11.3, 11.31, 11.3, 11.28, 11.25, 11.21],
  'magnesium-chloride': [33.66, 33.6, 33.47, 33.3, 33.07, 32.78, 32.44, 32.05, 31.6],
  'magnesium-nitrate': [60.35, 58.86, 57.36, 55.87, 54.38, 52.89, 51.4, 49.91, 48.42],
  'sodium-chloride': [75.51, 75.65, 75.67, 75.61, 75.47, 75.29, 75.09, 74.87, 74.68],
  'potassium-chloride': [88.61, 87.67, 86.77, 85.92, 85.11, 84.34, 83.62, 82.95, 82.32],
  'potassium-sulfate': [98.77, 98.48, 98.18, 97.89, 97.59, 97.3, 97, 96.71, 96.41],
};

/**
 * Relative humidity of the air over a saturated salt solution that has come to rest with it.
 *
 * @param tempC - temperature of salt and air, 0 to 40 °C; between the columns on the straight line
 * @returns %; the salts named here are known to ±0.1 to ±0.5 % (Greenspan 1977, from memory)
 * @throws RangeError outside the range
 */
export function saltHumidity(salt: Salt, tempC: number): number {
  within('tempC', tempC, 0, 40);
  const column = Math.min(COLUMNS_C.length - 2, Math.floor(tempC / 5));
  const row = SALT_PERCENT[salt];
  const low = row[column] as number;
  const high = row[column + 1] as number;
  return low + (high - low) * (tempC / 5 - column);
}
