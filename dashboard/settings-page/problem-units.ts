import type { Problem } from '../../daemon/contract/problem.ts';
import { type Measure, toReaders, type UnitSystem } from '../format/units.ts';

/** Faults whose limit is a figure of the kind that was typed, and not a number of letters or lines. */
const limits: readonly unknown[] = ['too-small', 'not-above', 'too-big', 'not-below'];
const SHOWN_DIGITS = 6;

/**
 * What is wrong with a figure, its limits in the units that it was typed in.
 *
 * @param measure - of the figure; null where everyone types the same
 */
export function inReadersUnits(
  problem: Problem | null,
  measure: Measure | null,
  units: UnitSystem,
): Problem | null {
  if (problem === null || measure === null || units === 'metric') return problem;
  const shown = (limit: unknown) =>
    typeof limit === 'number'
      ? Number(toReaders(measure, limit, units).toPrecision(SHOWN_DIGITS))
      : limit;
  const changed = (part: unknown): unknown => {
    if (Array.isArray(part)) return part.map(changed);
    if (typeof part !== 'object' || part === null) return part;
    const inside = Object.entries(part).map(([key, value]) => [key, changed(value)] as const);
    if (!('variant' in part && limits.includes(part.variant))) return Object.fromEntries(inside);
    return Object.fromEntries(
      inside.map(([key, value]) =>
        key === 'minimum' || key === 'maximum' ? [key, shown(value)] : [key, value],
      ),
    );
  };
  return changed(problem) as Problem;
}
