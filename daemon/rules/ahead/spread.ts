import { normalCdf } from '../../science/normal-distribution.ts';
import { risingRoot } from '../../science/rising-root.ts';
import type { JobChain } from './job-chain.ts';
import { type Future, timetable, type Workshop } from './timetable.ts';

/** A time by its 10, 50 and 90 % points, UTC epoch ms; null: not within the calendar by then. */
export interface SpreadTime {
  early: number | null;
  likely: number | null;
  late: number | null;
}

export interface SpreadStep {
  chain: number;
  step: number;
  begins: SpreadTime;
  cured: SpreadTime;
}

/** Futures looked at: enough that the 10 and 90 % points are steady to a few hours. */
const futureCount = 120;

/**
 * Futures spread evenly over what may come, always the same ones: a plan must not flicker.
 * Points of the sequence by Halton (1960) in bases 2 and 3, turned to normal deviations.
 */
export function futures(count = futureCount): Future[] {
  return Array.from({ length: count }, (_, i) => ({
    paint: normalAt(halton(i + 1, 2)),
    weather: normalAt(halton(i + 1, 3)),
  }));
}

/** When each step and each chain is done, over many futures with one order. */
export function spreadTimes(shop: Workshop, chains: readonly JobChain[], order: readonly number[]) {
  const steps = new Map<
    string,
    { chain: number; step: number; begins: number[]; cured: number[] }
  >();
  const all = futures();
  const done: (number | null)[][] = chains.map(() => []);
  const last: (number | null)[] = [];
  for (const future of all) {
    const table = timetable(shop, chains, order, future);
    for (const { chain, step, beginsAt, endsAt, curedAt } of table.steps) {
      const key = `${chain} ${step}`;
      const known = steps.get(key) ?? { chain, step, begins: [], cured: [] };
      steps.set(key, known);
      known.begins.push(beginsAt);
      const isCured = curedAt ?? (chains[chain]?.steps[step]?.cure === null ? endsAt : null);
      if (isCured !== null) known.cured.push(isCured);
    }
    table.doneAt.forEach((at, chain) => {
      (done[chain] as (number | null)[]).push(at);
    });
    last.push(
      table.doneAt.some((at) => at === null) ? null : Math.max(0, ...(table.doneAt as number[])),
    );
  }
  const pointsOf = (values: readonly (number | null)[]) => points(values, all.length);
  return {
    steps: [...steps.values()].map(
      ({ chain, step, begins, cured }): SpreadStep => ({
        chain,
        step,
        begins: pointsOf(begins),
        cured: pointsOf(cured),
      }),
    ),
    done: done.map(pointsOf),
    all: pointsOf(last),
  };
}

function points(values: readonly (number | null)[], count: number): SpreadTime {
  const sorted = values.filter((at) => at !== null).sort((a, b) => a - b);
  // What never happened in a future counts as later than all that did.
  const at = (share: number) => sorted[Math.floor(share * (count - 1))] ?? null;
  return { early: at(0.1), likely: at(0.5), late: at(0.9) };
}

function halton(index: number, base: number): number {
  let share = 1;
  let value = 0;
  for (let i = index; i > 0; i = Math.floor(i / base)) {
    share /= base;
    value += share * (i % base);
  }
  return value;
}

function normalAt(probability: number): number {
  return risingRoot((z) => normalCdf(z) - probability, -8, 8);
}
