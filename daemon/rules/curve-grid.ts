import { hourMs } from './cure-span.ts';
import type { Sample, Speaker } from './place-series.ts';
import type { ReadingOutline } from './reading-outline.ts';

/** Equal stretches of time, the first beginning at `startAt`, on whole multiples of their length. */
export interface CurveGrid {
  readonly startAt: number;
  readonly stepMs: number;
  readonly count: number;
}

/**
 * Lowest, mean and highest of each stretch; null where nothing is known of it. Where no reading fell
 * into it but two are near enough, the mean alone is known.
 */
export interface CurveSpread {
  low: (number | null)[];
  mean: (number | null)[];
  high: (number | null)[];
}

/** Lowest and highest of whole hours, by hours since the epoch. */
export type HourExtremes = Map<number, { low: number; high: number }>;

/** Lowest and highest of hours or of parts of hours, in any order; a row each. */
export interface HourColumns {
  /** Hours since the epoch. */
  hour: number[];
  /** A moment whose calibration is that of both its extremes, epoch ms. */
  at: number[];
  low: number[];
  high: number[];
}

const secondMs = 1_000;
const minuteMs = 60_000;
/** Lengths that make whole hours and days, so that rows of a table are made of whole stretches. */
const steps = [
  ...[1, 2, 5, 10, 30].map((seconds) => seconds * secondMs),
  ...[1, 2, 5, 10, 15, 30].map((minutes) => minutes * minuteMs),
  ...[1, 2, 3, 4, 6, 12].map((hours) => hours * hourMs),
];
const dayMs = 24 * hourMs;

/**
 * @param points - how many stretches at most, but for one more at an edge
 * @returns the grid of the finest usual step that covers the span
 */
export function curveGrid(fromAt: number, toAt: number, points: number): CurveGrid {
  const wanted = (toAt - fromAt) / points;
  const stepMs =
    steps.find((step) => step >= wanted) ?? Math.max(1, Math.ceil(wanted / dayMs)) * dayMs;
  const startAt = Math.floor(fromAt / stepMs) * stepMs;
  return { startAt, stepMs, count: Math.floor((toAt - startAt) / stepMs) + 1 };
}

/** Middle of each stretch, UTC epoch ms. */
export const middles = ({ startAt, stepMs, count }: CurveGrid): number[] =>
  Array.from({ length: count }, (_, i) => startAt + (i + 0.5) * stepMs);

export const emptySpread = ({ count }: CurveGrid): CurveSpread => ({
  low: new Array<number | null>(count).fill(null),
  mean: new Array<number | null>(count).fill(null),
  high: new Array<number | null>(count).fill(null),
});

export const isEmpty = (spread: CurveSpread): boolean => spread.mean.every((one) => one === null);

/**
 * What the readings of each stretch were. A stretch without one, between two that are near enough,
 * lies on the straight line between them, as it does for the cure.
 *
 * @param samples - ascending by `at`; those outside from–to only carry the line
 * @param gapMs - longest time between two samples that is no gap
 */
export function spreadOfSamples(
  samples: readonly Sample[],
  grid: CurveGrid,
  gapMs: number,
  fromAt: number,
  toAt: number,
): CurveSpread {
  const spread = emptySpread(grid);
  const counts = new Array<number>(grid.count).fill(0);
  for (const { at, value } of samples) {
    if (at < fromAt || at > toAt) continue;
    const i = Math.floor((at - grid.startAt) / grid.stepMs);
    if (i < 0 || i >= grid.count) continue;
    const count = counts[i] ?? 0;
    spread.low[i] = Math.min(spread.low[i] ?? value, value);
    spread.high[i] = Math.max(spread.high[i] ?? value, value);
    spread.mean[i] = ((spread.mean[i] ?? 0) * count + value) / (count + 1);
    counts[i] = count + 1;
  }
  let next = 0;
  for (const [i, at] of middles(grid).entries()) {
    if (spread.mean[i] !== null || at < fromAt || at > toAt) continue;
    while (next < samples.length && (samples[next]?.at ?? 0) < at) next++;
    const before = samples[next - 1];
    const after = samples[next];
    if (!before || !after || after.at - before.at > gapMs) continue;
    const value =
      before.value + ((after.value - before.value) * (at - before.at)) / (after.at - before.at);
    spread.mean[i] = value;
  }
  return spread;
}

