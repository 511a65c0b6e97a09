import type { Reason, VerdictWord } from '../contract/gate.ts';
import type { Help } from '../contract/what-helps.ts';
import type { Airflow } from './air-verdict.ts';

/** What is known about a coat that is asked: what holds you back, and what would help? */
export interface HelpQuestion {
  verdict: VerdictWord;
  /** Reasons of the gate’s verdict that forbid the job now. */
  holds: readonly Reason[];
  isIndoors: boolean;
  airflow: Airflow;
  /** null where no fresh reading tells it. */
  tempC: number | null;
  rhPercent: number | null;
  /** Whether the air outdoors carries less water; null where that is not known. */
  isDrierOutside: boolean | null;
  /** Hours since a coat with turpentine was finished; null where it has none. */
  solventHours: number | null;
  /** True where nothing is gained at this temperature. */
  isStandingStill: boolean;
  failedTest: boolean;
  /** When it is likely to be possible as things are, and if it were kept warmer; null: unknown. */
  likelyAt: number | null;
  warmer: { toTempC: number; likelyAt: number | null } | null;
  /** How near the boards come to the dew point over the next day, K; null where not known. */
  leastDewMarginK: number | null;
}

export interface WhatHelps {
  holdsBack: Reason[];
  /** What would help, the most first; never empty while something holds back. */
  helps: Help[];
}

/** Limits, all of common practice, no source, but for the two assumptions named so. */
const limits = {
  /** Below this cure is slow enough to be named, °C. */
  coldC: 12,
  /** Above this it is damp, %. */
  dampRhPercent: 80,
  /** Boards nearer than this to the dew point are at risk, K. */
  dewMarginK: 3,
  /** No heat within this time after a coat with turpentine, h. */
  solventHours: 24,
  /** A gain smaller than this is not worth a heater, h. Assumption. */
  worthHours: 12,
} as const;

const heaterCaution =
  'Only with a heater that has no flame and nothing glowing, or one whose fumes go outdoors, clear of boards, rags and vapour, by its instructions and local rules. Never an open flame, a glowing or an unvented heater.';

/** What holds a job back, and what would help most: changed air, drier, warmer, or only time. */
export function whatHelps(question: HelpQuestion): WhatHelps {
  const { verdict, holds } = question;
  if (verdict === 'ready') return { holdsBack: [], helps: [] };
  const holdsBack = [...holds, ...slowReasons(question)];
  const helps = [changedAir(question), drier(question), warmer(question)].filter(
    (help) => help !== null,
  );
  helps.sort((a, b) => rank(b) - rank(a));
  if (helps.length === 0) helps.push(onlyTime(question));
  return { holdsBack, helps };
}

function slowReasons(question: HelpQuestion): Reason[] {
  const { tempC, rhPercent, airflow, isStandingStill } = question;
  const list: Reason[] = [];
  const say = (code: string, text: string) => list.push({ code, text });
  if (tempC === null) say('air-unknown', 'No fresh reading tells how warm it is there.');
  else if (isStandingStill) say('stands-still', `At ${tempC.toFixed(1)} °C it hardly cures.`);
  else if (tempC < limits.coldC) say('cold', `It is cold there: ${tempC.toFixed(1)} °C.`);
  if (rhPercent !== null && rhPercent > limits.dampRhPercent) {
    say('damp', `It is damp there: ${Math.round(rhPercent)} %.`);
  }
  if (airflow === 'poor') say('still-air', 'The air there stands still.');
  if (question.failedTest) say('failed-test', 'It failed a touch test, so it is a slow coat.');
  if (list.length === 0 && question.verdict !== 'hold') {
    say('time', 'Nothing is wrong: the oil takes up oxygen at its own pace.');
  }
  return list;
}

/** Oxygen and vapour move with the air; how much sooner nobody can say, so no hours are promised. */
function changedAir({ isIndoors, airflow, isDrierOutside }: HelpQuestion): Help | null {
  if (!isIndoors || airflow !== 'poor') return null;
  const text =
    isDrierOutside === false
      ? 'Change the air when it is drier outside than in; now it is wetter. Give the boards more space meanwhile. No fan straight on wet film.'
      : 'Change the air: open opposite doors, space the boards out. Shut up in the evening when it gets wetter outside. No fan straight on wet film.';
  return { kind: 'changed-air', text, gainHours: null };
}

function drier({ isIndoors, rhPercent, leastDewMarginK }: HelpQuestion): Help | null {
  const isDamp = rhPercent !== null && rhPercent > limits.dampRhPercent;
  const isNearDew = leastDewMarginK !== null && leastDewMarginK < limits.dewMarginK;
  if (!isIndoors || (!isDamp && !isNearDew)) return null;
  const why = isNearDew
    ? `Within a day the boards come within ${leastDewMarginK.toFixed(1)} K of the dew point`
    : 'Damp air keeps timber wet and the film open to dew';
  return {
    kind: 'drier',
    text: `${why}: dry the air, or change it while it is drier outside. By itself it is not reckoned to cure sooner.`,
    gainHours: null,
  };
}

function warmer(question: HelpQuestion): Help | null {
  const { isIndoors, solventHours, warmer: warmed, likelyAt } = question;
  if (!isIndoors || warmed === null || warmed.likelyAt === null) return null;
  const gainHours = likelyAt === null ? null : (likelyAt - warmed.likelyAt) / 3_600_000;
  if (gainHours !== null && gainHours < limits.worthHours) return null;
  if (solventHours !== null && solventHours < limits.solventHours) {
    return {
      kind: 'warmer-later',
      text: 'Warmth would help, but not within the first day after a coat with turpentine: let the vapour out first, with no heater and no spark about.',
      gainHours: null,
    };
  }
  const sooner =
    gainHours === null ? 'it would cure at all' : `about ${lengthWords(gainHours)} sooner`;
  return {
    kind: 'warmer',
    text: `Kept at ${warmed.toTempC.toFixed(0)} °C: ${sooner}. ${heaterCaution}`,
    gainHours,
  };
}

function onlyTime({ isIndoors, verdict }: HelpQuestion): Help {
  if (verdict === 'test') {
    return {
      kind: 'touch',
      text: 'Feel it: a touch test says more than any reckoning now.',
      gainHours: null,
    };
  }
  return {
    kind: 'only-time',
    text: isIndoors
      ? 'Only time helps: leave it as it is.'
      : 'Only time and weather help: leave it as it is.',
    gainHours: null,
  };
}

/** Air first: without oxygen warmth is of little use. Then what saves most hours. */
function rank(help: Help): number {
  if (help.kind === 'changed-air') return Number.POSITIVE_INFINITY;
  return help.gainHours ?? 0;
}

function lengthWords(hours: number): string {
  return hours < 36 ? `${Math.round(hours)} hours` : `${Math.round(hours / 24)} days`;
}
