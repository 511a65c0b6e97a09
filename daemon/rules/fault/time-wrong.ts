import { sentence } from '../../wording/english.ts';
import { end, type Finding, hourMs, minuteMs, raise } from './finding.ts';

/** Off by less, a message was long on its way; by more, it is a recording or a backlog. Assumptions. */
const leastOffMs = 10 * minuteMs;
const mostOffMs = 26 * hourMs;
/** A clock that is off is off by the same amount all the while; messages wait a little. Assumption. */
const steadyMs = minuteMs;
/** How long it must have been so, and how often. Assumptions. */
const seenForMs = 30 * minuteMs;
const seenOften = 5;

export interface OwnTime {
  offMs: number;
  /** When it was first off by so much: arrival, and the time it gave. */
  heardFrom: number;
  fromAt: number;
  count: number;
}

export const newOwnTime = (): OwnTime => ({ offMs: 0, heardFrom: 0, fromAt: 0, count: 0 });

/**
 * Looks whether the times a sensor gives keep the same wrong distance to their arrival. A backlog
 * comes in faster than it was measured, so that its distance shrinks.
 *
 * @param at - the time it gave; @param heardAt - when it arrived
 */
export function lookAtTime(finding: Finding, state: OwnTime, at: number, heardAt: number): void {
  const offMs = heardAt - at;
  if (state.count > 0 && Math.abs(offMs - state.offMs) <= steadyMs) state.count++;
  else Object.assign(state, { offMs, heardFrom: heardAt, fromAt: at, count: 1 });
  const isOff = Math.abs(offMs) >= leastOffMs && Math.abs(offMs) <= mostOffMs;
  const isSteady = state.count >= seenOften && heardAt - state.heardFrom >= seenForMs;
  if (isOff && isSteady) {
    const where = offMs > 0 ? 'seen-time/behind' : 'seen-time/ahead';
    raise(finding, state.fromAt, sentence(where, { offMs: Math.abs(offMs) }));
  } else if (!isOff && state.count >= 3) end(finding, state.fromAt);
}
