import { earliestSetClock } from '../clock-trust.ts';
import { isAhead } from '../corrected.ts';
import { type Finding, look, ok, spanWords, wrong } from './doctor-finding.ts';

/** What is known of the time. */
export interface ClockFacts {
  /** UTC epoch ms by this computer. */
  readonly now: number;
  /** Whether the daemon would trust it. */
  readonly trusted: boolean;
  /** What else is amiss with the time, in sentences that say what to do. */
  readonly doubts: readonly string[];
  /** UTC epoch ms of the newest reading, null for none. */
  readonly newestAt: number | null;
}

/** Looks whether the time can be right. */
export function lookAtClock({ now, trusted, doubts, newestAt }: ClockFacts): Finding {
  const setIt =
    'Set the clock (timedatectl set-ntp true where there is a network), or add a battery clock.';
  const shown = `${new Date(now).toISOString().slice(0, 16).replace('T', ' ')} UTC`;
  if (!trusted && now < earliestSetClock) {
    return wrong('clock', `The clock says ${shown}: it was never set.`, setIt);
  }
  if (newestAt !== null && isAhead(newestAt, now)) {
    return look(
      'clock',
      `The clock says ${shown}, but the newest reading is ${spanWords(newestAt - now)} ahead of that: the clock went back, or a sensor’s is wrong.`,
      `Compare with a watch. ${setIt}`,
    );
  }
  if (!trusted || doubts.length > 0) {
    const words = doubts.length > 0 ? doubts.join(' ') : 'It is not trusted yet.';
    return look('clock', `The clock says ${shown}. ${words}`, setIt);
  }
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return ok('clock', `The clock says ${shown}; the time zone is ${zone}.`);
}
