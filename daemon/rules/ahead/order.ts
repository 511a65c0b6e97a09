import type { JobChain } from './job-chain.ts';
import { needAt } from './job-chain.ts';
import { curedAt } from './season-rate.ts';
import { expectedFuture, type Timetable, timetable, type Workshop } from './timetable.ts';
import { fitWork } from './work-calendar.ts';

/** An order to work in, and how far it can be from the best there is. */
export interface FoundOrder {
  /** Indices of the chains, the first to be served first. */
  order: number[];
  /** When all is done with it, UTC epoch ms; null: not within the calendar. */
  endsAt: number | null;
  /** No order can be done earlier than this, UTC epoch ms; null where no bound is known. */
  boundAt: number | null;
  /** Timetables that were tried. */
  tried: number;
}

/** Timetables tried at most: keeps a plan of many batches within a blink. */
const mostTried = 300;
/** Up to so many batches every order is tried: 120 of them. */
const mostTriedWhole = 5;

/**
 * Looks for an order that is done early: of a few batches all are tried, else several plain
 * ones and then swaps in the best of them while that helps. That need not be the best there is, so a
 * lower bound stands beside it.
 */
export function findOrder(shop: Workshop, chains: readonly JobChain[]): FoundOrder {
  const asGiven = chains.map((_, index) => index);
  const by = (measure: (chain: JobChain) => number) =>
    [...asGiven].sort((a, b) => measure(chains[a] as JobChain) - measure(chains[b] as JobChain));
  const work = (chain: JobChain) => chain.steps.reduce((sum, step) => sum + step.workMs, 0);
  const starts = [
    asGiven,
    by((chain) => -chain.steps.length),
    by((chain) => chain.rackM),
    by((chain) => -chain.rackM),
    by((chain) => -work(chain)),
  ];
  let tried = 0;
  const cost = (order: readonly number[]): Cost => {
    tried++;
    return costOf(timetable(shop, chains, order, expectedFuture));
  };
  let best = asGiven;
  let bestCost = cost(asGiven);
  const better = (order: number[]) => {
    const its = cost(order);
    if (!isLess(its, bestCost)) return false;
    best = order;
    bestCost = its;
    return true;
  };
  const improve = () => {
    for (let improved = true; improved && tried < mostTried; ) {
      improved = false;
      for (let i = 0; i < best.length; i++) {
        for (let j = i + 1; j < best.length && tried < mostTried; j++) {
          const swapped = [...best];
          [swapped[i], swapped[j]] = [swapped[j] as number, swapped[i] as number];
          if (better(swapped)) improved = true;
        }
      }
    }
  };
  for (const order of starts.slice(1)) better(order);
  if (chains.length <= mostTriedWhole) for (const order of everyOrder(asGiven)) better(order);
  else improve();
  const endsAt = bestCost.unfinished > 0 ? null : bestCost.lastAt;
  return { order: best, endsAt, boundAt: lowerBound(shop, chains), tried };
}

function* everyOrder(items: readonly number[]): Generator<number[]> {
  if (items.length <= 1) yield [...items];
  for (const [i, item] of items.entries()) {
    for (const rest of everyOrder([...items.slice(0, i), ...items.slice(i + 1)])) {
      if (items.length > 1) yield [item, ...rest];
    }
  }
}

interface Cost {
  unfinished: number;
  lastAt: number;
  sum: number;
}

function costOf({ doneAt }: Timetable): Cost {
  const done = doneAt.filter((at) => at !== null);
  return {
    unfinished: doneAt.length - done.length,
    lastAt: Math.max(0, ...done),
    sum: done.reduce((sum, at) => sum + at, 0),
  };
}

function isLess(a: Cost, b: Cost): boolean {
  if (a.unfinished !== b.unfinished) return a.unfinished < b.unfinished;
  if (a.lastAt !== b.lastAt) return a.lastAt < b.lastAt;
  return a.sum < b.sum;
}

/**
 * A time before which no order is done: the longest of what one batch takes by itself, what the
 * hands take for all, and what the racks take for all.
 */
export function lowerBound(shop: Workshop, chains: readonly JobChain[]): number | null {
  const alone = chains.map((chain) =>
    timetable({ ...shop, capacityM: null }, [chain], [0], expectedFuture),
  );
  const ends = alone.map(({ doneAt }) => doneAt[0] ?? null);
  if (ends.some((at) => at === null)) return null;
  const bounds = [...(ends as number[]), handsBound(shop, chains), racksBound(shop, chains, alone)];
  return Math.max(0, ...bounds.filter((at) => at !== null));
}

/** All the work one after the other, then the quickest last cure. */
function handsBound(shop: Workshop, chains: readonly JobChain[]): number | null {
  const busy = chains.filter((chain) => chain.steps.length > 0);
  const workMs = busy.flatMap((chain) => chain.steps).reduce((sum, step) => sum + step.workMs, 0);
  if (workMs === 0) return null;
  const slot = fitWork(shop.days, shop.days[0]?.startAt ?? 0, workMs);
  if (slot === null) return null;
  const tails = busy.map((chain) => {
    const last = chain.steps.at(-1);
    const rates = last && shop.rates.get(last.placeId);
    if (!last?.cure || !rates) return slot.endsAt;
    return curedAt(shop.days, rates, slot.endsAt, needAt(last.cure, 0), 0) ?? slot.endsAt;
  });
  // A later, warmer day may cure quicker than one reckoned from here: the work alone is certain.
  return isGettingColder(shop) ? Math.min(...tails) : slot.endsAt;
}

/** Whether no coming day of any place gives more than a day before it. */
function isGettingColder({ rates }: Workshop): boolean {
  return [...rates.values()].every((days) =>
    days.every((day, i) => i === 0 || day.hoursAt20 <= (days[i - 1]?.hoursAt20 ?? 0) + 1e-9),
  );
}

/** Metres times the time each lot lies there at the least, over the metres there are. */
function racksBound(
  shop: Workshop,
  chains: readonly JobChain[],
  alone: readonly Timetable[],
): number | null {
  const { capacityM } = shop;
  const from = shop.days[0]?.startAt ?? 0;
  if (capacityM === null || capacityM <= 0) return null;
  let metreMs = 0;
  let aloneMs = 0;
  for (const [index, chain] of chains.entries()) {
    const ms = leastOnRackMs(shop, chain, alone[index] as Timetable, from);
    metreMs += chain.rackM * ms;
    // Two lots that each take more than half lie there one after the other.
    if (chain.rackM > capacityM / 2) aloneMs += ms;
  }
  return metreMs === 0 ? null : from + Math.max(metreMs / capacityM, aloneMs);
}

/** The least time a chain keeps its room: its cure at the best day’s rate, without any waiting. */
function leastOnRackMs(shop: Workshop, chain: JobChain, alone: Timetable, from: number): number {
  if (chain.isOnRack) {
    const off = alone.steps.find((step) => !chain.steps[step.step]?.onRack);
    return off ? Math.max(0, off.endsAt - from) : 0;
  }
  let ms = 0;
  for (const step of chain.steps) {
    if (!step.onRack) break;
    const best = Math.max(0, ...(shop.rates.get(step.placeId) ?? []).map((day) => day.hoursAt20));
    ms += step.workMs;
    if (step.cure && best > 0) ms += (needAt(step.cure, 0) / best) * 24 * 3_600_000;
  }
  return ms;
}
