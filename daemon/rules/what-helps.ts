import type { Reason, VerdictWord } from '../contract/gate.ts';
import type { Help } from '../contract/what-helps.ts';
import { sentence } from '../wording/english.ts';
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
  if (tempC === null) list.push(sentence('air-unknown/how-warm', {}));
  else if (isStandingStill) list.push(sentence('stands-still', { tempC }));
  else if (tempC < limits.coldC) list.push(sentence('cold', { tempC }));
  if (rhPercent !== null && rhPercent > limits.dampRhPercent) {
    list.push(sentence('damp', { rhPercent }));
  }
  if (airflow === 'poor') list.push(sentence('still-air', {}));
  if (question.failedTest) list.push(sentence('failed-test/slow-coat', {}));
  if (list.length === 0 && question.verdict !== 'hold') list.push(sentence('time', {}));
  return list;
}

/** Oxygen and vapour move with the air; how much sooner nobody can say, so no hours are promised. */
function changedAir({ isIndoors, airflow, isDrierOutside }: HelpQuestion): Help | null {
  if (!isIndoors || airflow !== 'poor') return null;
  const how =
    isDrierOutside === false ? 'help-changed-air/wetter-outside' : ('help-changed-air' as const);
  return { kind: 'changed-air', ...sentence(how, {}), gainHours: null };
}

function drier({ isIndoors, rhPercent, leastDewMarginK }: HelpQuestion): Help | null {
  const isDamp = rhPercent !== null && rhPercent > limits.dampRhPercent;
  const isNearDew = leastDewMarginK !== null && leastDewMarginK < limits.dewMarginK;
  if (!isIndoors || (!isDamp && !isNearDew)) return null;
  const said = isNearDew
    ? sentence('help-drier/near-dew', { marginK: leastDewMarginK })
    : sentence('help-drier', {});
  return { kind: 'drier', ...said, gainHours: null };
}

function warmer(question: HelpQuestion): Help | null {
  const { isIndoors, solventHours, warmer: warmed, likelyAt } = question;
  if (!isIndoors || warmed === null || warmed.likelyAt === null) return null;
  const gainHours = likelyAt === null ? null : (likelyAt - warmed.likelyAt) / 3_600_000;
  if (gainHours !== null && gainHours < limits.worthHours) return null;
  if (solventHours !== null && solventHours < limits.solventHours) {
    return { kind: 'warmer-later', ...sentence('help-warmer-later', {}), gainHours: null };
  }
  const { toTempC } = warmed;
  const said =
    gainHours === null
      ? sentence('help-warmer/at-all', { toTempC })
      : sentence('help-warmer', { toTempC, soonerHours: gainHours });
  return { kind: 'warmer', ...said, gainHours };
}

function onlyTime({ isIndoors, verdict }: HelpQuestion): Help {
  if (verdict === 'test') return { kind: 'touch', ...sentence('help-touch', {}), gainHours: null };
  const said = sentence(isIndoors ? 'help-only-time' : 'help-only-time/outdoors', {});
  return { kind: 'only-time', ...said, gainHours: null };
}

/** Air first: without oxygen warmth is of little use. Then what saves most hours. */
function rank(help: Help): number {
  if (help.kind === 'changed-air') return Number.POSITIVE_INFINITY;
  return help.gainHours ?? 0;
}
