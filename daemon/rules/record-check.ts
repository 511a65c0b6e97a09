import { BoardcureError } from '../contract/problem.ts';
import type { Quantity } from '../contract/quantity.ts';
import { quantityFacts } from '../contract/quantity.ts';
import type { CoatFact, PlaceFact, PlanFact } from './facts.ts';

/** How far ahead of the clock an entry may lie: the clocks of a phone and a shed differ. Assumption. */
export const entryAheadMs = 5 * 60_000;

/** Looks up what a field points at. @throws BoardcureError naming the field when there is none */
export function referred<T>(
  things: ReadonlyMap<string, T>,
  id: string,
  what: string,
  pointer: string,
): T {
  const thing = things.get(id);
  if (thing === undefined) {
    throw new BoardcureError('BC_REFERENCE_UNKNOWN', `There is no ${what} with the id ${id}.`, {
      pointer,
    });
  }
  return thing;
}

/** Looks up what an address names. @throws BoardcureError when there is none */
export function named<T>(things: ReadonlyMap<string, T>, id: string, what: string): T {
  const thing = things.get(id);
  if (thing === undefined) {
    throw new BoardcureError('BC_THING_UNKNOWN', `There is no ${what} with the id ${id}.`);
  }
  return thing;
}

/** Nothing is entered from before this: 2000-01-01, as for the times of readings. Assumption. */
export const earliestEntryAt = 946_684_800_000;

/** What happened cannot lie in the future, nor before anybody could have entered it. */
export function checkPast(at: number, now: number, pointer: string): void {
  if (at < earliestEntryAt) {
    throw new BoardcureError(
      'BC_REQUEST_INVALID',
      `The time ${new Date(at).toISOString()} lies before ${new Date(earliestEntryAt).toISOString()}; check the year.`,
      { pointer },
    );
  }
  if (at <= now + entryAheadMs) return;
  throw new BoardcureError(
    'BC_REQUEST_INVALID',
    `The time ${new Date(at).toISOString()} has not come yet; it is ${new Date(now).toISOString()} here.`,
    { pointer },
  );
}

/** Which place may lie within which. */
export function checkWithin(kind: PlaceFact['kind'], within: PlaceFact | null): void {
  if (!within) return;
  const allowed: Record<PlaceFact['kind'], PlaceFact['kind'][]> = {
    outdoors: [],
    room: ['room', 'outdoors'],
    rack: ['room', 'outdoors'],
    wall: ['outdoors', 'room'],
  };
  if (allowed[kind].includes(within.kind)) return;
  throw new BoardcureError(
    'BC_REQUEST_INVALID',
    `A place of kind ${kind} cannot lie within one of kind ${within.kind}.`,
    { pointer: '/within' },
  );
}

/** A coat must be in the plan, after the coats below it, and end after it began. */
export function checkCoat(
  coat: Pick<CoatFact, 'id' | 'coat' | 'begunAt' | 'finishedAt'>,
  plan: PlanFact,
  existing: readonly CoatFact[],
): void {
  if (coat.coat >= plan.coats.length) {
    throw new BoardcureError(
      'BC_STATE_CONFLICT',
      `The plan “${plan.name}” has ${plan.coats.length} coats, counted from 0; there is no coat ${coat.coat}.`,
      { pointer: '/coat' },
    );
  }
  if (coat.begunAt !== null && coat.begunAt > coat.finishedAt) {
    throw new BoardcureError('BC_REQUEST_INVALID', 'The coat cannot begin after it was finished.', {
      pointer: '/begunAt',
    });
  }
  for (const other of existing) {
    if (other.id === coat.id) continue;
    const wrongOrder =
      (other.coat < coat.coat && other.finishedAt > coat.finishedAt) ||
      (other.coat > coat.coat && other.finishedAt < coat.finishedAt);
    if (wrongOrder) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        `Coat ${other.coat} was finished at ${new Date(other.finishedAt).toISOString()}, which is the wrong side of this one.`,
        { pointer: '/finishedAt' },
      );
    }
  }
}

/** A batch may only be moved on to a plan that still has the coats that are on. */
export function checkPlanFits(plan: PlanFact, coats: readonly CoatFact[]): void {
  const beyond = coats.find((coat) => coat.coat >= plan.coats.length);
  if (!beyond) return;
  throw new BoardcureError(
    'BC_STATE_CONFLICT',
    `Coat ${beyond.coat + 1} is on already, and the plan “${plan.name}” has only ${plan.coats.length}.`,
    { pointer: '/planId' },
  );
}

/** The coat that a touch test at a moment felt: the newest one finished by then. */
export function coatFelt(coats: readonly CoatFact[], at: number): CoatFact {
  const done = coats.filter((coat) => coat.finishedAt <= at);
  const newest = done.reduce<CoatFact | null>(
    (last, coat) => (last === null || coat.coat > last.coat ? coat : last),
    null,
  );
  if (newest) return newest;
  throw new BoardcureError(
    'BC_STATE_CONFLICT',
    `No coat of this batch had been finished by ${new Date(at).toISOString()}: record the coat first.`,
    { pointer: '/at' },
  );
}

/** Figures of a hand meter must be physically possible. */
export function checkFigures(quantity: Quantity, values: readonly number[]): void {
  const { low, high, unit, words } = quantityFacts[quantity];
  const wrong = values.findIndex((value) => value < low || value > high);
  if (wrong === -1) return;
  throw new BoardcureError(
    'BC_REQUEST_INVALID',
    `${values[wrong]} ${unit} is outside of what ${words} can be (${low} to ${high} ${unit}).`,
    { pointer: `/values/${wrong}` },
  );
}
