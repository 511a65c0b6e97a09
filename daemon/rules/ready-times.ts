import type { CureAhead } from '../science/cure-ahead.ts';
import { type ReadyTimes, readyFrom } from '../science/forecast.ts';
import { type NeedCurve, needCurve } from '../science/need-curve.ts';
import type { Requirement } from '../science/touch.ts';
import type { CoatProgress } from './coat-progress.ts';

/** Cure that lies ahead at the coat’s place, by the model that rules and by the one beside it. */
export interface TwoOutlooks {
  ruling: CureAhead;
  beside: CureAhead;
}

/** What is asked of the outlook for one job. */
export interface ReadyQuestion {
  progress: CoatProgress;
  requirement: Requirement;
  own: { failedAt: number | null; passedAt: number | null };
  /** Multiple of the learned requirement that the job and this film need. */
  scale: number;
  boardSpread: number;
}

/** Curves of what is needed, kept for coats without tests of their own: they are most. */
const curves = new WeakMap<Requirement, Map<number, NeedCurve>>();

function curveFor({ requirement, own, scale, boardSpread }: ReadyQuestion): NeedCurve {
  if (own.failedAt === null && own.passedAt === null) {
    const known = curves.get(requirement) ?? new Map<number, NeedCurve>();
    curves.set(requirement, known);
    const curve = known.get(boardSpread) ?? needCurve(requirement, { boardSpread });
    known.set(boardSpread, curve);
    return curve;
  }
  return needCurve(requirement, {
    boardSpread,
    ...(own.failedAt === null ? {} : { failedAt: own.failedAt / scale }),
    // Passed before any cure was counted: nothing is left to look ahead for.
    ...(own.passedAt === null || own.passedAt <= 0 ? {} : { passedAt: own.passedAt / scale }),
  });
}

/**
 * When a job will be possible. Likely goes by the ruling model and the sum without gaps; early and
 * late by whichever model is faster and slower, and early also by what gaps may have given.
 *
 * @param shiftMs - how long ago the newest reading was, where that is too long: nothing is counted
 *   for the time since
 */
export function readyTimes(
  outlooks: TwoOutlooks,
  question: ReadyQuestion,
  shiftMs: number,
): ReadyTimes {
  const { progress, scale } = question;
  const need = curveFor(question);
  const from = (ahead: CureAhead, low: number, high: number) =>
    readyFrom(ahead, { degreeHoursLow: low, degreeHoursHigh: high }, need, { scale });
  const { degreeHours, otherDegreeHours, degreeHoursHigh } = progress;
  const ruling = from(outlooks.ruling, degreeHours, degreeHours);
  const beside = from(outlooks.beside, otherDegreeHours, otherDegreeHours);
  const bridged =
    degreeHoursHigh > degreeHours ? from(outlooks.ruling, degreeHours, degreeHoursHigh) : ruling;
  const shifted = (at: number | null) => (at === null ? null : at + shiftMs);
  const known = (times: (number | null)[]) => times.filter((at) => at !== null);
  const earlies = known([ruling.early, beside.early, bridged.early]);
  const lates = known([ruling.late, beside.late]);
  return {
    early: earlies.length === 0 ? null : shifted(Math.min(...earlies)),
    likely: shifted(ruling.likely),
    late: lates.length < 2 ? null : shifted(Math.max(...lates)),
  };
}
