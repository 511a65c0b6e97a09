import { sentence } from '../../wording/english.ts';
import { end, type Finding, minuteMs, nothingFound, raise } from './finding.ts';

/** Intervals that a sensor’s rhythm is told from. */
const remembered = 31;
/** Which of them counts: one lost message in ten does not change the rhythm. */
const share = 0.9;
/** Silent after so many of its own intervals, and never before so long: a message may be late. Assumptions. */
const intervals = 3.8;
const leastMs = 3 * minuteMs;
/** From so many intervals on a rhythm is known. Assumption. */
const leastKnown = 6;

/** How often a sensor sends, and whether it still does. */
export interface Silence extends Finding {
  gapsMs: number[];
  next: number;
  lastAt: number | null;
  lastHeardAt: number;
}

export const newSilence = (): Silence => ({
  ...nothingFound(),
  gapsMs: [],
  next: 0,
  lastAt: null,
  lastHeardAt: Number.NEGATIVE_INFINITY,
});

/** A sensor’s usual interval, ms; null while it is not known. */
export function rhythmMs({ gapsMs }: Silence): number | null {
  if (gapsMs.length < leastKnown) return null;
  const sorted = [...gapsMs].sort((a, b) => a - b);
  return sorted[Math.floor(share * (sorted.length - 1))] ?? null;
}

/**
 * Takes in that a sensor was heard.
 *
 * @param at - time of the reading; @param heardAt - when it arrived
 */
export function heardFrom(silence: Silence, at: number, heardAt: number): void {
  silence.lastHeardAt = Math.max(silence.lastHeardAt, heardAt);
  if (silence.lastAt !== null && at <= silence.lastAt) return;
  if (silence.lastAt !== null && silence.standing === null) {
    silence.gapsMs[silence.next] = at - silence.lastAt;
    silence.next = (silence.next + 1) % remembered;
  }
  silence.lastAt = at;
  end(silence, at);
}

/** Looks whether it has been silent for too long. @param upSince - nobody listened before */
export function lookForSilence(silence: Silence, now: number, upSince: number): void {
  const quietMs = now - Math.max(silence.lastHeardAt, upSince);
  if (quietMs <= leastMs || silence.lastAt === null || silence.standing !== null) return;
  const rhythm = rhythmMs(silence);
  if (rhythm === null || quietMs <= intervals * rhythm) return;
  raise(silence, silence.lastAt, sentence('seen-silent', { everyMs: Math.round(rhythm) }));
}
