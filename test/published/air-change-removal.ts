/**
 * Air changes per hour, then minutes until 90, 99 and 99.9 % of a contaminant is removed from a
 * well-mixed room, rounded as printed.
 *
 * **Source:** CDC, "Guidelines for preventing the transmission of Mycobacterium tuberculosis in
 * health-care facilities", MMWR 43(RR-13), 28 October 1994, table S3-1, read.
 */
export const AIR_CHANGE_REMOVAL: readonly (readonly [number, number, number, number])[] = [
  [1, 138, 276, 414],
  [2, 69, 138, 207],
  [3, 46, 92, 138],
  [4, 35, 69, 104],
  [5, 28, 55, 83],
  [6, 23, 46, 69],
  [7, 20, 39, 59],
  [8, 17, 35, 52],
  [9, 15, 31, 46],
  [10, 14, 28, 41],
  [11, 13, 25, 38],
  [12, 12, 23, 35],
  [13, 11, 21, 32],
  [14, 10, 20, 30],
  [15, 9, 18, 28],
  [16, 9, 17, 26],
  [17, 8, 16, 24],
  [18, 8, 15, 23],
  [19, 7, 15, 22],
  [20, 7, 14, 21],
  [25, 6, 11, 17],
  [30, 5, 9, 14],
  [35, 4, 8, 12],
  [40, 3, 7, 10],
  [45, 3, 6, 9],
  [50, 3, 6, 8],
];
