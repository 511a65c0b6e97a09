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

/**
 * Lowest and highest of the whole hours of a grid; not a number where nothing is known of one. Flat columns:
 * of a year, hours as objects cost more in garbage than in looking them up.
 */
export interface HourExtremes {
  /** Hours since the epoch. */
  readonly firstHour: number;
  readonly low: Float64Array;
  readonly high: Float64Array;
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
  samples: Iterable<Sample>,
  grid: CurveGrid,
  gapMs: number,
  fromAt: number,
  toAt: number,
): CurveSpread {
  const spread = emptySpread(grid);
  const counts = new Float64Array(grid.count);
  const between = new Float64Array(grid.count).fill(Number.NaN);
  const placeOf = (at: number) => Math.floor((at - grid.startAt) / grid.stepMs);
  let before: Sample | null = null;
  for (const sample of samples) {
    if (before && sample.at - before.at <= gapMs) lineBetween(before, sample);
    before = sample;
    const { at, value } = sample;
    const i = placeOf(at);
    if (at < fromAt || at > toAt || i < 0 || i >= grid.count) continue;
    const count = counts[i] as number;
    spread.low[i] = Math.min(spread.low[i] ?? value, value);
    spread.high[i] = Math.max(spread.high[i] ?? value, value);
    spread.mean[i] = ((spread.mean[i] ?? 0) * count + value) / (count + 1);
    counts[i] = count + 1;
  }
  for (const [i, value] of between.entries()) {
    if (counts[i] === 0 && !Number.isNaN(value)) spread.mean[i] = value;
  }
  return spread;

  /** Notes what the line is in the middle of the stretches that it passes. */
  function lineBetween(a: Sample, b: Sample): void {
    const last = Math.min(grid.count - 1, placeOf(b.at));
    for (let i = Math.max(0, placeOf(a.at)); i <= last; i++) {
      const at = grid.startAt + (i + 0.5) * grid.stepMs;
      if (at <= a.at || at > b.at || at < fromAt || at > toAt) continue;
      between[i] = a.value + ((b.value - a.value) * (at - a.at)) / (b.at - a.at);
    }
  }
}

/** All hours of a grid of hours, with nothing known of them yet. */
export function unknownHours({ startAt, stepMs, count }: CurveGrid): HourExtremes {
  const column = () => new Float64Array(count * (stepMs / hourMs)).fill(Number.NaN);
  return { firstHour: startAt / hourMs, low: column(), high: column() };
}

/** Takes in what is known of an hour, which may be told several times; hours outside the grid are left out. */
export function takeHour(
  { firstHour, low, high }: HourExtremes,
  hour: number,
  lowest: number,
  highest: number,
): void {
  const i = hour - firstHour;
  if (i < 0 || i >= low.length) return;
  // Nothing is above or below what is not there yet.
  if (!((low[i] as number) <= lowest)) low[i] = lowest;
  if (!((high[i] as number) >= highest)) high[i] = highest;
}

/** Takes in each hour of an outline; the lowest and highest of a whole day stand for each hour of it. */
export function takeOutline(
  hours: HourExtremes,
  { points, spans }: Pick<ReadingOutline, 'points' | 'spans'>,
): void {
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
      takeHour(hours, hour, low, high);
    }
  }
}

/**
 * What several sensors of a place say together, hour by hour: the nearest that speak in an hour, and
 * of them the coldest or the dampest. Of the other end it is a bound: the coldest sensor is never
 * warmer than the lowest of the sensors’ highest.
 *
 * @param sensors - their hours are those of the grid
 */
export function speakingHours(
  sensors: readonly { level: number; hours: HourExtremes }[],
  speaker: Speaker,
  grid: CurveGrid,
): HourExtremes {
  const spoken = unknownHours(grid);
  const levels = new Float64Array(spoken.low.length).fill(Number.POSITIVE_INFINITY);
  const pick = speaker === 'lowest' ? Math.min : Math.max;
  for (const { level, hours } of [...sensors].sort((a, b) => a.level - b.level)) {
    for (let i = 0; i < levels.length; i++) {
      const [low, high] = [hours.low[i] as number, hours.high[i] as number];
      const known = levels[i] as number;
      if (Number.isNaN(low) || level > known) continue;
      spoken.low[i] = level < known ? low : pick(spoken.low[i] as number, low);
      spoken.high[i] = level < known ? high : pick(spoken.high[i] as number, high);
      levels[i] = level;
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
  const first = grid.startAt / hourMs - hours.firstHour;
  let lastFilled = -1;
  for (let i = 0; i < grid.count; i++) {
    let [low, high, middle, count] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, 0];
    for (let hour = first + i * perStep; hour < first + (i + 1) * perStep; hour++) {
      const [lowest, highest] = [hours.low[hour] as number, hours.high[hour] as number];
      if (Number.isNaN(lowest)) continue;
      low = Math.min(low, lowest);
      high = Math.max(high, highest);
      middle += (lowest + highest) / 2;
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
