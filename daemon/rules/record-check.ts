import { BoardcureError } from '../contract/problem.ts';
import type { Quantity } from '../contract/quantity.ts';
import { quantityFacts } from '../contract/quantity.ts';
import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import type { Thing } from '../wording/subject/detail.ts';
import type { CoatFact, PlaceFact, PlanFact } from './facts.ts';

/** How far ahead of the clock an entry may lie: the clocks of a phone and a shed differ. Assumption. */
export const entryAheadMs = 5 * 60_000;

/** Looks up what a field points at. @throws BoardcureError naming the field when there is none */
export function referred<T>(
  things: ReadonlyMap<string, T>,
  id: string,
  thing: Thing,
  pointer: string,
): T {
  const found = things.get(id);
  if (found === undefined) {
    const said = sentence('no-such-thing', { thing, id });
    throw new BoardcureError('BC_REFERENCE_UNKNOWN', said, { pointer });
  }
  return found;
}

/** Looks up what an address names. @throws BoardcureError when there is none */
export function named<T>(things: ReadonlyMap<string, T>, id: string, thing: Thing): T {
  const found = things.get(id);
  if (found === undefined) {
    throw new BoardcureError('BC_THING_UNKNOWN', sentence('no-such-thing', { thing, id }));
  }
  return found;
}

/** Nothing is entered from before this: 2000-01-01, as for the times of readings. Assumption. */
export const earliestEntryAt = 946_684_800_000;

/** What happened cannot lie in the future, nor before anybody could have entered it. */
export function checkPast(at: number, now: number, pointer: string): void {
  if (at < earliestEntryAt) {
    throw new BoardcureError(
      'BC_REQUEST_INVALID',
      sentence('time-too-early', { at, earliestAt: earliestEntryAt }),
      { pointer },
    );
  }
  if (at <= now + entryAheadMs) return;
  throw new BoardcureError('BC_REQUEST_INVALID', sentence('time-to-come', { at, now }), {
    pointer,
  });
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
    sentence('place-not-within', { kind, within: within.kind }),
    { pointer: '/within' },
  );
}

/** That a plan has no coat of that index. */
export const noSuchCoat = ({ name, coats }: PlanFact, coat: number): Said =>
  sentence('no-such-coat', { planName: name, coats: coats.length, coat });

/** A coat must be in the plan, after the coats below it, and end after it began. */
export function checkCoat(
  coat: Pick<CoatFact, 'id' | 'coat' | 'begunAt' | 'finishedAt'>,
  plan: PlanFact,
  existing: readonly CoatFact[],
): void {
  if (coat.coat >= plan.coats.length) {
    throw new BoardcureError('BC_STATE_CONFLICT', noSuchCoat(plan, coat.coat), {
      pointer: '/coat',
    });
  }
  if (coat.begunAt !== null && coat.begunAt > coat.finishedAt) {
    throw new BoardcureError('BC_REQUEST_INVALID', sentence('coat-begun-after', {}), {
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
        sentence('coat-out-of-order', { coat: other.coat, finishedAt: other.finishedAt }),
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
    sentence('plan-too-short', {
      ...{ number: beyond.coat + 1, planName: plan.name, coats: plan.coats.length },
    }),
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
  throw new BoardcureError('BC_STATE_CONFLICT', sentence('no-coat-by-then', { at }), {
    pointer: '/at',
  });
}

/** Figures of a hand meter must be physically possible. */
export function checkFigures(quantity: Quantity, values: readonly number[]): void {
  const { low, high } = quantityFacts[quantity];
  const wrong = values.findIndex((value) => value < low || value > high);
  const value = values[wrong];
  if (value === undefined) return;
  throw new BoardcureError(
    'BC_REQUEST_INVALID',
    sentence('figure-impossible', { value, quantity, low, high }),
    { pointer: `/values/${wrong}` },
  );
}
