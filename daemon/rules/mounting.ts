import { toMoment } from '../contract/moment.ts';
import { type Mounting, type MountingLine, mountingLines } from '../contract/mounting.ts';
import type { MountingTickFact } from './trade-facts.ts';

/** What is done on the day boards go up. Common practice, no source. */
export const mountingWords: Readonly<Record<MountingLine, string>> = {
  'fresh-cuts': 'Every fresh cut primed the same day',
  notches: 'Notches and drilled holes primed the same day',
  'nail-heads': 'Nail heads primed the same day',
  'end-grain-twice': 'End grain coated twice, the second time once the first has sunk in',
};

/** The lines of one move to a wall, with what was ticked. */
export function mountingOf(ticks: readonly MountingTickFact[]): Mounting {
  return mountingLines.map((line) => ({
    line,
    text: mountingWords[line],
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
