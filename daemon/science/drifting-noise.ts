/** Noise of a measured run: white, plus a slow part that forgets itself over a time. */
export type DriftingNoise = {
  /** time constant of the slow part, h */
  readonly timescaleHours: number;
  /** variance of the slow part over that of the white part, 0 or more */
  readonly ratio: number;
};

/** Filter that turns a series with such noise into one of unit white noise; linear, so it suits every column of a fit. */
export type Whitening = {
  readonly apply: (values: ArrayLike<number>) => Float64Array;
  /** sum of ln of the innovation variances, in units of the white variance */
  readonly lnVariance: number;
};

const MS_PER_HOUR = 3_600_000;

/**
 * Whitening filter for one run of samples.
 *
 * @param at - times of the samples, UTC epoch ms, ascending
 * @param noise - the two parts
 * @returns the filter
 *
 * **Source:** Kalman filter of a first-order Gauss–Markov process in white noise, textbook form.
 */
export function whitening(at: readonly number[], noise: DriftingNoise): Whitening {
  const count = at.length;
  const [kept, gain, scale] = [
    new Float64Array(count),
    new Float64Array(count),
    new Float64Array(count),
  ];
  let variance = noise.ratio;
  let lnVariance = 0;
  for (let k = 0; k < count; k++) {
    if (k > 0) {
      const hours = ((at[k] as number) - (at[k - 1] as number)) / MS_PER_HOUR;
      const phi = Math.exp(-hours / noise.timescaleHours);
      kept[k] = phi;
      variance = phi * phi * variance + (1 - phi * phi) * noise.ratio;
    }
    const innovation = variance + 1;
    gain[k] = variance / innovation;
    scale[k] = 1 / Math.sqrt(innovation);
    lnVariance += Math.log(innovation);
    variance /= innovation;
  }
  const apply = (values: ArrayLike<number>): Float64Array => {
    const white = new Float64Array(count);
    let state = 0;
    for (let k = 0; k < count; k++) {
      const predicted = (kept[k] as number) * state;
      const surprise = (values[k] as number) - predicted;
      state = predicted + (gain[k] as number) * surprise;
      white[k] = (scale[k] as number) * surprise;
    }
    return white;
  };
  return { apply, lnVariance };
}
