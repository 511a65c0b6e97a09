/** A value and the probability of the standard normal distribution below it. **Source:** Abramowitz and Stegun 1964, table 26.1, from memory. */
export const NORMAL_CDF: readonly (readonly [number, number])[] = [
  [0, 0.5],
  [0.5, 0.691462461274013],
  [1, 0.841344746068543],
  [1.5, 0.933192798731142],
  [2, 0.977249868051821],
  [3, 0.99865010196837],
];

/** A probability and its quantile. **Source:** standard tables of the normal distribution, from memory. */
export const NORMAL_QUANTILES: readonly (readonly [number, number])[] = [
  [0.9, 1.2815515655446004],
  [0.95, 1.6448536269514722],
  [0.975, 1.959963984540054],
  [0.99, 2.3263478740408408],
];

/** A value and −log10 of the probability beyond it. **Source:** Abramowitz and Stegun 1964, table 26.2, from memory. */
export const NORMAL_TAIL_LOG10: readonly (readonly [number, number])[] = [
  [5, 6.54265],
  [10, 23.11805],
  [20, 88.5601],
  [50, 544.96634],
  [100, 2173.87154],
];
