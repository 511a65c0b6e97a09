/*
 * Degree-hours reckoned by hand: the area between the line through the readings and the datum, by
 * the trapezoid rule, which is exact for straight lines. ASTM C1074 writes the sum the same way
 * (temperature–time factor: the sum of (Ta − T0)·Δt).
 */

export interface Reading {
  /** UTC epoch ms */
  at: number;
  /** °C */
  value: number;
}

const hourMs = 3_600_000;

/** Area of one straight line above the datum, °C·h, between two moments on it. */
function lineSum(a: Reading, b: Reading, fromAt: number, toAt: number, datumC: number): number {
  const on = (at: number) => a.value + ((b.value - a.value) / (b.at - a.at)) * (at - a.at);
  const [start, end] = [on(fromAt) - datumC, on(toAt) - datumC];
  const hours = (toAt - fromAt) / hourMs;
  if (start >= 0 && end >= 0) return ((start + end) / 2) * hours;
  if (start <= 0 && end <= 0) return 0;
  // A triangle: the part of the line above the datum.
  const above = Math.max(start, end);
  return (above / 2) * hours * (above / (Math.abs(start) + Math.abs(end)));
}

/**
 * Degree-hours of readings over a stretch.
 *
 * @param readings - of one sensor, ascending
 * @param fromAt - UTC epoch ms
 * @param toAt - UTC epoch ms
 * @param model - datum, and the longest gap between readings that counts
 * @returns °C·h
 */
export function handSum(
  readings: readonly Reading[],
  fromAt: number,
  toAt: number,
  model = { datumC: 5, maxGapHours: 3 },
): number {
  let sum = 0;
  for (let i = 1; i < readings.length; i++) {
    const [a, b] = [readings[i - 1], readings[i]];
    if (!a || !b || b.at - a.at > model.maxGapHours * hourMs) continue;
    const [from, to] = [Math.max(a.at, fromAt), Math.min(b.at, toAt)];
    if (to > from) sum += lineSum(a, b, from, to, model.datumC);
  }
  return sum;
}

/** How far two figures lie apart, as a share of the second. */
export const apart = (seen: number, expected: number): number =>
  Math.abs(seen - expected) / Math.abs(expected);
