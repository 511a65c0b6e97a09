import type { Quantity } from '../../contract/quantity.ts';
import type { Sentence } from '../../contract/sentence.ts';
import { sentence } from '../../wording/english.ts';
import { type Bins, binMean, binMs, binsPerHour, middle } from './bins.ts';

/** Two places closer than this cannot be told apart, in the unit. Assumptions. */
const apartBy: Partial<Record<Quantity, number>> = {
  'air-temperature': 1.5,
  'relative-humidity': 8,
};
/** Levels are compared over an hour before and an hour after; hanging two sensors takes half an hour. Assumptions. */
const over = binsPerHour;
const handling = 3;
/** How near each must come to where the other was, as a share of their distance. Assumption. */
const near = 0.25;
/** Sensors differ by this much by themselves, in the unit. Assumptions. */
const apartByThemselves: Partial<Record<Quantity, number>> = {
  'air-temperature': 0.7,
  'relative-humidity': 4,
};

/** A sensor at a place, with its means. */
export interface Hung {
  sensorKey: number;
  name: string;
  placeId: string;
  bins: Bins;
}

/** Since when two sensors read as if they had been swapped. */
export interface Swapped {
  fromAt: number;
  seen: Sentence;
}

/** Levels of a series before and after a moment; null where it is not known or was not steady. */
function levels({ bins }: Hung, atBin: number) {
  const mean = (from: number) => {
    const values = Array.from({ length: over }, (_, i) => binMean(bins, from + i));
    return values.some(Number.isNaN)
      ? null
      : { level: middle(values), swing: Math.max(...values) - Math.min(...values) };
  };
  const before = mean(atBin - over - handling);
  const after = mean(atBin);
  return before && after ? { before, after } : null;
}

/**
 * Looks whether two sensors began to read as the other did, about the same time: only then were they
 * hung back the wrong way round, and not the weather turned.
 *
 * @param lastBin - the newest closed bin
 * @returns what is to be said of the pair, or null
 */
export function lookIfSwapped(
  quantity: Quantity,
  one: Hung,
  other: Hung,
  lastBin: number,
): Swapped | null {
  const least = apartBy[quantity];
  if (least === undefined || one.placeId === other.placeId) return null;
  const atBin = lastBin - over + 1;
  const [a, b] = [levels(one, atBin), levels(other, atBin)];
  if (!a || !b) return null;
  const distance = Math.abs(a.before.level - b.before.level);
  if (distance < least) return null;
  const close = Math.max(
    near * distance,
    Math.min(distance / 2.2, apartByThemselves[quantity] ?? 0),
  );
  const crossed =
    Math.abs(a.after.level - b.before.level) <= close &&
    Math.abs(b.after.level - a.before.level) <= close;
  // Both must have stood on their own level before and on the other’s after, with the step between.
  const isStep = [a, b].every(
    ({ before, after }) => before.swing <= distance / 2 && after.swing <= distance / 2,
  );
  if (!crossed || !isStep) return null;
  return {
    fromAt: (atBin - handling) * binMs,
    seen: sentence('seen-swapped', { sensor: one.name, other: other.name }),
  };
}
