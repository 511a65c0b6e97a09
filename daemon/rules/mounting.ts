import { toMoment } from '../contract/moment.ts';
import { type Mounting, mountingLines } from '../contract/mounting.ts';
import { sentence } from '../wording/english.ts';
import type { MountingTickFact } from './trade-facts.ts';

/** The lines of one move to a wall, with what was ticked. */
export function mountingOf(ticks: readonly MountingTickFact[]): Mounting {
  return mountingLines.map((line) => ({
    line,
    ...sentence(`mounting/${line}`, {}),
    at: toMoment(ticks.find((tick) => tick.line === line)?.at ?? null),
  }));
}

/** How long after boards went up open lines are brought up: the same day’s end. Assumption. */
export const mountingPatienceMs = 4 * 3_600_000;
/** How long they are: a day later it is too late for the same day. Assumption. */
export const mountingForgottenMs = 72 * 3_600_000;

/** Whether somebody is to be reminded of open lines. */
export function mountingIsOpen(movedAt: number, ticked: number, now: number): boolean {
  const since = now - movedAt;
  return (
    ticked < mountingLines.length && since >= mountingPatienceMs && since < mountingForgottenMs
  );
}
