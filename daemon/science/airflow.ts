import { type BalanceFit, type BalanceRun, fitBalance } from './air-balance.ts';
import { likeliestNoise, meanInside, roundingFloor, WHITE } from './air-noise.ts';
import { positive, within } from './argument-range.ts';
import { type DriftingNoise, whitening } from './drifting-noise.ts';
import { lowestValley, type Profile, risenEdge } from './profile-cost.ts';

/** Inside and outside concentration at one time: water vapour in g/m³, or any tracer in any unit. */
export type AirSample = {
  /** UTC epoch, ms */
  readonly at: number;
  readonly insideGM3: number;
  /** absent: outside is taken as steady (tracer decay) */
  readonly outsideGM3?: number | undefined;
};

/** Limits of what counts as one run of samples, and as certain enough. */
export type AirChangeOptions = {
  /** longest step between samples of one run, h, default 1 */
  readonly maxGapHours?: number | undefined;
  /** widest 90 % interval still called identifiable, as high over low, default 2.2 */
  readonly widestRatio?: number | undefined;
};

/** What the samples say about the air change. */
export type AirChange = {
  readonly identifiable: boolean;
  /** air changes per hour, the likeliest */
  readonly perHour?: number;
  /** lower end of the 90 % interval */
  readonly low?: number;
  /** upper end of the 90 % interval */
  readonly high?: number;
  /** why it cannot be told */
  readonly reason?: AirChangeUnknown;
};

/** Why an air change cannot be told. */
export type AirChangeUnknown =
  | 'too-few-samples'
  | 'too-short'
  | 'flat'
  | 'does-not-fit'
  | 'too-uncertain';

const MS_PER_HOUR = 3_600_000;
const FEWEST_SAMPLES = 12;
/** Air changes per hour looked at. */
const SLOWEST = 0.02;
const FASTEST = 30;
/** 90 % point of chi-square with one degree of freedom. **Source:** standard tables, from memory. */
const CHI_SQUARE_90 = 2.705543;
/** How much worse, in the same measure, no air change and endless air change must fit: some 4 standard errors. Assumption. */
const CHI_SQUARE_CERTAIN = 16;
/** Part of the inside variance that the balance must explain. Assumption. */
const LEAST_EXPLAINED = 0.5;
/**
 * Half-width that the two sensors' own scale errors add to ln(air change) at 90 %, at one air change
 * per hour; it goes with 1/√n, as slow exchange leaves a smaller swing inside against the same error.
 * A steady error of relative humidity is not a steady error of vapour when the temperature moves.
 * Assumption, tuned on simulated rooms with errors of ±2 %.
 */
const SENSOR_SCALE_LN = 0.06;
/** Changes below this share of the level are no excitation: below the resolution of the sensors. Assumption. */
const FLAT_SHARE = 1e-3;

/** Runs of samples with no long step, ascending, equal times left out, each with at least three. */
function runsOf(samples: readonly AirSample[], maxGapHours: number): BalanceRun[] {
  const sorted = [...samples].sort((a, b) => a.at - b.at);
  const runs: AirSample[][] = [[]];
  for (const sample of sorted) {
    const run = runs[runs.length - 1] as AirSample[];
    const last = run[run.length - 1];
    if (last !== undefined && sample.at === last.at) continue;
    const far = last !== undefined && sample.at - last.at > maxGapHours * MS_PER_HOUR;
    if (far) runs.push([sample]);
    else run.push(sample);
  }
  return runs
    .filter(({ length }) => length >= 3)
    .map((run) => ({
      at: run.map(({ at }) => at),
      inside: run.map(({ insideGM3 }) => insideGM3),
      outside: run.map(({ outsideGM3 }) => outsideGM3 ?? 0),
    }));
}

function checkSample({ at, insideGM3, outsideGM3 }: AirSample): void {
  within('at', at, -8.64e15, 8.64e15);
  within('insideGM3', insideGM3, 0, 1e9);
  if (outsideGM3 !== undefined) within('outsideGM3', outsideGM3, 0, 1e9);
}

