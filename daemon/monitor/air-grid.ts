import { airLimits } from '../rules/air-verdict.ts';
import { hourMs } from '../rules/cure-span.ts';
import type { Sample } from '../rules/place-series.ts';

/* The air of a place on an even grid of times, so that two places can be held against each other. */

/** The vapour balance is fitted on a grid of this step: finer tells no more and costs more. */
export const gridMs = 5 * 60_000;

/** Reads a series at ascending times, straight from sample to sample; null across a gap. */
export function stepper(samples: Iterable<Sample>, gapMs: number): (at: number) => number | null {
  const next = samples[Symbol.iterator]();
  let before: Sample | null = null;
  let after: Sample | undefined = next.next().value;
  return (at) => {
    while (after && after.at < at) {
      before = after;
      after = next.next().value;
    }
    if (after?.at === at) return after.value;
    if (!before || at - before.at > gapMs) return null;
    if (!after) return before.value;
    if (after.at - before.at > gapMs) return null;
    return (
      before.value + ((after.value - before.value) * (at - before.at)) / (after.at - before.at)
    );
  };
}

/** Reads a series at ascending times: the newest value at or before each, unless it is old. */
export function follower(samples: Iterable<Sample>, gapMs: number): (at: number) => number | null {
  const rest = samples[Symbol.iterator]();
  let next: Sample | undefined = rest.next().value;
  let last: Sample | null = null;
  return (at) => {
    for (; next && next.at <= at; next = rest.next().value) last = next;
    return last !== null && at - last.at <= gapMs ? last.value : null;
  };
}

/** Values from a moment to another, one a step of the grid. */
export function onGrid(
  read: (at: number) => number | null,
  from: number,
  to: number,
): (number | null)[] {
  const values: (number | null)[] = [];
  for (let at = from; at <= to; at += gridMs) values.push(read(at));
  return values;
}

/** Those that there are. */
export const known = (values: readonly (number | null)[]) =>
  values.filter((value) => value !== null);

/** Of two series on the same grid, where both are known. */
export function differences(
  a: readonly (number | null)[],
  b: readonly (number | null)[],
): number[] {
  return a.flatMap((value, i) => {
    const other = b[i];
    return value === null || other === null || other === undefined ? [] : [value - other];
  });
}

/** Fewer values than this over the whole look-back say nothing: half of the grid. */
const fewest = (airLimits.lookBackHours * hourMs) / gridMs / 2;

/** Share of values that are so; null where there are too few of them. */
export const share = (values: readonly number[], is: (value: number) => boolean) =>
  values.length < fewest ? null : values.filter(is).length / values.length;

/** Mean of values; null where there are too few of them. */
export const mean = (values: readonly number[]) =>
  values.length < fewest ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
