/**
 * Resistance in MΩ, then moisture of Scots pine and of Norway spruce, % of oven-dry mass, as printed.
 *
 * **Source:** Swedish research institute for testing, recommended calibration curves for resistance
 * meters, printed check values, read.
 */
export const NORDIC_CHECKS: readonly (readonly [number, number, number])[] = [
  [5000, 9.6, 10.8],
  [100, 14.4, 16.1],
  [15, 17.9, 19.9],
  [2, 23.5, 25.9],
];

/** Coefficients a, b of log10(log10(R/MΩ) + 1) = a·u + b: the same curves in another published form (own algebra). */
export const NORDIC_DOUBLE_LOGARITHM = {
  'scots-pine': { a: -0.04, b: 1.0549 },
  'norway-spruce': { a: -0.037, b: 1.072 },
} as const;

/**
 * Moisture in % of oven-dry mass, then resistance in MΩ of Scots pine and Norway spruce at 20 °C,
 * worked from the curves apart from the program.
 */
export const NORDIC_CURVE: readonly (readonly [number, number, number])[] = [
  [7, 90539.9, 318220],
  [8, 27090.7, 93698.3],
  [9, 9013.76, 30486.2],
  [10, 3304.02, 10871.8],
  [11, 1322.9, 4217.65],
  [12, 574.103, 1767.77],
  [13, 268.133, 795.472],
  [14, 133.907, 382.074],
  [15, 71.0863, 194.841],
  [16, 39.8995, 104.978],
  [17, 23.5623, 59.4913],
  [18, 14.5745, 35.3144],
  [19, 9.4043, 21.875],
  [20, 6.30667, 14.0907],
  [21, 4.38068, 9.40846],
  [22, 3.14201, 6.49277],
  [23, 2.32045, 4.61847],
  [24, 1.76003, 3.37791],
  [25, 1.36783, 2.5345],
  [26, 1.08686, 1.94682],
  [27, 0.881261, 1.52798],
  [28, 0.727859, 1.22321],
  [29, 0.611361, 0.997182],
  [30, 0.521451, 0.826599],
];

/**
 * Douglas fir, coast: loose figures read apart from the table: MΩ at a moisture in %.
 *
 * **Source:** summaries of James 1988, FPL-GTR-6, read: about 22 GΩ at 7 %, 0.5 MΩ at 25 %; most
 * species 2 to 4 MΩ at 20 %.
 */
export const DOUGLAS_FIR_LOOSE: readonly (readonly [number, number])[] = [
  [7, 22000],
  [20, 2],
  [25, 0.5],
];
