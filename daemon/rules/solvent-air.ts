import type { Reason } from '../contract/gate.ts';
import type { Mixture } from '../contract/plan.ts';
import {
  airChangesForLimit,
  peakConcentration,
  solventConcentration,
  TURPENTINE,
} from '../science/vapour.ts';

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
  const cautions: Reason[] = [
    {
      code: 'solvent-leaves',
      text: `About ${figure(litres)} L of turpentine leave this coat, most of it in the first day. Change the air; no flame, no glowing heater, no sparks. The product’s sheet and local rules come first.`,
    },
  ];
  const release = releaseOf(question);
  if (!release || volumeM3 === null) return cautions;
  const perHour = release.airChangesPerHour;
  const limitPpm = limitOf(question);
  const now = solventConcentration(release, hoursSince).ppm;
  const peak = peakConcentration(release).ppm;
  const taken = airChangesPerHour === null ? 'if the air is changed only' : 'with the air changed';
  const limit =
    question.localLimitPpm === null
      ? `the lowest published limit is ${limitPpm} ppm`
      : `the limit set here is ${limitPpm} ppm`;
  cautions.push({
    code: 'solvent-estimate',
    text: `Estimate for ${figure(volumeM3)} m³ ${taken} ${figure(perHour)} times an hour: ${figure(now)} ppm now, ${figure(peak)} ppm at the most; ${limit}. Near the boards and low down it is more. This is no gas alarm.`,
  });
  if (peak > limitPpm) {
    cautions.push({ code: 'solvent-air-needed', text: airNeeded(release, limitPpm) });
  }
  if (peak >= explosiveShare * TURPENTINE.lowerExplosiveLimitPpm) {
    const share = Math.round((100 * peak) / TURPENTINE.lowerExplosiveLimitPpm);
    cautions.push({
      code: 'solvent-explosive',
      text: `That is ${share} % of what can be set alight: open doors and windows, stay out, and keep every spark away.`,
    });
  }
  return cautions;
}

function airNeeded(release: Parameters<typeof peakConcentration>[0], limitPpm: number): string {
  const perHour = airChangesForLimit({ ...release, limitPpm });
  return `To stay below that it would take about ${figure(perHour)} air changes an hour through the first hours. Where that cannot be had, ask someone licensed about breathing protection.`;
}

const figure = (value: number) => Number(value.toPrecision(2));
