import type { Whitening } from './drifting-noise.ts';
import { lagWeights } from './lagged-response.ts';

/** One run of samples with no long step, as columns of equal length, ascending by time. */
export type BalanceRun = {
  /** UTC epoch, ms */
  readonly at: readonly number[];
  readonly inside: readonly number[];
  /** all 0 where outside is taken as steady */
  readonly outside: readonly number[];
};

/** How well a room's balance fits at one air change. */
export type BalanceFit = {
  /** sum of squares of the whitened residuals */
  readonly squares: number;
  /** number of samples */
  readonly count: number;
  /** steady source over air change, in the unit of the samples */
  readonly source: number;
  /** start value over that level, of each run */
  readonly starts: readonly number[];
  /** fitted inside values of each run */
  readonly fitted: readonly Float64Array[];
  /** ln of the determinant of the normal equations of starts and source */
  readonly lnInformation: number;
};

/** Response to outside alone, what is left of the start, and what the source has built up. */
type Columns = {
  readonly response: Float64Array;
  readonly decayed: Float64Array;
  readonly grown: Float64Array;
};

const MS_PER_HOUR = 3_600_000;
/** Below this the source column is no longer apart from the starts. */
const LEAST_SQUARE = 1e-12;

function columnsOf(run: BalanceRun, perHour: number): Columns {
  const count = run.at.length;
  const [response, decayed, grown] = [
    new Float64Array(count),
    new Float64Array(count),
    new Float64Array(count),
  ];
  decayed[0] = 1;
  for (let k = 1; k < count; k++) {
    const hours = ((run.at[k] as number) - (run.at[k - 1] as number)) / MS_PER_HOUR;
    const weights = lagWeights(hours * perHour);
    response[k] =
      weights.kept * (response[k - 1] as number) +
      weights.start * (run.outside[k - 1] as number) +
      weights.end * (run.outside[k] as number);
    decayed[k] = weights.kept * (decayed[k - 1] as number);
    grown[k] = 1 - (decayed[k] as number);
  }
  return { response, decayed, grown };
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += (a[k] as number) * (b[k] as number);
  return sum;
}

/** Coefficient of a column along another. */
function along(values: Float64Array, direction: Float64Array): number {
  const square = dot(direction, direction);
  return square > 0 ? dot(values, direction) / square : 0;
}

/** `values` less a multiple of a column. */
function less(values: Float64Array, multiple: number, column: Float64Array): Float64Array {
  return values.map((value, k) => value - multiple * (column[k] as number));
}

/**
 * Least-squares fit of dC/dt = n·(C_out − C) + s at a given n: start value of each run and s/n free.
 *
 * @param runs - runs of samples, at least three samples each
 * @param perHour - the air change n, 1/h
 * @param filters - whitening of each run
 * @returns the fit
 *
 * **Source:** linear least squares, the start values projected out run by run.
 */
export function fitBalance(
  runs: readonly BalanceRun[],
  perHour: number,
  filters: readonly Whitening[],
): BalanceFit {
  let [square, product, lnInformation, count] = [0, 0, 0, 0];
  const parts = runs.map((run, index) => {
    const { apply } = filters[index] as Whitening;
    const columns = columnsOf(run, perHour);
    const start = apply(columns.decayed);
    const target = apply(columns.response.map((value, k) => (run.inside[k] as number) - value));
    const grown = apply(columns.grown);
    const targetStart = along(target, start);
    const grownStart = along(grown, start);
    const targetRest = less(target, targetStart, start);
    const grownRest = less(grown, grownStart, start);
    square += dot(grownRest, grownRest);
    product += dot(grownRest, targetRest);
    lnInformation += Math.log(dot(start, start));
    count += run.at.length;
    return { columns, targetStart, grownStart, targetRest, grownRest };
  });
  const source = square > LEAST_SQUARE ? product / square : 0;
  let squares = 0;
  const starts: number[] = [];
  const fitted = parts.map(({ columns, targetStart, grownStart, targetRest, grownRest }) => {
    const left = less(targetRest, source, grownRest);
    squares += dot(left, left);
    const begin = targetStart - source * grownStart;
    starts.push(begin);
    return columns.response.map(
      (value, k) =>
        value + source * (columns.grown[k] as number) + begin * (columns.decayed[k] as number),
    );
  });
  if (square > LEAST_SQUARE) lnInformation += Math.log(square);
  return { squares, count, source, starts, fitted, lnInformation };
}

/**
 * Inside values of every run at another air change, start and source level as fitted.
 *
 * @param runs - the runs of the fit
 * @param perHour - air change, 1/h
 * @param fit - the fit whose start values and source level are kept
 * @returns inside values of each run
 */
export function balanceAt(
  runs: readonly BalanceRun[],
  perHour: number,
  fit: BalanceFit,
): Float64Array[] {
  return runs.map((run, index) => {
    const columns = columnsOf(run, perHour);
    const begin = fit.starts[index] as number;
    return columns.response.map(
      (value, k) =>
        value + fit.source * (columns.grown[k] as number) + begin * (columns.decayed[k] as number),
    );
  });
}
