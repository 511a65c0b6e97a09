/**
 * What the plan’s own figure counts for against what was really used: like a coat of this area, m².
 * Assumption.
 */
export const planCountsM2 = 25;

/** A rate further from the plan’s than this factor is taken for a slip of the pen. Assumption. */
const believable = 4;

/** Paint that was really used on one coat. */
export interface UsedOnCoat {
  areaM2: number;
  usedL: number;
}

export interface LearnedSpreading {
  m2PerL: number;
  /** Coats it was learned from; 0: the plan’s own figure. */
  coats: number;
}

/**
 * Spreading rate to reckon with: the area of all coats over the litres of all, the plan’s figure
 * counting as one more coat of {@link planCountsM2}. Litres add up, so a large coat says more than
 * a small one.
 *
 * @param plannedM2PerL - the plan’s figure, above 0
 * @param used - coats of which both is known
 */
export function learnedSpreading(
  plannedM2PerL: number,
  used: readonly UsedOnCoat[],
): LearnedSpreading {
  let areaM2 = planCountsM2;
  let litres = planCountsM2 / plannedM2PerL;
  let coats = 0;
  for (const one of used) {
    if (one.areaM2 <= 0 || one.usedL <= 0) continue;
    const against = one.areaM2 / one.usedL / plannedM2PerL;
    if (against > believable || against < 1 / believable) continue;
    areaM2 += one.areaM2;
    litres += one.usedL;
    coats++;
  }
  return { m2PerL: coats === 0 ? plannedM2PerL : areaM2 / litres, coats };
}
