import type { ComparedQuantity, ComparedSensor } from '../../daemon/contract/comparison.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { Said } from '../../daemon/contract/sentence.ts';
import { sentence } from '../../daemon/wording/english.ts';
import type { Inner } from '../../daemon/wording/phrase.ts';
import { inner } from '../../daemon/wording/sentence.ts';
import { mean, median, spreadAbout } from './robust.ts';

/** What one sensor measured in the box: ascending by `at`, epoch ms; values as they are reckoned with. */
export type BoxSeries = {
  readonly sensor: string;
  readonly points: readonly { readonly at: number; readonly value: number }[];
};

/** Quantities that a closed box can compare, and what is expected of cheap sensors there. */
export const boxLimits = {
  /** `odd`: standing apart by more is odd, about twice what cheap sensors promise; `perHour`: faster change is not steady. All assumptions. */
  'air-temperature': { odd: 0.6, perHour: 0.6 },
  'relative-humidity': { odd: 4, perHour: 3 },
  'surface-temperature': { odd: 0.6, perHour: 0.6 },
  'carbon-dioxide': { odd: 80, perHour: 150 },
} as const satisfies Partial<Record<Quantity, { odd: number; perHour: number }>>;
export type BoxQuantity = keyof typeof boxLimits;

const hourMs = 3_600_000;
/** Means over so long, or over two readings of the slowest sensor, are compared. Assumption. */
const leastBinMs = 10 * 60_000;
/** All sensors must have been heard together for so long, h, and steady for so long. Assumptions. */
const leastHours = 3;
const leastSteadyHours = 2;
/** How many robust standard deviations apart is odd. Common practice, no source. */
const oddSpreads = 3.5;
/** A sensor whose distance varies so many times as much as the others’ wanders. Assumption. */
const wanderRatio = 4;

/**
 * Compares sensors that lay together in one closed box.
 *
 * The reference is the mean of those that keep together; whoever stands apart from their median by
 * more than cheap sensors may, and by more than they scatter, is named. Only what was measured while
 * all were heard and the box was steady is used: a slow sensor lags behind a changing one.
 *
 * @returns with `refused` set, and why in `says`, where nothing can be offered: then `sensors` may
 *   still tell how far apart they were
 */
export function compareInBox(quantity: BoxQuantity, box: readonly BoxSeries[]): ComparedQuantity {
  const limits = boxLimits[quantity];
  const refuse = (
    refused: ComparedQuantity['refused'],
    said: Said,
    usedHours = 0,
    sensors: ComparedSensor[] = [],
  ): ComparedQuantity => ({
    ...{ quantity, refused, says: said.text, saysSaid: said, usedHours, sensors },
  });

  if (box.some(({ points }) => points.length === 0)) {
    const dumb = box.filter(({ points }) => points.length === 0).map(({ sensor }) => sensor);
    return refuse('no-readings', sentence('compared/no-readings', { quantity, sensors: dumb }));
  }
  const binMs = Math.max(leastBinMs, 2 * Math.max(...box.map(({ points }) => rhythm(points))));
  const bins = commonBins(box, binMs);
  const commonHours = (bins.length * binMs) / hourMs;
  if (commonHours < leastHours) {
    return refuse(
      'too-short',
      sentence('compared/too-short', { hours: commonHours, leastHours }),
      commonHours,
    );
  }
  const steady = steadyBins(bins, binMs, limits.perHour);
  const usedHours = (steady.length * binMs) / hourMs;
  if (usedHours < leastSteadyHours) {
    return refuse(
      'not-steady',
      sentence('compared/not-steady', { quantity, steadyHours: usedHours, hours: commonHours }),
      usedHours,
    );
  }
  const apart = box.map((_, i) =>
    mean(steady.map(({ values }) => (values[i] as number) - median(values))),
  );
  if (box.length === 2) {
    const sensors = judged(box, steady, binMs, [0, 1]).map((one) => ({ ...one, isOdd: false }));
    const difference = Math.abs((apart[0] as number) - (apart[1] as number));
    return refuse(
      'only-two',
      sentence('compared/only-two', { difference, quantity }),
      usedHours,
      sensors,
    );
  }
  const centre = median(apart);
  const scatter = spreadAbout(apart, centre);
  const keeps = keepsDistance(box, steady);
  const good = box
    .map((_, i) => i)
    .filter(
      (i) =>
        keeps[i] === true &&
        scatter <= limits.odd &&
        Math.abs((apart[i] as number) - centre) <= Math.max(limits.odd, oddSpreads * scatter),
    );
  if (good.length * 2 <= box.length) {
    return refuse(
      'no-majority',
      sentence('compared/no-majority', {
        difference: Math.max(...apart) - Math.min(...apart),
        quantity,
      }),
      usedHours,
      judged(
        box,
        steady,
        binMs,
        box.map((_, i) => i),
      ).map((one) => ({ ...one, isOdd: false })),
    );
  }
  const sensors = judged(box, steady, binMs, good);
  const odd = sensors.filter(({ isOdd, wanders }) => isOdd || wanders);
  const said =
    odd.length === 0
      ? sentence('compared/together', {
          ...{ sensors: box.length, difference: Math.max(...apart) - Math.min(...apart), quantity },
        })
      : sentence('compared/odd', { odd: odd.map((one) => oddOne(one, quantity)) });
  return { quantity, refused: null, says: said.text, saysSaid: said, usedHours, sensors };
}

