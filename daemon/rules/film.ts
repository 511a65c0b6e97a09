/** Limits of how far a film’s thickness may change what a coat needs. Assumption. */
const thinnest = 0.5;
const thickest = 2;

/**
 * How a coat’s film changes what it needs: in proportion to its thickness. Assumption; a primer
 * sinks into the wood instead of lying on it, and is left alone.
 *
 * @param areaM2 - coated area
 * @param usedL - litres used; null when unknown, then the film is taken as planned
 * @param plannedM2PerL - spreading rate of the plan
 * @returns factor, 0.5 to 2
 */
export function filmFactor(
  soaksIn: boolean,
  areaM2: number,
  usedL: number | null,
  plannedM2PerL: number,
): number {
  if (soaksIn || usedL === null || usedL <= 0 || areaM2 <= 0) return 1;
  return Math.min(thickest, Math.max(thinnest, (usedL * plannedM2PerL) / areaM2));
}
