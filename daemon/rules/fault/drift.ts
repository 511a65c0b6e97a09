import type { Quantity } from '../../contract/quantity.ts';
import { sentence } from '../../wording/english.ts';
import { binMs, binsPerHour, middle, rememberedBins, scatter } from './bins.ts';
import { end, type Finding, minuteMs, raise } from './finding.ts';

/** How far a sensor may leave its usual distance to the others, in the unit, and in robust standard deviations of it. Assumptions. */
export const driftLimits: Partial<Record<Quantity, number>> = {
  'air-temperature': 1.5,
  'relative-humidity': 8,
};
const usualSpreads = 5;
/** Away for so many bins; if it is far away, fewer are enough. Assumptions. */
const sustained = binsPerHour;
const far = { times: 2.5, bins: 3 };
/** The usual distance is told from bins of the last day and a half, but of the last hours. Assumptions. */
const leastUsual = 12 * binsPerHour;
const tooRecent = 2 * binsPerHour;
/** The one that left has left further than any other by this much. Assumption. */
export const furtherThanOthers = 1.4;

/** How far a series keeps from those about it. */
export interface Distance {
  /** Distances by bin, a ring; NaN where none is known. */
  all: Float64Array;
  lastBin: number;
  /** The usual distance and what it may differ by; kept as they were while a fault stands. */
  usual: number;
  allowed: number;
  /** Of the newest bin: the distance from the usual one. */
  away: number;
}

export const newDistance = (): Distance => ({
  all: new Float64Array(rememberedBins).fill(Number.NaN),
  lastBin: Number.NEGATIVE_INFINITY,
  usual: Number.NaN,
  allowed: Number.NaN,
  away: Number.NaN,
});

const slot = (bin: number) => ((bin % rememberedBins) + rememberedBins) % rememberedBins;
const at = ({ all }: Distance, bin: number) => all[slot(bin)] as number;

/** Takes in how far a series was from the others in a bin. @param apart - NaN where unknown */
export function keepDistance(
  distance: Distance,
  quantity: Quantity,
  bin: number,
  apart: number,
  stands: boolean,
): void {
  if (bin <= distance.lastBin) return;
  const from = Math.max(distance.lastBin + 1, bin - rememberedBins);
  for (let b = from; b < bin; b++) distance.all[slot(b)] = Number.NaN;
  distance.all[slot(bin)] = apart;
  distance.lastBin = bin;
  // The usual distance changes slowly: once an hour is enough.
  const isDue = bin % binsPerHour === 0 || Number.isNaN(distance.usual);
  if (!stands && isDue) learnUsual(distance, quantity);
  distance.away = apart - distance.usual;
}

function learnUsual(distance: Distance, quantity: Quantity): void {
  const least = driftLimits[quantity];
  if (least === undefined) return;
  const known: number[] = [];
  for (let b = distance.lastBin - rememberedBins + 1; b <= distance.lastBin - tooRecent; b++) {
    const apart = at(distance, b);
    if (!Number.isNaN(apart)) known.push(apart);
  }
  if (known.length < leastUsual) return;
  distance.usual = middle(known);
  distance.allowed = Math.max(least, usualSpreads * scatter(known, distance.usual));
}

/**
 * Looks whether a series left those about it.
 *
 * @param othersAway - how far each of the others is from its own usual distance
 * @returns from when on it was away, when it just turned out; the caller names it
 */
export function lookForDrift(
  finding: Finding,
  distance: Distance,
  quantity: Quantity,
  othersAway: readonly number[],
): void {
  const { lastBin, usual, allowed } = distance;
  if (Number.isNaN(usual)) return;
  const recent = Array.from({ length: sustained }, (_, i) => at(distance, lastBin - i) - usual);
  if (finding.standing !== null) {
    const isBack = recent.every((away) => Math.abs(away) <= allowed / 2);
    if (isBack) end(finding, (lastBin - sustained + 1) * binMs);
    return;
  }
  const isAway =
    (Math.abs(middle(recent.filter((away) => !Number.isNaN(away)))) > allowed &&
      recent.filter((away) => Math.abs(away) > allowed).length >= sustained - 1) ||
    recent.slice(0, far.bins).every((away) => Math.abs(away) > far.times * allowed);
  if (!isAway) return;
  const furthest = Math.max(0, ...othersAway.map(Math.abs).filter((away) => !Number.isNaN(away)));
  if (Math.abs(distance.away) < furtherThanOthers * furthest) return;
  let from = lastBin;
  const sign = Math.sign(distance.away);
  while (lastBin - from < rememberedBins && (at(distance, from - 1) - usual) * sign > allowed / 2)
    from--;
  const where = sign > 0 ? 'seen-drift/above' : 'seen-drift/below';
  const seen = sentence(where, { difference: Math.abs(distance.away), quantity });
  raise(finding, from * binMs, seen);
}

/** Whether a jump began what was taken for a drift. */
export function beganWithJump(fromAt: number, jumps: readonly { at: number }[]): boolean {
  return jumps.some((jump) => Math.abs(jump.at - fromAt) <= 2 * binMs + minuteMs);
}
