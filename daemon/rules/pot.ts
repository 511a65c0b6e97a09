import type { MixturePart, MixtureReply } from '../contract/mixture.ts';
import type { Mixture } from '../contract/plan.ts';
import type { Sentence } from '../contract/sentence.ts';
import { stickMarks } from '../science/paint.ts';
import { DENSITY_KG_PER_L, partMassesG } from '../science/paint-quantity.ts';
import {
  potVolume,
  type TaperedPot,
  taperedStickMarks,
  volumeAtDepth,
} from '../science/tapered-pot.ts';
import { sentence } from '../wording/english.ts';
import type { Inner } from '../wording/phrase.ts';
import { told } from '../wording/sentence.ts';

/** The parts in the order they are poured. */
export const mixtureParts: readonly MixturePart[] = ['paint', 'rawLinseedOil', 'turpentine'];

export const partWords = (part: MixturePart): Sentence => sentence(`part/${part}`, {});

/** A full pot is mixed to this share of its brim, %. Common practice, no source. */
export const usualFillPercent = 80;
/** A white linseed-oil paint, kg/L; its tin says it better. Assumption. */
const paintDensityKgPerL = 1.5;

/** A pot as it was measured; without `topMm` it is straight, without `heightMm` it has no brim. */
export interface MeasuredPot {
  bottomMm: number;
  topMm?: number | undefined;
  heightMm?: number | undefined;
}

type Amounts = MixtureReply['amounts'];
/** Where a density comes from. */
type DensityFrom = 'assumed' | 'given' | 'linseed-oil' | 'turpentine';

/**
 * Litres of each part as they are measured out: what is not in the mixture is left out.
 *
 * @param litres - of each part in the order of `mixtureParts`
 * @param paintKgPerL - from the tin; an assumed one when null
 */
export function amountsOf(litres: readonly number[], paintKgPerL: number | null): Amounts {
  const density: Record<MixturePart, [number, DensityFrom]> = {
    paint: paintKgPerL === null ? [paintDensityKgPerL, 'assumed'] : [paintKgPerL, 'given'],
    rawLinseedOil: [DENSITY_KG_PER_L.linseedOil, 'linseed-oil'],
    turpentine: [DENSITY_KG_PER_L.turpentine, 'turpentine'],
  };
  const grams = partMassesG(
    litres,
    mixtureParts.map((part) => density[part][0]),
  );
  return mixtureParts.flatMap((part, i) => {
    const amount = litres[i] ?? 0;
    if (amount <= 0) return [];
    const [densityKgPerL, from] = density[part];
    const [wordsSaid, densityFromSaid] = [partWords(part), sentence(`density/${from}`, {})];
    return [
      {
        ...{ part, words: wordsSaid.text, wordsSaid, litres: amount },
        millilitres: Math.round(1000 * amount),
        grams: Math.round(grams[i] ?? 0),
        ...{ densityKgPerL, densityFrom: densityFromSaid.text, densityFromSaid },
      },
    ];
  });
}

function tapered({ bottomMm, topMm, heightMm }: MeasuredPot): TaperedPot | null {
  if (heightMm === undefined) {
    if (topMm === undefined || topMm === bottomMm) return null;
    throw new RangeError('potHeightMm is missing; allowed: with potTopDiameterMm it must be given');
  }
  return { bottomDiameterMm: bottomMm, topDiameterMm: topMm ?? bottomMm, heightMm };
}

/**
 * What goes into one pot, when the whole is mixed in pots that are all alike.
 *
 * @param parts - parts by volume in the order of `mixtureParts`
 * @throws RangeError on impossible measures
 */
export function potOf(
  totalL: number,
  parts: readonly number[],
  pot: MeasuredPot,
  given: { fillPercent?: number | undefined; paintKgPerL: number | null },
): NonNullable<MixtureReply['pot']> {
  const shape = tapered(pot);
  const holdsL = shape === null ? null : potVolume(shape);
  const mostL = holdsL === null ? totalL : (holdsL * (given.fillPercent ?? usualFillPercent)) / 100;
  const fills = Math.max(1, Math.ceil(totalL / mostL - 1e-9));
  const fillL = totalL / fills;
  const marksMm =
    shape === null
      ? stickMarks({ potDiameterMm: pot.bottomMm, volumeL: fillL, parts })
      : taperedStickMarks(shape, fillL, parts);
  const sum = parts.reduce((total, part) => total + part, 0);
  const amounts = amountsOf(
    parts.map((part) => (part / sum) * fillL),
    given.paintKgPerL,
  );
  return {
    holdsL,
    fills,
    fillL,
    marks: amounts.map((amount) => ({
      ...amount,
      stickCm: Math.round(marksMm[mixtureParts.indexOf(amount.part)] ?? 0) / 10,
    })),
  };
}

