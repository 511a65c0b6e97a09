import type { Reason } from '../contract/gate.ts';
import { LockUpLine } from '../contract/lock-up.ts';
import type { Sentence } from '../contract/sentence.ts';
import type { ApplicationLimits } from '../contract/trade.ts';
import { sentence } from '../wording/english.ts';
import type { CoatFact, LockUpTickFact, NoticeFact, RemarkFact } from './facts.ts';
import type { NightAhead } from './hour-ahead.ts';
import { workingDay } from './local-time.ts';

/**
 * What is seen to before the shed is left on a day of coating or sanding, the most dangerous first.
 *
 * **Source:** rags: an NFPA tip sheet, read on a municipal blog (flat outdoors in a single layer
 * away from buildings until dry, then a tight metal can with water); the rest common practice, no
 * source. Local rules and the product’s own sheet come first.
 */
export const lockUpLines: readonly LockUpLine[] = LockUpLine.options;

/** A line of the list as it is read, with its title. */
export function lockUpWords(line: LockUpLine) {
  const titleSaid = sentence(`lock-up-title/${line}`, {});
  return { title: titleSaid.text, titleSaid, ...sentence(`lock-up/${line}`, {}) };
}

/** What made a working day a coating day, in words; empty on a day that was none. */
export function coatingDayReasons(
  day: string,
  timeZone: string,
  facts: {
    coats: readonly (CoatFact & { batchName: string })[];
    remarks: readonly (RemarkFact & { batchName: string })[];
    /** Coats on their way. */
    begun?: readonly { at: number; batchName: string }[];
  },
): Sentence[] {
  const isThen = (at: number | null) => at !== null && workingDay(at, timeZone) === day;
  const said: Sentence[] = [];
  for (const { batchName, begunAt, finishedAt } of facts.coats) {
    if (isThen(finishedAt)) said.push(sentence('day-coated', { batchName }));
    else if (isThen(begunAt)) said.push(sentence('day-begun', { batchName }));
  }
  for (const { batchName, kind, at } of facts.remarks) {
    if ((kind === 'sanded' || kind === 'clogged') && isThen(at))
      said.push(sentence('day-sanded', { batchName }));
  }
  for (const { batchName, at } of facts.begun ?? []) {
    if (isThen(at)) said.push(sentence('day-begun', { batchName }));
  }
  return said.filter(({ text }, i) => said.findIndex((one) => one.text === text) === i);
}

export interface LineState {
  done: boolean;
  at: number | null;
  by: string | null;
}

/**
 * Whether a line of a day is ticked: by the newest tick. One of the rags counts no longer when a
 * notice about rags was raised after it.
 *
 * @param ticks - in the order of time
 */
export function lineState(
  line: LockUpLine,
  day: string,
  ticks: readonly LockUpTickFact[],
  notices: readonly NoticeFact[],
): LineState {
  const newest = ticks.filter((tick) => tick.day === day && tick.line === line).at(-1);
  if (!newest?.done) return { done: false, at: null, by: null };
  const isOpenAgain =
    line === 'rags' &&
    notices.some(
      ({ kind, clearedAt, raisedAt }) =>
        kind === 'rags' && clearedAt === null && raisedAt > newest.at,
    );
  if (isOpenAgain) return { done: false, at: null, by: null };
  return { done: true, at: newest.at, by: newest.by };
}

/** What the coming night does to boards that are still wet. */
export function nightRisks(night: NightAhead, limits: ApplicationLimits): Reason[] {
  const { lowC, lowErrorK: errorK, leastMarginK, highestRhPercent, rainMm } = night;
  const { coldestC: limitC, dewMarginK: limitK, dampestRhPercent: limitPercent } = limits;
  const risks: Reason[] = [];
  if (lowC < limitC) risks.push(sentence('night-cold/wet-boards', { lowC, errorK, limitC }));
  if (leastMarginK !== null && leastMarginK < limitK) {
    risks.push(sentence('night-dew/wet-boards', { marginK: leastMarginK, limitK }));
  }
  if (highestRhPercent !== null && highestRhPercent > limitPercent) {
    risks.push(sentence('night-damp/wet-boards', { rhPercent: highestRhPercent, limitPercent }));
  }
  if (rainMm !== null && rainMm > 0) risks.push(sentence('night-rain', { rainMm }));
  return risks;
}