/** The lowest and the highest of each hour of an outline; those of a whole day stand for each hour of it. */
export function hourExtremes({
  points,
  spans,
}: Pick<ReadingOutline, 'points' | 'spans'>): HourExtremes {
  const hours: HourExtremes = new Map();
  let start = 0;
  for (const span of spans) {
    while (start < points.length && (points[start]?.at ?? 0) < span.firstAt) start++;
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = start; i < points.length && (points[i]?.at ?? 0) <= span.lastAt; i++) {
      const value = points[i]?.raw ?? 0;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    if (low > high) continue;
    const lastHour = Math.floor(span.lastAt / hourMs);
    for (let hour = Math.floor(span.firstAt / hourMs); hour <= lastHour; hour++) {
      const known = hours.get(hour);
      hours.set(hour, {
        low: Math.min(known?.low ?? low, low),
        high: Math.max(known?.high ?? high, high),
      });
    }
  }
  return hours;
}

/** The lowest and the highest of each hour, of columns in which it may be several times. */
export function gatherHours({ hour, low, high }: Omit<HourColumns, 'at'>): HourExtremes {
  const hours: HourExtremes = new Map();
  for (let i = 0; i < hour.length; i++) {
    const [key, lowest, highest] = [hour[i] as number, low[i] as number, high[i] as number];
    const known = hours.get(key);
    if (!known) hours.set(key, { low: lowest, high: highest });
    else {
      if (lowest < known.low) known.low = lowest;
      if (highest > known.high) known.high = highest;
    }
  }
  return hours;
}

/**
 * What several sensors of a place say together, hour by hour: the nearest that speak in an hour, and
 * of them the coldest or the dampest. Of the other end it is a bound: the coldest sensor is never
 * warmer than the lowest of the sensors’ highest.
 */
export function speakingHours(
  sensors: readonly { level: number; hours: HourExtremes }[],
  speaker: Speaker,
): HourExtremes {
  const levels = new Map<number, number>();
  const spoken: HourExtremes = new Map();
  const pick = speaker === 'lowest' ? Math.min : Math.max;
  for (const { level, hours } of [...sensors].sort((a, b) => a.level - b.level)) {
    for (const [hour, { low, high }] of hours) {
      const known = spoken.get(hour);
      if (!known) {
        spoken.set(hour, { low, high });
        levels.set(hour, level);
      } else if (levels.get(hour) === level) {
        spoken.set(hour, { low: pick(known.low, low), high: pick(known.high, high) });
      }
    }
  }
  return spoken;
}

/**
 * What whole hours come to in each stretch of a grid of hours. Hours without a reading between two
 * that are near enough are bridged.
 *
 * @param gapMs - longest time without readings that is no gap
 */
export function spreadOfHours(hours: HourExtremes, grid: CurveGrid, gapMs: number): CurveSpread {
  const spread = emptySpread(grid);
  const perStep = grid.stepMs / hourMs;
  const first = grid.startAt / hourMs;
  let lastFilled = -1;
  for (let i = 0; i < grid.count; i++) {
    let [low, high, middle, count] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
    for (let hour = first + i * perStep; hour < first + (i + 1) * perStep; hour++) {
      const known = hours.get(hour);
      if (!known) continue;
      low = Math.min(low, known.low);
      high = Math.max(high, known.high);
      middle += (known.low + known.high) / 2;
      count++;
    }
    if (count === 0) continue;
    spread.low[i] = low;
    spread.high[i] = high;
    spread.mean[i] = middle / count;
    const missing = i - lastFilled - 1;
    if (lastFilled >= 0 && missing > 0 && missing * grid.stepMs < gapMs) {
      bridge(spread, lastFilled, i);
    }
    lastFilled = i;
  }
  return spread;
}

function bridge(spread: CurveSpread, from: number, to: number): void {
  const [a, b] = [spread.mean[from] ?? 0, spread.mean[to] ?? 0];
  for (let i = from + 1; i < to; i++) {
    spread.mean[i] = a + ((b - a) * (i - from)) / (to - from);
  }
}

/** Adds what is known of other stretches; where both know of one, both count. */
export function mergeSpread(into: CurveSpread, more: CurveSpread): void {
  for (let i = 0; i < into.mean.length; i++) {
    const [low, mean, high] = [more.low[i], more.mean[i], more.high[i]];
    if (mean == null) continue;
    const known = into.mean[i];
    const isRead = low != null && high != null;
    const wasRead = into.low[i] != null;
    // A reading tells more than the line between two others.
    if (known == null || (isRead && !wasRead)) into.mean[i] = mean;
    else if (isRead === wasRead) into.mean[i] = (known + mean) / 2;
    if (!isRead) continue;
    into.low[i] = Math.min(into.low[i] ?? low, low);
    into.high[i] = Math.max(into.high[i] ?? high, high);
  }
}

/** Figures to a millionth: more is noise of the reckoning, and bytes. */
export const rounded = (values: readonly (number | null)[]): (number | null)[] =>
  values.map((value) => (value === null ? null : Math.round(value * 1e6) / 1e6));
