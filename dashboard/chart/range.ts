/** A stretch of time that is looked at, UTC epoch seconds. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** Closer than this nothing more is to be seen: few sensors speak more often than each minute, s. */
const LEAST_S = 600;

/**
 * Looks closer at a stretch, or wider.
 *
 * @param factor - below 1 closer, above 1 wider
 * @param focus - the moment that keeps its place
 * @param whole - never beyond it
 */
export function zoomed(range: Range, whole: Range, factor: number, focus: number): Range {
  const length = range.to - range.from;
  const most = whole.to - whole.from;
  const wanted = Math.min(most, Math.max(Math.min(LEAST_S, most), length * factor));
  const at =
    length === 0 ? 0.5 : (Math.min(range.to, Math.max(range.from, focus)) - range.from) / length;
  const from = focus - at * wanted;
  return within({ from, to: from + wanted }, whole);
}

/** Moves on by a share of what is seen; never beyond the whole. */
export function panned(range: Range, whole: Range, share: number): Range {
  const by = (range.to - range.from) * share;
  return within({ from: range.from + by, to: range.to + by }, whole);
}

/** The same length of time, moved to lie within the whole. */
export function within({ from, to }: Range, whole: Range): Range {
  const length = Math.min(to - from, whole.to - whole.from);
  const start = Math.min(Math.max(from, whole.from), whole.to - length);
  return { from: start, to: start + length };
}

/** Whether all is seen, but for what the eye cannot tell. */
export function isWhole(range: Range, whole: Range): boolean {
  return range.to - range.from >= (whole.to - whole.from) * 0.999;
}

/** A little more than is seen, so that a step aside shows something at once. */
export function withMargin({ from, to }: Range, whole: Range): Range {
  const margin = (to - from) / 4;
  return { from: Math.max(whole.from, from - margin), to: Math.min(whole.to, to + margin) };
}

/** A step of the cursor, as a share of what is seen. */
const CURSOR_STEP = 0.02;

/**
 * Where a key with Shift leads the cursor: along what is seen, or to its ends.
 *
 * @param at - where it is, epoch s; null where it is nowhere
 * @param newest - where it begins then: at the newest reading, if that is seen
 * @returns null for a key that does nothing
 */
export function cursorAfterKey(
  key: string,
  at: number | null,
  newest: number,
  range: Range,
): number | null {
  const step = (range.to - range.from) * CURSOR_STEP;
  const here = at === null || at < range.from || at > range.to ? null : at;
  const begin = Math.min(range.to, Math.max(range.from, newest));
  switch (key) {
    case 'ArrowLeft':
      return here === null ? begin : Math.max(range.from, here - step);
    case 'ArrowRight':
      return here === null ? begin : Math.min(range.to, here + step);
    case 'Home':
      return range.from;
    case 'End':
      return range.to;
    default:
      return null;
  }
}

/** What a key does to what is seen; null for a key that does nothing. */
export function rangeAfterKey(key: string, range: Range, whole: Range): Range | null {
  const middle = (range.from + range.to) / 2;
  switch (key) {
    case '+':
    case '=':
      return zoomed(range, whole, 0.5, middle);
    case '-':
    case '−':
      return zoomed(range, whole, 2, middle);
    case 'ArrowLeft':
      return panned(range, whole, -0.25);
    case 'ArrowRight':
      return panned(range, whole, 0.25);
    case 'Home':
      return whole;
    default:
      return null;
  }
}
