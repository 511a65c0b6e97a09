import type { PlaceKind } from '../../contract/place.ts';
import { sentence } from '../../wording/english.ts';
import { end, type Finding, hourMs, minuteMs, raise } from './finding.ts';

/** From here on it stands at the top of its range, and below here it has left it, %. Assumptions. */
const pinnedFrom = 99.5;
const leftBelow = 98;
/** Others drier than this contradict it, %. Assumption. */
const othersBelow = 93;
/** How long until it is believed to be pinned. In fog it really is 100 % outdoors. Assumptions. */
const patienceMs = { contradicted: hourMs, indoors: 90 * minuteMs, outdoors: 36 * hourMs };
/** Away from the top for so long, it is believed again. Assumption. */
const leftForMs = 20 * minuteMs;

export interface Pinned {
  sinceAt: number | null;
  leftAt: number | null;
}

export const newPinned = (): Pinned => ({ sinceAt: null, leftAt: null });

/**
 * Looks whether humidity stands at the top of its range.
 *
 * @param raw - as sent, %
 * @param others - what the other sensors about it show, %; null without such
 */
export function lookIfPinned(
  finding: Finding,
  state: Pinned,
  at: number,
  raw: number,
  others: number | null,
  place: PlaceKind | null,
): void {
  if (raw >= pinnedFrom) {
    state.sinceAt ??= at;
    state.leftAt = null;
  } else if (raw < leftBelow) {
    state.leftAt ??= at;
    if (finding.standing === null) state.sinceAt = null;
    if (at - state.leftAt >= leftForMs) {
      state.sinceAt = null;
      end(finding, state.leftAt);
    }
  }
  if (state.sinceAt === null || finding.standing !== null || state.leftAt !== null) return;
  const isOutdoors = place === 'outdoors' || place === 'wall' || place === null;
  const patience = Math.min(
    isOutdoors ? patienceMs.outdoors : patienceMs.indoors,
    others !== null && others < othersBelow ? patienceMs.contradicted : Number.POSITIVE_INFINITY,
  );
  if (at - state.sinceAt < patience) return;
  const rhPercent = Math.min(raw, 100);
  const seen =
    others !== null && others < othersBelow
      ? sentence('seen-pinned/others-drier', { rhPercent, othersPercent: others })
      : sentence('seen-pinned', { rhPercent });
  raise(finding, state.sinceAt, seen);
}
