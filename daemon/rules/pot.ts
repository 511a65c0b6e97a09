import type { MixturePart, MixtureReply } from '../contract/mixture.ts';
import type { Mixture } from '../contract/plan.ts';
import { stickMarks } from '../science/paint.ts';
import { DENSITY_KG_PER_L, partMassesG } from '../science/paint-quantity.ts';
import {
  potVolume,
  type TaperedPot,
  taperedStickMarks,
  volumeAtDepth,
} from '../science/tapered-pot.ts';

/** The parts in the order they are poured. */
export const mixtureParts: readonly MixturePart[] = ['paint', 'rawLinseedOil', 'turpentine'];

export const partWords: Record<MixturePart, string> = {
  paint: 'paint',
  rawLinseedOil: 'raw linseed oil',
  turpentine: 'turpentine',
};

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

/**
 * Litres of each part as they are measured out: what is not in the mixture is left out.
 *
 * @param litres - of each part in the order of `mixtureParts`
 * @param paintKgPerL - from the tin; an assumed one when null
 */
export function amountsOf(litres: readonly number[], paintKgPerL: number | null): Amounts {
  const density: Record<MixturePart, [number, string]> = {
    paint:
      paintKgPerL === null
        ? [paintDensityKgPerL, 'assumption: look on the tin']
        : [paintKgPerL, 'as given'],
    rawLinseedOil: [DENSITY_KG_PER_L.linseedOil, 'published: 0.934 at 15 °C, 0.925 at 25 °C'],
    turpentine: [DENSITY_KG_PER_L.turpentine, 'published: 0.86'],
  };
  const grams = partMassesG(
    litres,
    mixtureParts.map((part) => density[part][0]),
  );
  return mixtureParts.flatMap((part, i) => {
    const amount = litres[i] ?? 0;
    if (amount <= 0) return [];
    const [densityKgPerL, densityFrom] = density[part];
    return [
      {
        ...{ part, words: partWords[part], litres: amount },
        millilitres: Math.round(1000 * amount),
        grams: Math.round(grams[i] ?? 0),
        ...{ densityKgPerL, densityFrom },
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
export function mixingSteps(mixture: Mixture, pot: MixtureReply['pot']): string[] {
  const steps = [
    'Lift off a skin, stir the paint up from the bottom of its tin, and strain it where there are lumps.',
  ];
  if (pot !== null) {
    for (const { part, words, stickCm, millilitres, grams } of pot.marks) {
      const mind = part === 'turpentine' ? ' Doors open, away from any flame or spark.' : '';
      steps.push(
        `Pour ${words} until the stick is wet to ${stickCm.toFixed(1)} cm (${millilitres} mL, ${grams} g).${mind}`,
      );
    }
    if (pot.fills > 1) steps.push(`So ${pot.fills} times, each pot alike.`);
  }
  if (mixture.turpentine > 0 && pot === null) {
    steps.push('Turpentine goes in last, with the doors open, away from any flame or spark.');
  }
  if (mixture.rawLinseedOil > 0 || mixture.turpentine > 0) {
    steps.push('Stir until no streak is left; stir again whenever the brush has rested.');
  }
  steps.push('Write mixture, colour and date on the pot. The rag goes into the can with water.');
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
  if (missing.length === 0) {
    return { word: 'yes', words: 'The tins reach to the end.', missing, boards: reaches };
  }
  const lacking = missing.map(({ part, litres }) => `${litres.toFixed(2)} L of ${partWords[part]}`);
  const until = reaches === null ? '' : ` They reach for ${reaches} of ${boards} boards.`;
  const words = `Not enough: ${lacking.join(' and ')} short.${until}`;
  return { word: 'no', words, missing, boards: reaches };
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
