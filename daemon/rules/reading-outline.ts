/** A reading that a curve keeps. */
export interface OutlinePoint {
  /** Epoch ms. */
  at: number;
  raw: number;
}

/** The shape of a long series: its extremes, and where there were readings. */
export interface ReadingOutline {
  /** The lowest and the highest reading of each stretch, ascending by `at`. */
  points: OutlinePoint[];
  /**
   * From when to when there were readings that follow each other within an hour, ascending by
   * `firstAt`; they may overlap.
   */
  spans: { firstAt: number; lastAt: number }[];
  /**
   * Of what the stretches are made that have two points each, about as many as were asked for; null
   * where each hour has its own.
   */
  stretches: 'days' | 'hours' | null;
}

/**
 * The times of the last readings before a gap, ascending.
 *
 * @param longestGapMs - longest time between readings that is no gap, ms; gaps within a span, an
 *   hour at most, are not seen
 */
export function gapsBetween(spans: ReadingOutline['spans'], longestGapMs: number): number[] {
  const gaps: number[] = [];
  let lastAt: number | null = null;
  for (const span of spans) {
    if (lastAt !== null && span.firstAt - lastAt > longestGapMs) gaps.push(lastAt);
    lastAt = Math.max(lastAt ?? span.lastAt, span.lastAt);
  }
  return gaps;
}
