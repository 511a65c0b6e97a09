import { positive, within } from './argument-range.ts';
import { type BoardFace, boardArea, partShares } from './paint.ts';

/** Densities for the kitchen scale, kg/L. */
export const DENSITY_KG_PER_L = {
  /** **Source:** Gardner 1911, 0.934 at 15 °C; a safety data sheet, 0.925 at 25 °C; the middle. */
  linseedOil: 0.93,
  /** **Source:** NIOSH Pocket Guide 0648, 0.86. */
  turpentine: 0.86,
} as const;

/**
 * "So many per cent added" as parts: what is added is counted on the paint, not on the mix.
 *
 * @param parts - the paint before, any scale
 * @param addedPercent - volume added, % of the paint before, 0 to 1,000
 * @returns the parts scaled to 100, then the added part: 15 % added to pure paint is 100 : 15
 * @throws RangeError outside the range
 *
 * **Source:** arithmetic; that a painter's "10–20 % added" is meant so: common practice, no source.
 */
export function partsWithAdded(parts: readonly number[], addedPercent: number): number[] {
  within('addedPercent', addedPercent, 0, 1000);
  return [...partShares(parts).map((share) => 100 * share), addedPercent];
}

/**
 * Masses to weigh out instead of measuring volumes.
 *
 * @param partsL - litres of each part, 0 or more
 * @param densitiesKgPerL - density of each part, same order, above 0; a paint's is on its tin
 * @returns grams of each part
 * @throws RangeError outside the range, or when the two lists differ in length
 *
 * **Source:** mass = volume × density.
 */
export function partMassesG(
  partsL: readonly number[],
  densitiesKgPerL: readonly number[],
): number[] {
  if (partsL.length !== densitiesKgPerL.length) {
    throw new RangeError(
      `densitiesKgPerL has ${densitiesKgPerL.length} entries; allowed: ${partsL.length}, one per part`,
    );
  }
  return partsL.map((litres, index) => {
    within(`partsL[${index}]`, litres, 0, 1e6);
    const density = positive(`densitiesKgPerL[${index}]`, densitiesKgPerL[index] as number);
    return 1000 * litres * density;
  });
}

/**
 * How many boards a litre of mixed paint coats.
 *
 * @param board - measures in mm, and which sides are coated (at least one)
 * @param spreadingM2PerL - area covered by a litre, m²/L, above 0
 * @returns boards per litre, not rounded
 * @throws RangeError outside the range
 *
 * **Source:** spreading rate over the area of one board.
 */
export function boardsPerLitre(
  board: {
    readonly lengthMm: number;
    readonly widthMm: number;
    readonly thicknessMm: number;
    readonly faces: readonly BoardFace[];
  },
  spreadingM2PerL: number,
): number {
  if (board.faces.length === 0) throw new RangeError('faces is empty; allowed: at least one');
  return positive('spreadingM2PerL', spreadingM2PerL) / boardArea({ ...board, count: 1 });
}

/**
 * What is left in the pot.
 *
 * @param mixedL - litres mixed, 0 or more
 * @param usedL - litres used, 0 to what was mixed
 * @returns litres
 * @throws RangeError outside the range
 */
export function leftOverL(mixedL: number, usedL: number): number {
  within('mixedL', mixedL, 0, 1e6);
  return mixedL - within('usedL', usedL, 0, mixedL);
}
