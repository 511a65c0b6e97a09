import { MIDDLING_PAINT, type PaintTruth, slower } from './physics/paint-truth.ts';
import { type Random, seededRandom } from './physics/random.ts';

/** A tin on the shelf of an invented shed. */
export interface Tin {
  readonly colour: string;
  readonly number: string;
  readonly truth: PaintTruth;
}

/*
 * How paints differ. Assumptions, sized so that over colours, tins, coats and boards a batch may be
 * coated again after two to three days at 20 °C (10 and 90 %: common practice, no source).
 */
/** Standard deviations of logarithms. */
const COLOUR_SPREAD = 0.1;
const LAG_SPREAD = 0.18;
const TIN_SPREAD = 0.04;
const COAT_SPREAD = 0.04;
/** Standard deviations of energies, J/mol, and of what humidity does, per %. */
const ENERGY_SPREAD = 4500;
const HUMIDITY_SPREAD = 0.0015;
/** Coats differ: a thinned primer sets sooner, a fat last coat later. */
export const COAT_SLOWNESS = [0.95, 1, 1.08] as const;

const COLOURS = ['red ochre', 'chalk grey', 'leaf green', 'umber', 'slate blue'] as const;

const spread = (random: Random, standardDeviation: number) =>
  Math.exp(standardDeviation * random.normal());

function drawnColour(random: Random): PaintTruth {
  const slowed = slower(MIDDLING_PAINT, spread(random, COLOUR_SPREAD));
  return {
    ...slowed,
    lagHours: slowed.lagHours * spread(random, LAG_SPREAD),
    lagEnergyJPerMol: slowed.lagEnergyJPerMol + ENERGY_SPREAD * random.normal(),
    stepEnergyJPerMol: slowed.stepEnergyJPerMol + ENERGY_SPREAD * random.normal(),
    perHumidityPercent: slowed.perHumidityPercent + HUMIDITY_SPREAD * random.normal(),
    lightGain: slowed.lightGain * random.between(0.3, 1.7),
    stillAirLoss: slowed.stillAirLoss * random.between(0.3, 1.7),
  };
}

/**
 * The tins of an invented shed.
 *
 * @param seed - any integer
 * @param colours - how many colours, 1 to 5
 * @returns tins by colour; the first of a colour is used first
 */
export function drawnTins(seed: number, colours: number): readonly (readonly Tin[])[] {
  const random = seededRandom(seed, 20);
  return COLOURS.slice(0, colours).map((colour) => {
    const truth = drawnColour(random);
    return [1, 2, 3].map((number) => ({
      colour,
      number: `${colour} ${number}`,
      truth: slower(truth, spread(random, TIN_SPREAD)),
    }));
  });
}

/**
 * A coat of a tin: thinned or fat, stirred well or less so.
 *
 * @param coat - its number in the plan, 0 for the primer
 * @param film - how much thicker than planned it was laid, 1 for as planned
 */
export function coatOf(tin: Tin, coat: number, film: number, random: Random): PaintTruth {
  const slowness = (COAT_SLOWNESS[coat] ?? 1) * spread(random, COAT_SPREAD);
  return slower(tin.truth, slowness * filmSlowness(coat, film));
}

/** A thicker film is slower, though not in proportion; a primer sinks in. Assumption. */
const filmSlowness = (coat: number, film: number) => (coat === 0 ? 1 : film ** 0.7);