/** What is done at the mixing bench, in its order. Common practice, no source. */
export function mixingSteps(mixture: Mixture, pot: MixtureReply['pot']): Sentence[] {
  const steps: Sentence[] = [sentence('mix-stir-up', {})];
  if (pot !== null) {
    for (const { part, stickCm, millilitres, grams } of pot.marks) {
      const how = part === 'turpentine' ? 'mix-pour/turpentine' : 'mix-pour';
      steps.push(sentence(how, { part, stickCm, millilitres, grams }));
    }
    if (pot.fills > 1) steps.push(sentence('mix-pots', { pots: pot.fills }));
  }
  if (mixture.turpentine > 0 && pot === null) steps.push(sentence('mix-turpentine-last', {}));
  if (mixture.rawLinseedOil > 0 || mixture.turpentine > 0) steps.push(sentence('mix-stir', {}));
  steps.push(sentence('mix-label', {}));
  return steps;
}

/**
 * Whether the tins reach.
 *
 * @param neededL - of each part in the order of `mixtureParts`
 * @param haveL - likewise; undefined where nobody said
 * @param boards - how many boards the need is for; null where that is not known
 * @returns null where nothing was said of the tins
 */
export function enoughInTins(
  neededL: readonly number[],
  haveL: readonly (number | undefined)[],
  boards: number | null,
): MixtureReply['enough'] {
  if (haveL.every((have) => have === undefined)) return null;
  let share = 1;
  const missing = mixtureParts.flatMap((part, i) => {
    const needed = neededL[i] ?? 0;
    const have = haveL[i];
    if (have === undefined || needed <= 0) return [];
    share = Math.min(share, have / needed);
    return have < needed - 1e-9 ? [{ part, litres: needed - have }] : [];
  });
  const reaches = boards === null ? null : Math.floor(boards * share + 1e-9);
  const answer = (word: 'yes' | 'no', wordsSaid: Sentence) => ({
    ...{ word, words: wordsSaid.text, wordsSaid, missing, boards: reaches },
  });
  if (missing.length === 0) return answer('yes', sentence('tins-reach', {}));
  const lacking = missing.map((one) => told('litres-of', one) as Inner);
  if (reaches === null || boards === null) return answer('no', sentence('tins-short', { lacking }));
  return answer('no', sentence('tins-short/boards', { lacking, reaches, boards }));
}

/** How much was used, told as somebody at the bench tells it. */
export interface PotsUsed {
  /** Pots that were mixed, the last one too. */
  count: number;
  /** What was mixed in each, L. */
  litresEach: number;
  /** What is left in the last one, % of what was in it … */
  lastLeftPercent?: number | undefined;
  /** … or how deep it stands, cm, in a pot of these measures. */
  lastLeftCm?: number | undefined;
  pot?: MeasuredPot | undefined;
}

/**
 * Litres used, from how many pots and how full the last one is.
 *
 * @throws RangeError where more is left in the last pot than was in it
 */
export function litresUsed({ count, litresEach, ...last }: PotsUsed): number {
  const leftL =
    last.lastLeftCm === undefined
      ? (litresEach * (last.lastLeftPercent ?? 0)) / 100
      : depthL(last.lastLeftCm * 10, last.pot);
  if (leftL > litresEach + 1e-9) {
    throw new RangeError(
      `the last pot would hold ${leftL.toFixed(2)} L; allowed: up to the ${litresEach} L that were mixed in it`,
    );
  }
  return Math.max(0, count * litresEach - leftL);
}

function depthL(depthMm: number, pot: MeasuredPot | undefined): number {
  if (!pot) throw new RangeError('pot is missing; allowed: with lastLeftCm it must be given');
  const shape = tapered(pot) ?? {
    ...{ bottomDiameterMm: pot.bottomMm, topDiameterMm: pot.bottomMm },
    heightMm: Math.max(depthMm, 1),
  };
  return volumeAtDepth(shape, depthMm);
}