/**
 * Air changes per hour of a room from its vapour (or tracer) balance against outdoors.
 *
 * The start value of every run and one steady source are free, so a constant error of either sensor
 * changes nothing; the air change is the one non-linear parameter, and its 90 % interval comes from
 * the profile of the residuals after their own autocorrelation is taken out.
 *
 * @param samples - in any order; `outsideGM3` in all or in none
 * @param options - see {@link AirChangeOptions}
 * @returns the estimate with its interval, or why there is none; rough where bare timber buffers
 *   vapour: field studies with water vapour report 20 to 40 %
 * @throws RangeError outside the range
 *
 * **Source:** well-mixed balance dC/dt = n·(C_out − C) + s, as in ASTM E741 (scope read); output-error
 * fit with profile likelihood, textbook statistics; field error: DeWalle and Heisler 1980, USDA
 * Forest Service Research Note NE-301, and others (abstracts).
 */
export function estimateAirChange(
  samples: readonly AirSample[],
  options: AirChangeOptions = {},
): AirChange {
  samples.forEach(checkSample);
  const known = samples.filter(({ outsideGM3 }) => outsideGM3 !== undefined).length;
  if (known !== 0 && known !== samples.length) {
    throw new RangeError(
      `outsideGM3 is given in ${known} of ${samples.length} samples; allowed: all or none`,
    );
  }
  const runs = runsOf(samples, positive('maxGapHours', options.maxGapHours ?? 1));
  const count = runs.reduce((sum, run) => sum + run.at.length, 0);
  if (count < FEWEST_SAMPLES) return unknown('too-few-samples');
  return judge(runs, positive('widestRatio', options.widestRatio ?? 2.2));
}

const unknown = (reason: AirChangeUnknown): AirChange => ({ identifiable: false, reason });

/** Root mean squares of the fitted values about each run's mean, and of the residuals. */
function sizes(runs: readonly BalanceRun[], fit: BalanceFit) {
  let [explained, residual] = [0, 0];
  runs.forEach(({ inside }, index) => {
    const fitted = fit.fitted[index] as Float64Array;
    const mean = fitted.reduce((sum, value) => sum + value, 0) / fitted.length;
    fitted.forEach((value, k) => {
      explained += (value - mean) ** 2;
      residual += ((inside[k] as number) - value) ** 2;
    });
  });
  return { explained: Math.sqrt(explained / fit.count), residual: Math.sqrt(residual / fit.count) };
}

function judge(runs: readonly BalanceRun[], widestRatio: number): AirChange {
  const floor = roundingFloor(runs);
  const search = (noise: DriftingNoise): Profile => {
    const filters = runs.map(({ at }) => whitening(at, noise));
    return lowestValley(Math.log(SLOWEST), Math.log(FASTEST), (lnRate) => {
      const { squares, count } = fitBalance(runs, Math.exp(lnRate), filters);
      return (count - runs.length - 2) * Math.log(squares / count + floor);
    });
  };
  // first as if the noise were white, then with the noise the residuals turn out to have
  let noise = WHITE;
  let found = search(noise);
  for (let pass = 0; pass < 2; pass++) {
    const likelier = likeliestNoise(runs, Math.exp(found.best));
    if (likelier === noise) break;
    noise = likelier;
    found = search(noise);
  }
  const filters = runs.map(({ at }) => whitening(at, noise));
  const { explained, residual } = sizes(runs, fitBalance(runs, Math.exp(found.best), filters));
  if (explained <= FLAT_SHARE * meanInside(runs)) return unknown('flat');
  if (explained ** 2 < LEAST_EXPLAINED * (explained ** 2 + residual ** 2)) {
    return unknown('does-not-fit');
  }
  const atBest = found.cost(found.best);
  const certain = atBest + CHI_SQUARE_CERTAIN;
  const [slowest, fastest] = [Math.log(SLOWEST), Math.log(FASTEST)];
  if (found.cost(slowest) < certain) return unknown('too-short');
  if (found.cost(fastest) < certain) return unknown('too-uncertain');
  const low = risenEdge(found, atBest + CHI_SQUARE_90, slowest);
  const high = risenEdge(found, atBest + CHI_SQUARE_90, fastest);
  if (low === null || high === null) return unknown('too-uncertain');
  const widened = (side: number) => Math.hypot(side, SENSOR_SCALE_LN * Math.exp(-found.best / 2));
  const lnLow = found.best - widened(found.best - low);
  const lnHigh = found.best + widened(high - found.best);
  if (lnHigh - lnLow > Math.log(widestRatio)) return unknown('too-uncertain');
  return {
    identifiable: true,
    perHour: Math.exp(found.best),
    low: Math.exp(lnLow),
    high: Math.exp(lnHigh),
  };
}
