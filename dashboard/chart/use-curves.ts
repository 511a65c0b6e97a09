import { useEffect, useRef, useState } from 'preact/hooks';
import type { AirChanges, BatchCurves, Curves } from '../../daemon/contract/curves.ts';
import type { Outcome } from '../api.ts';
import { type Range, withMargin } from './range.ts';

/** What is asked of the daemon: ISO 8601; without times the whole. */
export interface Span {
  readonly from?: string;
  readonly to?: string;
  readonly points: number;
}

/** Where curves come from; must stay the same function between renders. */
export interface CurveSource {
  curves(span: Span): Promise<Outcome<Curves | BatchCurves>>;
  /** Null where there is no room to speak of. */
  changes: ((span: { from: string; to: string }) => Promise<Outcome<AirChanges>>) | null;
}

export interface KnownCurves {
  readonly curves: Curves | BatchCurves;
  readonly changes: AirChanges | null;
}

export interface ReadCurves {
  /** All there is; null before it came. */
  readonly whole: KnownCurves | null;
  /** The same closer together over what is seen; null while all is seen, or it has not come. */
  readonly close: KnownCurves | null;
  readonly isFailed: boolean;
}

/** Closer than this is not asked again while a hand still moves. */
const STILL_MS = 180;
/** Not read again sooner than this, however fast readings come. */
const REST_MS = 3_000;
const AGAIN_MS = 4_000;

/**
 * Reads curves: the whole, again when there is news, and finer ones of what is looked at closer.
 *
 * @param range - what is seen; null for all
 * @param news - changes when there may be more to show
 */
export function useCurves(
  source: CurveSource,
  points: number,
  range: Range | null,
  wholeRange: Range | null,
  news: unknown,
): ReadCurves {
  const [whole, setWhole] = useState<KnownCurves | null>(null);
  const [close, setClose] = useState<KnownCurves | null>(null);
  const [isFailed, setFailed] = useState(false);
  const [tries, setTries] = useState(0);
  const readAt = useRef(0);
  const isReading = useRef(false);
  const of = useRef(source);

  // Another source is another chart: nothing of the one before is shown.
  if (of.current !== source) {
    of.current = source;
    readAt.current = 0;
    isReading.current = false;
    setWhole(null);
    setClose(null);
  }

  // `news` and `tries` are there to say when to read again.
  useEffect(() => {
    const rest = Math.max(0, readAt.current + REST_MS - Date.now());
    const again = (delayMs: number) => {
      setTimeout(() => of.current === source && setTries((count) => count + 1), delayMs);
    };
    const timer = setTimeout(async () => {
      // One after the other: a slow computer is not asked faster than it answers.
      if (isReading.current) return again(REST_MS);
      isReading.current = true;
      readAt.current = Date.now();
      const isRead = await read(source, { points }, (known) => {
        if (of.current === source) setWhole((before) => withChanges(known, before));
      });
      if (of.current !== source) return;
      isReading.current = false;
      setFailed(!isRead);
      if (!isRead) again(AGAIN_MS);
    }, rest);
    return () => clearTimeout(timer);
  }, [source, points, news, tries]);

  const from = range?.from ?? null;
  const to = range?.to ?? null;
  const all = useRef(wholeRange);
  all.current = wholeRange;
  useEffect(() => {
    if (from === null || to === null || all.current === null) {
      setClose(null);
      return;
    }
    const asked = withMargin({ from, to }, all.current);
    let isWanted = true;
    const timer = setTimeout(() => {
      const at = (seconds: number) => new Date(Math.round(seconds * 1000)).toISOString();
      const span = { from: at(asked.from), to: at(asked.to), points: Math.round(points * 1.5) };
      void read(source, span, (known) => {
        if (isWanted) setClose((before) => withChanges(known, before));
      });
    }, STILL_MS);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [source, points, from, to, news]);

  return { whole, close, isFailed };
}

/**
 * Reads curves, and then how often the air was changed: that is reckoned when it is asked for.
 *
 * @param onKnown - told of the curves alone, with null for changes, and then of both
 * @returns false where the curves could not be read
 */
async function read(
  source: CurveSource,
  span: Span,
  onKnown: (known: KnownCurves) => void,
): Promise<boolean> {
  const outcome = await source.curves(span);
  if (outcome.kind === 'problem') return false;
  const curves = outcome.reply;
  onKnown({ curves, changes: null });
  if (source.changes === null) return true;
  const changes = await source.changes({ from: curves.from, to: curves.to });
  if (changes.kind === 'done') onKnown({ curves, changes: changes.reply });
  return true;
}

/** Until the new air changes have come, those of before stay. */
const withChanges = (known: KnownCurves, before: KnownCurves | null): KnownCurves =>
  known.changes === null ? { ...known, changes: before?.changes ?? null } : known;
