import { sentence } from '../../wording/english.ts';
import { end, type Finding, hourMs, raise } from './finding.ts';

/** Low at, and full enough again above, %. Common practice, no source. */
const lowAt = 15;
const enoughAt = 25;
/** Running empty within so many days at the pace of the last week is low as well. Assumption. */
const daysLeft = { low: 10, enough: 20 };
/** A trend needs so many days and so much of a fall, %. Assumptions. */
const leastDays = 3;
const leastFall = 3;
const rememberedDays = 8;
const dayMs = 24 * hourMs;

export interface Battery {
  /** Lowest of each day, ascending. */
  days: { day: number; percent: number }[];
}

export const newBattery = (): Battery => ({ days: [] });

/** Looks whether a battery runs out. @param percent - as sent */
export function lookAtBattery(finding: Finding, state: Battery, at: number, percent: number): void {
  const day = Math.floor(at / dayMs);
  const today = state.days.at(-1);
  // A changed battery makes all that was before worthless.
  if (today && percent > today.percent + enoughAt) state.days = [];
  const last = state.days.at(-1);
  if (last?.day === day) last.percent = Math.min(last.percent, percent);
  else state.days = [...state.days, { day, percent }].slice(-rememberedDays);
  const left = daysUntilEmpty(state, percent);
  if (percent <= lowAt) raise(finding, at, sentence('seen-battery', { percent }));
  else if (left !== null && left <= daysLeft.low) {
    const days = Math.max(1, Math.round(left));
    raise(finding, at, sentence('seen-battery/empty-soon', { percent, days }));
  } else if (percent >= enoughAt && (left === null || left >= daysLeft.enough)) end(finding, at);
}

function daysUntilEmpty({ days }: Battery, percent: number): number | null {
  const [first] = days;
  const last = days.at(-1);
  if (!first || !last || last.day - first.day < leastDays) return null;
  const fall = first.percent - last.percent;
  return fall < leastFall ? null : percent / (fall / (last.day - first.day));
}