function oddOne({ sensor, difference, wanders }: ComparedSensor, quantity: Quantity): Inner {
  if (wanders) return inner(sentence('odd-one/wanders', { sensor }));
  const where = difference > 0 ? 'odd-one/above' : 'odd-one/below';
  return inner(sentence(where, { sensor, difference: Math.abs(difference), quantity }));
}

interface Bin {
  at: number;
  /** Mean of each sensor, in the order of the box. */
  values: number[];
}

/** Difference of each sensor from the mean of the good ones, and what is to be said of it. */
function judged(
  box: readonly BoxSeries[],
  bins: readonly Bin[],
  binMs: number,
  good: readonly number[],
): ComparedSensor[] {
  const keeps = keepsDistance(box, bins);
  const reference = bins.map(({ values }) => mean(good.map((i) => values[i] as number)));
  const distances = box.map((_, i) =>
    bins.map(({ values }, b) => (values[i] as number) - (reference[b] as number)),
  );
  const referenceError =
    deviation(good.map((i) => mean(distances[i] as number[]))) / Math.sqrt(good.length);
  return box.map(({ sensor, points }, i) => {
    const own = distances[i] as number[];
    const blocks = inBlocks(own, Math.max(1, Math.round(hourMs / binMs)));
    const blockError =
      blocks.length > 1 ? deviation(blocks) / Math.sqrt(blocks.length) : deviation(own);
    const stepError = smallestStep(points) / Math.sqrt(12);
    const isOdd = !good.includes(i);
    return {
      sensor,
      difference: mean(own),
      uncertainty: 2 * Math.hypot(blockError, stepError, referenceError),
      isOdd,
      wanders: keeps[i] === false,
    };
  });
}

/** Whether each sensor keeps its distance to the median of all, as the others do. */
function keepsDistance(box: readonly BoxSeries[], bins: readonly Bin[]): boolean[] {
  const wander = box.map((_, i) =>
    deviation(bins.map(({ values }) => (values[i] as number) - median(values))),
  );
  const usual = median(wander);
  return box.map(({ points }, i) => {
    const coarseness = smallestStep(points) / 2;
    return (wander[i] as number) <= Math.max(wanderRatio * usual, coarseness + usual);
  });
}

/** Means over equal stretches in which every sensor was heard. */
function commonBins(box: readonly BoxSeries[], binMs: number): Bin[] {
  const sums = new Map<number, { sum: number; count: number }[]>();
  for (const [i, { points }] of box.entries()) {
    for (const { at, value } of points) {
      const bin = Math.floor(at / binMs);
      const row = sums.get(bin) ?? box.map(() => ({ sum: 0, count: 0 }));
      sums.set(bin, row);
      const cell = row[i] as { sum: number; count: number };
      cell.sum += value;
      cell.count++;
    }
  }
  return [...sums]
    .filter(([, row]) => row.every(({ count }) => count > 0))
    .sort(([a], [b]) => a - b)
    .map(([bin, row]) => ({ at: bin * binMs, values: row.map(({ sum, count }) => sum / count) }));
}

/** The bins about which the median of all changes slowly; the first hour of settling falls out by itself. */
function steadyBins(bins: readonly Bin[], binMs: number, perHour: number): Bin[] {
  const level = bins.map(({ values }) => median(values));
  const reach = Math.max(1, Math.round(hourMs / 2 / binMs));
  return bins.filter((bin, i) => {
    const [from, to] = [Math.max(0, i - reach), Math.min(bins.length - 1, i + reach)];
    const hours = ((bins[to] as Bin).at - (bins[from] as Bin).at || binMs) / hourMs;
    return (
      Math.abs((level[to] as number) - (level[from] as number)) / hours <= perHour && bin.at >= 0
    );
  });
}

function rhythm(points: BoxSeries['points']): number {
  const gaps = points.slice(1).map(({ at }, i) => at - (points[i]?.at ?? at));
  return gaps.length === 0 ? 0 : median(gaps);
}

/** The smallest step between values, which is how finely a sensor tells. */
function smallestStep(points: BoxSeries['points']): number {
  const values = [...new Set(points.map(({ value }) => value))].sort((a, b) => a - b);
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < values.length; i++) {
    const step = (values[i] as number) - (values[i - 1] as number);
    if (step > 1e-6) least = Math.min(least, step);
  }
  return Number.isFinite(least) ? least : 0;
}

function inBlocks(values: readonly number[], size: number): number[] {
  const blocks: number[] = [];
  for (let i = 0; i < values.length; i += size) blocks.push(mean(values.slice(i, i + size)));
  return blocks;
}

function deviation(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const middle = mean(values);
  return Math.sqrt(
    values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / (values.length - 1),
  );
}
