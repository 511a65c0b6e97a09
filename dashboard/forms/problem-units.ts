import type { Problem } from '../../daemon/contract/problem.ts';
import { type Measure, toReaders, type UnitSystem } from '../format/units.ts';

/** Faults whose limit is a figure of the kind that was typed, and not a number of letters or lines. */
const limits: readonly unknown[] = ['too-small', 'not-above', 'too-big', 'not-below'];
const SHOWN_DIGITS = 5;
/** Digits that the way into another unit leaves as they are. */
const SURE_DIGITS = 12;
const rounded = { minimum: Math.ceil, maximum: Math.floor };

/**
 * What is wrong with a figure, its limits in the units that it was typed in. They are rounded to the
 * side that is taken: who types what was told is not refused again.
 *
 * @param measure - of the figure whose limits are told
 */
export function inReadersUnits(
  problem: Problem | null,
  measure: Measure,
  units: UnitSystem,
): Problem | null {
  if (problem === null || units === 'metric') return problem;
  const changed = (part: unknown): unknown => {
    if (Array.isArray(part)) return part.map(changed);
    if (typeof part !== 'object' || part === null) return part;
    const inside = Object.entries(part).map(([key, value]) => [key, changed(value)] as const);
    if (!('variant' in part && limits.includes(part.variant))) return Object.fromEntries(inside);
    return Object.fromEntries(
      inside.map(([key, value]) =>
        (key === 'minimum' || key === 'maximum') && typeof value === 'number'
          ? [key, toShown(toReaders(measure, value, units), rounded[key])]
          : [key, value],
      ),
    );
  };
  return changed(problem) as Problem;
}

/** With as many digits as one reads, without the last bits of a sum. */
function toShown(limit: number, round: (figure: number) => number): number {
  const sure = Number(limit.toPrecision(SURE_DIGITS));
  if (sure === 0) return 0;
  const decimals = SHOWN_DIGITS - 1 - Math.floor(Math.log10(Math.abs(sure)));
  const scaled = Number((sure * 10 ** decimals).toPrecision(SURE_DIGITS));
  return Number((round(scaled) / 10 ** decimals).toPrecision(SHOWN_DIGITS));
}
