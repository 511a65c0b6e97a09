import { positive, within } from './argument-range.ts';

/** How an oil film takes up oxygen at one temperature. */
export type OxygenUptake = {
  /** time in which nothing is seen to happen, h, 0 or more */
  readonly lagHours: number;
  /** rate of each of the two equal steps, 1/h */
  readonly ratePerHour: number;
};

/**
 * Share of its oxygen an oil film has taken up: a lag, then two equal first-order steps A → B → C.
 *
 * @param uptake - lag and rate at the film's temperature; with `hours` as hours at 20 °C, those at 20 °C
 * @param hours - time since the film was laid, h, 0 or more
 * @returns 0 to 100 %: "percent cured" in the sense of oxygen taken up, not of hardness
 * @throws RangeError outside the range
 *
 * **Source:** form: Fourier-transform infrared study of seed oil with cobalt drier, two first-order
 * steps of equal rate (preprints, abstract and sections read). It meets the oxygen uptake printed in
 * Gardner 1911, Paint Technology and Tests, ch. II, with a root mean square error of 0.07 to 0.22 %
 * of the oil's mass (largest 0.5); one step after the lag fits about as well.
 */
export function oxygenUptakePercent(uptake: OxygenUptake, hours: number): number {
  within('lagHours', uptake.lagHours, 0, 1e6);
  positive('ratePerHour', uptake.ratePerHour);
  within('hours', hours, 0, 1e9);
  const x = uptake.ratePerHour * Math.max(0, hours - uptake.lagHours);
  return 100 * (1 - Math.exp(-x) * (1 + x));
}
