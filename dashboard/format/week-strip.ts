import type { GateVerdict } from '../../daemon/contract/gate.ts';
import type { Calendar } from './calendar.ts';

/** Half a day of the strip, and what it says of a job. */
export interface HalfDay {
  /** Within it, UTC epoch ms. */
  readonly at: number;
  readonly half: 'morning' | 'afternoon';
  /** `not`: too soon; `may`: between early and likely; `likely`: as likely as not by then. */
  readonly job: 'not' | 'may' | 'likely';
}

const HALF_DAY_MS = 43_200_000;
const NOON = 12;
const HALVES = 14;

/**
 * The half-days of a week from now on, each with whether a job may be due in it.
 *
 * @param now - UTC epoch ms
 */
export function weekStrip(
  { verdict, early, likely }: Pick<GateVerdict, 'verdict' | 'early' | 'likely'>,
  now: number,
  calendar: Calendar,
): HalfDay[] {
  const isDue = verdict === 'test' || verdict === 'ready' || verdict === 'hold';
  const mayFrom = isDue ? now : early === null ? null : Date.parse(early);
  const likelyFrom = isDue ? now : likely === null ? null : Date.parse(likely);
  const first = slotOf(now);
  return Array.from({ length: HALVES }, (_, index) => {
    const at = now + index * HALF_DAY_MS;
    const slot = first + index;
    const reached = (from: number | null) => from !== null && slotOf(from) <= slot;
    return {
      at,
      half: slot % 2 === 0 ? 'morning' : 'afternoon',
      job: reached(likelyFrom) ? 'likely' : reached(mayFrom) ? 'may' : 'not',
    };
  });

  /** Half-days since 1970 on the site’s calendar: even in the morning. */
  function slotOf(moment: number): number {
    const { day, hour } = calendar.at(moment);
    return day * 2 + (hour < NOON ? 0 : 1);
  }
}
