import type { MixturePart, ShoppingList } from '../contract/mixture.ts';
import type { PlannedCoat } from '../contract/plan.ts';
import { mixture, partShares } from '../science/paint.ts';
import { coatedArea } from './coated-area.ts';
import type { BatchFact, CoatFact, PlanFact } from './facts.ts';
import { mixtureParts, partWords } from './pot.ts';

/** What stays in pots, brushes and strainers, %. Common practice, no source. */
export const usualLossPercent = 5;
/** Primer that is kept for ends cut on the scaffold, L. Common practice, no source. */
export const usualKeptPrimerL = 1;

export interface ShoppingQuestion {
  batches: readonly BatchFact[];
  plans: ReadonlyMap<string, PlanFact>;
  coats: ReadonlyMap<string, readonly CoatFact[]>;
  lossPercent: number;
  keepPrimerL: number;
  /** Sizes that each part is sold in, L; none where nobody said. */
  tinsL: Record<MixturePart, readonly number[]>;
}

const litresOf = ({ mixture: { paint, rawLinseedOil, turpentine } }: PlannedCoat) => [
  paint,
  rawLinseedOil,
  turpentine,
];

/** What to buy for all coats that are to come, with what is lost, and primer for cut ends. */
export function shoppingList(question: ShoppingQuestion): ShoppingList {
  const { batches, plans, coats, lossPercent, keepPrimerL, tinsL } = question;
  const neededL = [0, 0, 0];
  const listed: ShoppingList['coats'] = [];
  let primer: PlannedCoat | null = null;
  const add = (litres: readonly number[]) => {
    for (const [i, one] of litres.entries()) neededL[i] = (neededL[i] ?? 0) + one;
  };
  for (const batch of batches) {
    if (batch.closedAt !== null) continue;
    const planned = plans.get(batch.planId)?.coats ?? [];
    primer ??= planned.find(({ soaksIn }) => soaksIn) ?? null;
    const done = (coats.get(batch.id) ?? []).at(-1)?.coat ?? -1;
    for (const coat of planned.slice(done + 1)) {
      const areaM2 = coatedArea(batch.boards, coat.faces, coat.coverWidthMm);
      const { totalL, partsL } = mixture({
        ...{ areaM2, spreadingM2PerL: coat.spreadingM2PerL },
        ...{ parts: litresOf(coat), lossPercent },
      });
      add(partsL);
      listed.push({
        ...{ batchId: batch.id, batchName: batch.name },
        ...{ coatName: coat.name, areaM2, totalL },
      });
    }
  }
  if (primer) add(partShares(litresOf(primer)).map((share) => share * keepPrimerL));
  return {
    lossPercent,
    keepPrimerL: primer ? keepPrimerL : 0,
    coats: listed,
    lines: mixtureParts.flatMap((part, i) => {
      const litres = neededL[i] ?? 0;
      if (litres <= 0) return [];
      const tins = tinsL[part].length === 0 ? null : tinsFor(litres, tinsL[part]);
      const boughtL = tins?.reduce((sum, { sizeL, count }) => sum + sizeL * count, 0) ?? null;
      const wordsSaid = partWords(part);
      return [{ part, words: wordsSaid.text, wordsSaid, neededL: litres, tins, boughtL }];
    }),
  };
}

/** Tins are told apart to this, L. */
const stepL = 0.05;
/** Beyond this the largest tin alone is counted: nobody buys so much by the small tin. */
const mostSteps = 20_000;

/**
 * The tins that reach with the least left over; of equal ones the fewest tins.
 *
 * @param neededL - above 0
 * @param sizesL - at least one, above 0
 * @returns largest first
 */
export function tinsFor(
  neededL: number,
  sizesL: readonly number[],
): { sizeL: number; count: number }[] {
  const sizes = [...new Set(sizesL.filter((size) => size > 0))].sort((a, b) => b - a);
  const [largest] = sizes;
  if (largest === undefined) return [];
  const steps = sizes.map((size) => Math.max(1, Math.floor(size / stepL + 1e-9)));
  const needed = Math.ceil(neededL / stepL - 1e-9);
  if (needed > mostSteps) return [{ sizeL: largest, count: Math.ceil(neededL / largest) }];
  // fewest[n]: fewest tins that hold exactly n steps, and the last of them.
  const top = needed + Math.max(...steps);
  const fewest = new Array<number>(top + 1).fill(Number.POSITIVE_INFINITY);
  const last = new Array<number>(top + 1).fill(-1);
  fewest[0] = 0;
  for (let n = 1; n <= top; n++) {
    steps.forEach((step, i) => {
      const count = n >= step ? (fewest[n - step] ?? 0) + 1 : Number.POSITIVE_INFINITY;
      if (count < (fewest[n] ?? 0)) {
        fewest[n] = count;
        last[n] = i;
      }
    });
  }
  let n = needed;
  while (n < top && !Number.isFinite(fewest[n])) n++;
  const counts = sizes.map((sizeL) => ({ sizeL, count: 0 }));
  while (n > 0) {
    const i = last[n] ?? 0;
    const chosen = counts[i];
    if (!chosen) break;
    chosen.count++;
    n -= steps[i] ?? n;
  }
  return counts.filter(({ count }) => count > 0);
}
