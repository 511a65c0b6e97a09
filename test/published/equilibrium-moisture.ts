/**
 * Equilibrium moisture content of wood, % of oven-dry mass.
 *
 * **Source:** Wood Handbook, FPL-GTR-282 (2021), ch. 4, table of moisture content against temperature
 * and relative humidity. 193 cells read in a public copy (5 to 85 % humidity, and 90 % up to 26.7 °C);
 * the rest of the 90 % row and the 95 % row are from memory. At 43.3 °C and 20 % the copy prints 3.0,
 * a slip: neighbours and formula say 4.0, which stands here.
 */
export const EMC_TEMPERATURES_C = [
  -1.1, 4.4, 10.0, 15.6, 21.1, 26.7, 32.2, 37.8, 43.3, 48.9, 54.4,
] as const;

/** Humidity in %, then one figure for each of the temperatures above. */
export const EMC_TABLE: readonly (readonly [number, readonly number[]])[] = [
  [5, [1.4, 1.4, 1.4, 1.3, 1.3, 1.3, 1.2, 1.2, 1.1, 1.1, 1.0]],
  [10, [2.6, 2.6, 2.6, 2.5, 2.5, 2.4, 2.3, 2.3, 2.2, 2.1, 2.0]],
  [15, [3.7, 3.7, 3.6, 3.6, 3.5, 3.5, 3.4, 3.3, 3.2, 3.0, 2.9]],
  [20, [4.6, 4.6, 4.6, 4.6, 4.5, 4.4, 4.3, 4.2, 4.0, 3.9, 3.7]],
  [25, [5.5, 5.5, 5.5, 5.4, 5.4, 5.3, 5.1, 5.0, 4.9, 4.7, 4.5]],
  [30, [6.3, 6.3, 6.3, 6.2, 6.2, 6.1, 5.9, 5.8, 5.6, 5.4, 5.2]],
  [35, [7.1, 7.1, 7.1, 7.0, 6.9, 6.8, 6.7, 6.5, 6.3, 6.1, 5.9]],
  [40, [7.9, 7.9, 7.9, 7.8, 7.7, 7.6, 7.4, 7.2, 7.0, 6.8, 6.6]],
  [45, [8.7, 8.7, 8.7, 8.6, 8.5, 8.3, 8.1, 7.9, 7.7, 7.5, 7.2]],
  [50, [9.5, 9.5, 9.5, 9.4, 9.2, 9.1, 8.9, 8.7, 8.4, 8.2, 7.9]],
  [55, [10.4, 10.4, 10.3, 10.2, 10.1, 9.9, 9.7, 9.5, 9.2, 8.9, 8.7]],
  [60, [11.3, 11.3, 11.2, 11.1, 11.0, 10.8, 10.5, 10.3, 10.0, 9.7, 9.4]],
  [65, [12.4, 12.3, 12.3, 12.1, 12.0, 11.7, 11.5, 11.2, 11.0, 10.6, 10.3]],
  [70, [13.5, 13.5, 13.4, 13.3, 13.1, 12.9, 12.6, 12.3, 12.0, 11.7, 11.3]],
  [75, [14.9, 14.9, 14.8, 14.6, 14.4, 14.2, 13.9, 13.6, 13.2, 12.9, 12.5]],
  [80, [16.5, 16.5, 16.4, 16.2, 16.0, 15.7, 15.4, 15.1, 14.7, 14.4, 14.0]],
  [85, [18.5, 18.5, 18.4, 18.2, 17.9, 17.7, 17.3, 17.0, 16.6, 16.2, 15.8]],
  [90, [21.0, 21.0, 20.9, 20.7, 20.5, 20.2, 19.8, 19.5, 19.1, 18.6, 18.2]],
  [95, [24.3, 24.3, 24.3, 24.1, 23.9, 23.6, 23.3, 22.9, 22.4, 22.0, 21.5]],
];

/** Whether a cell was read in a copy of the table; the others are from memory. */
export function emcCellWasRead(tempC: number, rhPercent: number): boolean {
  return rhPercent <= 85 || (rhPercent === 90 && tempC < 27);
}
