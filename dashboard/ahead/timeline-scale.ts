import type { AheadBatch, SpreadMoment } from '../../daemon/contract/plan-ahead.ts';

/** A stretch of time laid over the width of a strip. All times UTC epoch ms. */
export interface Scale {
  readonly fromAt: number;
  readonly toAt: number;
  /** Where a moment lies, 0 to 100 % of the width; what lies outside is at the edge. */
  place(at: number): number;
}

const DAY_MS = 86_400_000;
/** A strip is never shorter, so that two near days do not fill a screen. */
const LEAST_DAYS = 10;
/** Nor longer: what is planned for next year is told in words. */
const MOST_DAYS = 150;

/** Room that a date takes, px. */
const DATE_PX = 100;
/** Room that a letter takes, and between two words, px. */
const LETTER_PX = 8.2;
const GAP_PX = 14;

/** The scale that holds all that is planned, from today on. */
export function timelineScale(batches: readonly AheadBatch[], now: number): Scale {
  const ends = batches.flatMap((batch) => [
    time(batch.done.late ?? batch.done.likely),
    ...batch.steps.map((step) => time(step.begins.late ?? step.begins.likely)),
  ]);
  const last = Math.max(now + LEAST_DAYS * DAY_MS, ...ends.filter((at) => at !== null));
  const toAt = Math.min(last + DAY_MS, now + MOST_DAYS * DAY_MS);
  return {
    fromAt: now,
    toAt,
    place: (at) => Math.min(100, Math.max(0, (100 * (at - now)) / (toAt - now))),
  };
}

/** A step as drawn: the band of what is not known, and the mark of what is likely, in %. */
export interface DrawnStep {
  readonly from: number;
  readonly width: number;
  readonly mark: number;
  /** True where it goes on beyond the strip. */
  readonly isOpen: boolean;
}

/** How a step lies on the strip; null where it never happens within the calendar, or beyond it. */
export function drawnStep({ early, likely, late }: SpreadMoment, scale: Scale): DrawnStep | null {
  const at = time(likely) ?? time(early);
  if (at === null || at > scale.toAt) return null;
  const from = scale.place(time(early) ?? at);
  const lateAt = time(late);
  const to = lateAt === null ? 100 : scale.place(lateAt);
  return {
    from,
    width: Math.max(0, to - from),
    mark: scale.place(at),
    isOpen: lateAt === null || lateAt > scale.toAt,
  };
}

/** Days to write over the strip, as many as there is room for, each at its own midnight. */
export function datesOver(
  scale: Scale,
  widthPx: number,
  midnights: (from: number, to: number) => number[],
): number[] {
  const days = midnights(scale.fromAt, scale.toAt);
  const room = Math.max(2, Math.floor(widthPx / DATE_PX));
  const every = Math.max(1, Math.ceil(days.length / room));
  return days.filter((_, i) => i % every === 0);
}

/** Whether a date that begins at its day ends before the strip does. */
export function hasRoom(at: number, scale: Scale, widthPx: number): boolean {
  return (scale.place(at) / 100) * widthPx + DATE_PX <= widthPx;
}

/**
 * The line of each word, 0 the highest, so that none lies on another.
 *
 * @param words - each with where it begins, %, and its text; ascending
 */
export function linesOf(words: readonly { at: number; text: string }[], widthPx: number): number[] {
  const ends: number[] = [];
  return words.map(({ at, text }) => {
    const begin = (at / 100) * widthPx;
    const free = ends.findIndex((end) => end <= begin);
    const line = free === -1 ? ends.length : free;
    ends[line] = begin + text.length * LETTER_PX + GAP_PX;
    return line;
  });
}

function time(moment: string | null): number | null {
  return moment === null ? null : Date.parse(moment);
}
