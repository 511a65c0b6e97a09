import type { Reason } from '../contract/gate.ts';
import type { Mixture } from '../contract/plan.ts';
import {
  airChangesForLimit,
  peakConcentration,
  solventConcentration,
  TURPENTINE,
} from '../science/vapour.ts';
import { sentence } from '../wording/english.ts';

/** What is known of a coat’s solvent and of the room it leaves into. */
export interface SolventQuestion {
  mixture: Mixture;
  /** Litres of the mixture on the boards: as recorded, or as planned. */
  mixedL: number;
  hoursSince: number;
  /** null outdoors, or where nobody entered it. */
  volumeM3: number | null;
  /** Air changes per hour, the low end of what was found; null when unknown. */
  airChangesPerHour: number | null;
  /** Limit of the local rules, ppm; null for the lowest published one. */
  localLimitPpm: number | null;
}

/** 63 % of the turpentine has left the coat after this time, h. Assumption. */
const releaseHours = 6;
/** For so long after a coat the cautions are shown, h. Assumption: most has left by then. */
const shownHours = 48;
/** Taken where nobody knows how often the air is changed, per hour. Assumption: a closed-up room. */
const closedUpPerHour = 0.5;
/** From this share of the lower explosive limit on it is said loudly. Common practice, no source. */
const explosiveShare = 0.1;

/** Solvent of one coat in the air of its room. */
export interface SolventVapour {
  nowPpm: number;
  limitPpm: number;
}

/**
 * What a coat alone puts into the air of its room at a moment; coats in the same room add up.
 *
 * @returns null without solvent, without a room of known volume, or long after
 */
export function solventVapour(question: SolventQuestion): SolventVapour | null {
  const release = releaseOf(question);
  if (!release) return null;
  return {
    nowPpm: solventConcentration(release, question.hoursSince).ppm,
    limitPpm: limitOf(question),
  };
}

const litresOf = ({ mixture, mixedL }: SolventQuestion) =>
  (mixedL * mixture.turpentine) / (mixture.paint + mixture.rawLinseedOil + mixture.turpentine);

const limitOf = ({ localLimitPpm }: SolventQuestion) =>
  localLimitPpm ?? TURPENTINE.lowestDayLimitPpm;

const isOfNow = ({ hoursSince }: SolventQuestion) => hoursSince >= 0 && hoursSince <= shownHours;

/** How the solvent leaves into the room; null where it cannot be reckoned. */
function releaseOf(question: SolventQuestion) {
  const { volumeM3, airChangesPerHour } = question;
  const litres = litresOf(question);
  if (litres <= 0 || volumeM3 === null || !isOfNow(question)) return null;
  return {
    litres,
    densityKgPerL: TURPENTINE.densityKgPerL,
    molarMassGPerMol: TURPENTINE.molarMassGPerMol,
    volumeM3,
    airChangesPerHour: airChangesPerHour ?? closedUpPerHour,
    releaseHours,
  };
}

/**
 * What is to be said about the solvent of a fresh coat. Estimates for comparison: never a green
 * light, no gas alarm; local rules and the product’s own sheet come first.
 */
export function solventCautions(question: SolventQuestion): Reason[] {
  const { hoursSince, volumeM3, airChangesPerHour } = question;
  const litres = litresOf(question);
  if (litres <= 0 || !isOfNow(question)) return [];
  const cautions: Reason[] = [sentence('solvent-leaves', { litres })];
  const release = releaseOf(question);
  if (!release || volumeM3 === null) return cautions;
  const limitPpm = limitOf(question);
  const peakPpm = peakConcentration(release).ppm;
  cautions.push(
    sentence('solvent-estimate', {
      volumeM3,
      perHour: release.airChangesPerHour,
      perHourKnown: airChangesPerHour !== null,
      nowPpm: solventConcentration(release, hoursSince).ppm,
      peakPpm,
      limitPpm,
      limitIsLocal: question.localLimitPpm !== null,
    }),
  );
  if (peakPpm > limitPpm) {
    const perHour = airChangesForLimit({ ...release, limitPpm });
    cautions.push(sentence('solvent-air-needed', { perHour }));
  }
  if (peakPpm >= explosiveShare * TURPENTINE.lowerExplosiveLimitPpm) {
    const percent = Math.round((100 * peakPpm) / TURPENTINE.lowerExplosiveLimitPpm);
    cautions.push(sentence('solvent-explosive', { percent }));
  }
  return cautions;
}
