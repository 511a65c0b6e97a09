import type { CureModel } from '../science/cure.ts';
import { cappedSegmentEquivalentHours, segmentEquivalentHours } from '../science/cure-rate.ts';
import type { HourSum } from './hour-facts.ts';
import type { Sample } from './place-series.ts';

export const hourMs = 3_600_000;

/** Cure gathered over a stretch, in hours at 20 °C; `covered` in hours. */
export interface SpanSum {
  low: number;
  high: number;
  capped: number;
  covered: number;
}

export const noCure = (): SpanSum => ({ low: 0, high: 0, capped: 0, covered: 0 });

export function add(to: SpanSum, more: SpanSum): void {
  to.low += more.low;
  to.high += more.high;
  to.capped += more.capped;
  to.covered += more.covered;
}

/**
 * Adds what the straight line between two neighbouring samples gives, cut to a stretch.
 *
 * A line longer than the allowed gap adds to the high sum only.
 *
 * @param capC - temperature above which cure is not trusted, °C; the `capped` sum stops there
 */
export function addLine(
  to: SpanSum,
  a: Sample,
  b: Sample,
  fromAt: number,
  toAt: number,
  model: CureModel,
  capC: number,
): void {
  const startAt = Math.max(a.at, fromAt);
  const endAt = Math.min(b.at, toAt);
  if (endAt <= startAt) return;
  const startC = valueOn(a, b, startAt);
  const endC = valueOn(a, b, endAt);
  const gained = segmentEquivalentHours(model, startAt, startC, endAt, endC);
  to.high += gained;
  if (b.at - a.at > model.maxGapHours * hourMs) return;
  to.low += gained;
  to.capped +=
    startC <= capC && endC <= capC
      ? gained
      : cappedSegmentEquivalentHours(model, capC, startAt, startC, endAt, endC);
  to.covered += (endAt - startAt) / hourMs;
}

/** The sum over a stretch, from samples ascending by time that reach over its ends. */
export function spanSum(
  samples: Iterable<Sample>,
  fromAt: number,
  toAt: number,
  model: CureModel,
  capC: number,
): SpanSum {
  const sum = noCure();
  let a: Sample | null = null;
  for (const b of samples) {
    if (a) addLine(sum, a, b, fromAt, toAt, model, capC);
    a = b;
  }
  return sum;
}

/**
 * Adds one line to the hour sums it crosses, split exactly at the hours’ edges.
 *
 * @param hours - sums by whole hours since the epoch; changed in place
 * @param within - the first and last hour that are wanted
 */
export function addLineToHours(
  hours: Map<number, HourSum>,
  a: Sample,
  b: Sample,
  model: CureModel,
  capC: number,
  within: { fromHour: number; toHour: number },
): void {
  const first = Math.max(Math.floor(a.at / hourMs), within.fromHour);
  const last = Math.min(Math.floor((b.at - 1) / hourMs), within.toHour);
  for (let hour = first; hour <= last; hour++) {
    let sum = hours.get(hour);
    if (!sum) {
      sum = { hour, ...noCure() };
      hours.set(hour, sum);
    }
    addLine(sum, a, b, hour * hourMs, (hour + 1) * hourMs, model, capC);
  }
}

function valueOn(a: Sample, b: Sample, at: number): number {
  if (at === a.at) return a.value;
  if (at === b.at) return b.value;
  return a.value + ((b.value - a.value) * (at - a.at)) / (b.at - a.at);
}
