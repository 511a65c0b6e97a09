/** A wait known to lie above one figure and at or below another; 0 and Infinity where unknown. */
export type WaitInterval = readonly [number, number];

/**
 * Months to cosmetic deterioration after radiotherapy with chemotherapy, 49 patients: the classic
 * example of interval-censored data.
 *
 * **Source:** Finkelstein and Wolfe 1985, Biometrics 41, 933–945; as in Klein and Moeschberger,
 * Survival Analysis, and in the R package KMsurv (bcdeter, treat 2).
 */
export const COSMESIS_MONTHS: readonly WaitInterval[] = [
  [0, 5],
  [0, 22],
  [4, 8],
  [4, 9],
  [5, 8],
  [8, 12],
  [8, 21],
  [10, 17],
  [10, 35],
  [11, 13],
  [11, 17],
  [11, 20],
  [12, 20],
  [13, 39],
  [14, 17],
  [14, 19],
  [15, 22],
  [16, 20],
  [16, 24],
  [16, 24],
  [16, 60],
  [17, 23],
  [17, 26],
  [17, 27],
  [18, 24],
  [18, 25],
  [19, 32],
  [22, 32],
  [24, 30],
  [24, 31],
  [30, 34],
  [30, 36],
  [33, 40],
  [34, 34],
  [35, 39],
  [44, 48],
  [48, 48],
  [11, Number.POSITIVE_INFINITY],
  [11, Number.POSITIVE_INFINITY],
  [13, Number.POSITIVE_INFINITY],
  [13, Number.POSITIVE_INFINITY],
  [13, Number.POSITIVE_INFINITY],
  [21, Number.POSITIVE_INFINITY],
  [23, Number.POSITIVE_INFINITY],
  [31, Number.POSITIVE_INFINITY],
  [32, Number.POSITIVE_INFINITY],
  [34, Number.POSITIVE_INFINITY],
  [34, Number.POSITIVE_INFINITY],
  [35, Number.POSITIVE_INFINITY],
];

/**
 * Log-normal fit by maximum likelihood: mean and standard deviation of ln(months), with the standard
 * errors of the mean and of ln(standard deviation).
 *
 * **Source:** R package survival 3.5.3, survreg(Surv(lower, upper, type = 'interval2') ~ 1,
 * dist = 'lognormal'), run on the data above.
 */
export const COSMESIS_LOG_NORMAL = {
  mu: 3.081966119,
  sigma: 0.609412922,
  muError: 0.0952,
  lnSigmaError: 0.1263,
} as const;
