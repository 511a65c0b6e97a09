import type { Quantity } from '../../contract/quantity.ts';
import { sentence } from '../../wording/english.ts';
import { end, type Finding, minuteMs, raise } from './finding.ts';
import { expectedRunMs, type Run } from './run.ts';

/** Equal readings in a row from which on it may be stuck. Assumption. */
const leastCount = 6;
/** Alone: so many times the longest run known, and at least so long. Assumptions. */
const alone = { times: 4, leastMs: 90 * minuteMs };
/** With others that moved meanwhile, or both quantities of the sensor at rest. Assumptions. */
const supported = { times: 3, leastMs: 45 * minuteMs };
/** How far the others must have moved, in the unit of the quantity and in steps of the sensor. Assumptions. */
const movedBy: Partial<Record<Quantity, number>> = {
  'air-temperature': 0.8,
  'surface-temperature': 0.8,
  'relative-humidity': 4,
  'carbon-dioxide': 60,
};
const movedSteps = 4;

/** A series that by nature rests longer than this is too coarse for its steps to tell. Assumption. */
const tellingMs = 60 * minuteMs;

/** The other quantity of the same sensor. */
export interface Companion {
  run: Run;
  stuck: Finding;
}

/** At rest while every other one changed so often, and it should have changed so often itself. Assumptions. */
const amongRestless = { times: 3, leastMs: 75 * minuteMs, theirs: 8, own: 12 };

/** What else is known while a series repeats itself. */
export interface StuckContext {
  /** null where the sensor measures nothing else of the kind. */
  companion: Companion | null;
  /** How often the calmest of the sensors about it changed since a moment; 0 without such. */
  othersChanged: (sinceAt: number) => number;
  /** How far the sensors about it moved since a moment; null without such. */
  othersMoved: (sinceAt: number) => number | null;
}

/**
 * Stuck: one figure for longer than this sensor ever did. A steady room repeats figures too, so the
 * measure is the sensor’s own longest run. Less is enough when others moved meanwhile, or when both
 * quantities of the sensor stand still; and where one of them is stuck, the other is as well if it has
 * not moved since.
 */
export function lookIfStuck(
  finding: Finding,
  quantity: Quantity,
  run: Run,
  { companion, othersChanged, othersMoved }: StuckContext,
): void {
  if (run.count === 1) {
    end(finding, run.fromAt);
    return;
  }
  if (finding.standing !== null || run.count < leastCount) return;
  const value = Number(run.value.toFixed(2));
  const seen = sentence('seen-stuck', { value, quantity });
  const found = () => raise(finding, run.fromAt, seen);
  const other = companion?.stuck.standing ?? null;
  if (other !== null && run.lastAt - Math.max(other.fromAt, run.fromAt) >= supported.leastMs) {
    raise(finding, Math.max(other.fromAt, run.fromAt), seen);
    return;
  }
  if (overdue(run, alone)) found();
  else if (
    run.count * run.restless >= amongRestless.own &&
    overdue(run, amongRestless) &&
    othersChanged(run.fromAt) >= amongRestless.theirs
  ) {
    found();
  } else if (companion && overdue(run, supported) && overdue(companion.run, supported)) found();
  else if (overdue(run, { ...supported, tellingMs: Number.POSITIVE_INFINITY })) {
    const needed = movedBy[quantity];
    const moved = needed === undefined ? null : othersMoved(run.fromAt);
    if (needed === undefined || moved === null) return;
    if (moved >= Math.max(needed, movedSteps * run.step)) found();
  }
}

function overdue(run: Run, rule: { times: number; leastMs: number; tellingMs?: number }): boolean {
  const expectedMs = expectedRunMs(run);
  if (expectedMs === null || expectedMs > (rule.tellingMs ?? tellingMs)) return false;
  const runMs = run.lastAt - run.fromAt;
  return run.count >= leastCount && runMs >= Math.max(rule.leastMs, rule.times * expectedMs);
}
