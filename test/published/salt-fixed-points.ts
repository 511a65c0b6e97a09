/**
 * Humidity over saturated salt solutions as fits of RH = A·exp(B/T), T in kelvin, good to ±2 %.
 *
 * **Source:** A. Wexler, "Constant humidity solutions", CRC Handbook of Chemistry and Physics, section
 * 15, read in a copy of the table; it draws on Greenspan 1977 among others.
 * The fit of magnesium nitrate begins at 5 °C; below 15 °C it lies up to 3 % under Greenspan.
 */
export const CONSTANT_HUMIDITY_FITS = [
  { salt: 'lithium-chloride', a: 14.53, b: -75, fromC: 20, toC: 40 },
  { salt: 'magnesium-chloride', a: 29.26, b: 34, fromC: 5, toC: 40 },
  { salt: 'magnesium-nitrate', a: 25.28, b: 220, fromC: 15, toC: 35 },
  { salt: 'sodium-chloride', a: 69.2, b: 25, fromC: 10, toC: 40 },
  { salt: 'potassium-chloride', a: 49.38, b: 159, fromC: 5, toC: 25 },
  { salt: 'potassium-sulfate', a: 86.75, b: 34, fromC: 10, toC: 40 },
] as const;

/**
 * Sodium chloride, %: **Source:** Wexler and Hasegawa 1954, Journal of Research of the National
 * Bureau of Standards 53, 19–26, abstract read: 74.9 at 0 °C, at most 75.6 at 30 °C.
 */
export const SODIUM_CHLORIDE_1954 = [
  [0, 74.9],
  [30, 75.6],
] as const;
