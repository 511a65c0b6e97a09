import { add, addLineToHours, hourMs, noCure, type SpanSum, spanSum } from '../rules/cure-span.ts';
import {
  blocksOf,
  curing,
  type HourBook,
  hourOf,
  hoursIn,
  type NamedModel,
  openBook,
  reckon,
} from './hour-book.ts';
import type { PlaceAirReader, Step } from './place-air.ts';
import type { HourKeeper, HourSource } from './ports.ts';

interface LedgerParts {
  air: PlaceAirReader;
  hours: HourSource;
  keeper: HourKeeper;
  models: readonly NamedModel[];
  holdMs: number;
  /** Told when keeping failed: the sums stay right in memory, only a restart costs more. */
  failed: (cause: unknown) => void;
  /** Told how many hours were reckoned anew from readings. */
  reckoned?: (hours: number) => void;
}

/**
 * Cure by place and hour. Sums of whole hours are reckoned once and added up; only the edges of a
 * coat’s time are reckoned from readings.
 */
export function cureLedger(parts: LedgerParts) {
  const { air, hours: source, keeper, models, holdMs, failed } = parts;
  const books = new Map<string, HourBook>();
  /** Sums over closed hours, by place, model and first hour. */
  const running = new Map<string, { throughHour: number; sum: SpanSum }>();
  /** Sums over parts of an hour that no new reading can change. */
  const edges = new Map<string, SpanSum>();
  const settling = new Set<number>();
  const reckonHours = (book: HourBook, firstHour: number, lastHour: number): void => {
    reckon(book, air, models, firstHour, lastHour);
    parts.reckoned?.(lastHour - firstHour + 1);
  };

  function forgetSums(placeId: string): void {
    for (const cache of [running, edges]) {
      for (const key of cache.keys()) if (key.startsWith(`${placeId} `)) cache.delete(key);
    }
  }

  function keep(
    book: HourBook,
    fromHour: number,
    lastHour: number,
    endsHere: boolean,
    settled: number[],
  ): void {
    const closed = book.lastAt === null ? fromHour - 1 : hourOf(book.lastAt) - 1;
    const toHour = endsHere ? closed : Math.min(closed, lastHour);
    const blocks =
      toHour >= fromHour || endsHere ? blocksOf(book, models, fromHour, toHour, endsHere) : [];
    if (blocks.length === 0 && settled.length === 0) return;
    keeper
      .saveHours(blocks, settled)
      .catch(failed)
      .finally(() => {
        for (const rank of settled) settling.delete(rank);
      });
  }

  /** The book of a place, reaching back at least to an hour. */
  function open(placeId: string, fromHour: number): HourBook {
    const known = books.get(placeId);
    if (known && known.fromHour <= fromHour) return known;
    const book = known ?? openBook(source, placeId, models);
    books.set(placeId, book);
    const newest = air.latest(placeId, curing);
    if (book.lastAt === null) {
      book.fromHour = Math.min(book.fromHour, fromHour);
      if (!newest) return book;
      reckonHours(book, book.fromHour, hourOf(newest.at));
    } else {
      if (!newest) return book;
      if (newest.at !== book.lastAt) {
        reckonHours(book, hourOf(book.lastAt), hourOf(newest.at));
      }
      if (fromHour < book.fromHour) {
        reckonHours(book, fromHour, book.fromHour - 1);
        book.fromHour = fromHour;
      }
    }
    book.lastAt = newest.at;
    forgetSums(placeId);
    keep(book, book.fromHour, Number.POSITIVE_INFINITY, false, []);
    return book;
  }

  /** Makes the hours anew that a change of the readings between two moments can have touched. */
  function redo(placeId: string, fromAt: number, toAt: number, settled: number[]): void {
    air.rebuild(placeId);
    const book = books.get(placeId) ?? openBook(source, placeId, models);
    if (book.fromHour === Number.POSITIVE_INFINITY) {
      keep(book, 0, -1, false, settled);
      return;
    }
    books.set(placeId, book);
    forgetSums(placeId);
    const { lastAt } = book;
    const newest = air.latest(placeId, curing)?.at ?? null;
    // From the neighbour before the change to the one after all that it can sway.
    const swayedTo = toAt + 1 + (air.isShared(placeId) ? holdMs : 0);
    const before = air.sampleUpTo(placeId, curing, fromAt - 1)?.at ?? fromAt;
    const after = air.sampleFrom(placeId, curing, swayedTo)?.at ?? newest ?? toAt;
    let first = hourOf(Math.min(before, fromAt));
    let last = hourOf(Math.max(after, toAt));
    if (newest !== lastAt) {
      // The end of the series moved: all from the earlier end on is in question.
      first = Math.min(first, hourOf(Math.min(lastAt ?? fromAt, newest ?? fromAt)));
      last = Math.max(last, hourOf(Math.max(lastAt ?? toAt, newest ?? toAt)));
    }
    first = Math.max(first, book.fromHour);
    if (last >= first) reckonHours(book, first, last);
    book.lastAt = newest;
    const shrank = lastAt !== null && (newest === null || newest < lastAt);
    keep(book, first, last, shrank, settled);
  }

  /** The sum of a book’s whole hours from one to another, the last one excluded. */
  function wholeHours(book: HourBook, model: string, fromHour: number, endHour: number): SpanSum {
    const hours = hoursIn(book, model);
    const lastClosed = Math.min(endHour, hourOf(book.lastAt ?? 0)) - 1;
    const key = `${book.placeId} ${model} ${fromHour}`;
    const known = running.get(key);
    const closed =
      known && known.throughHour <= lastClosed
        ? known
        : { throughHour: fromHour - 1, sum: noCure() };
    for (let hour = closed.throughHour + 1; hour <= lastClosed; hour++) {
      const sum = hours.get(hour);
      if (sum) add(closed.sum, sum);
    }
    closed.throughHour = Math.max(closed.throughHour, lastClosed);
    if (!known || known.throughHour <= closed.throughHour) running.set(key, closed);
    const total = { ...closed.sum };
    for (let hour = closed.throughHour + 1; hour < endHour; hour++) {
      const sum = hours.get(hour);
      if (sum) add(total, sum);
    }
    return total;
  }

  return {
    /**
     * Cure gathered at a place over a stretch, in hours at 20 °C.
     *
     * @param toAt - its end; null up to the newest reading
     */
    sum(placeId: string, named: NamedModel, fromAt: number, toAt: number | null): SpanSum {
      const book = open(placeId, hourOf(fromAt));
      const total = noCure();
      const { lastAt } = book;
      const endAt = Math.min(toAt ?? Number.POSITIVE_INFINITY, lastAt ?? fromAt);
      if (lastAt === null || endAt <= fromAt) return total;
      const part = (from: number, to: number): SpanSum => {
        const key = `${placeId} ${named.name} ${from} ${to}`;
        const known = edges.get(key);
        if (known) return known;
        const samples = air.eachSample(placeId, curing, from, to);
        const sum = spanSum(samples, from, to, named.model, named.capC);
        if (to < lastAt) edges.set(key, sum);
        return sum;
      };
      const firstWhole = Math.ceil(fromAt / hourMs);
      if (fromAt < firstWhole * hourMs) {
        add(total, part(fromAt, Math.min(endAt, firstWhole * hourMs)));
      }
      // Up to the newest reading the open hour counts whole: it holds nothing beyond.
      const endWhole = endAt === lastAt ? hourOf(lastAt) + 1 : hourOf(endAt);
      if (endWhole < firstWhole) return total;
      add(total, wholeHours(book, named.name, firstWhole, endWhole));
      if (endAt !== lastAt && endAt > endWhole * hourMs) add(total, part(endWhole * hourMs, endAt));
      return total;
    },

    /** What each whole hour gathered, from one to another, the last one excluded; for a curve. */
    eachHour(placeId: string, named: NamedModel, fromHour: number, endHour: number): SpanSum[] {
      const hours = hoursIn(open(placeId, fromHour), named.name);
      return Array.from(
        { length: Math.max(0, endHour - fromHour) },
        (_, i) => hours.get(fromHour + i) ?? noCure(),
      );
    },

    /** Takes in one step of a place’s series; costs the same however long the season is. */
    extend(step: Step): void {
      const book = books.get(step.placeId);
      if (!book || step.quantity !== curing) return;
      if (book.lastAt !== null && book.lastAt >= step.to.at) return;
      if (step.from === null || book.lastAt !== step.from.at) {
        redo(step.placeId, book.lastAt ?? step.to.at, step.to.at, []);
        return;
      }
      const within = { fromHour: book.fromHour, toHour: Number.POSITIVE_INFINITY };
      for (const { name, model, capC } of models) {
        addLineToHours(hoursIn(book, name), step.from, step.to, model, capC, within);
      }
      book.lastAt = step.to.at;
      const wasOpen = hourOf(step.from.at);
      if (hourOf(step.to.at) > wasOpen) {
        keep(book, Math.max(wasOpen, book.fromHour), Number.POSITIVE_INFINITY, false, []);
      }
    },

    /** Works in what late readings and corrected placements left to be done. */
    settle(): void {
      for (const span of source.dirtySpans()) {
        if (settling.has(span.rank)) continue;
        settling.add(span.rank);
        redo(span.placeId, span.fromAt, span.toAt, [span.rank]);
      }
    },

    isSettling: (): boolean => settling.size > 0,

    /** Forgets what is in memory; the store's hours and marks are what counts. */
    startOver(): void {
      books.clear();
      running.clear();
      edges.clear();
      settling.clear();
      this.settle();
    },

    /** Called when places or stays changed: a series may end elsewhere now. */
    refresh(): void {
      for (const book of books.values()) {
        const newest = air.latest(book.placeId, curing)?.at ?? null;
        if (newest === book.lastAt) continue;
        const ends = [newest, book.lastAt].filter((at) => at !== null);
        redo(book.placeId, Math.min(...ends), Math.max(...ends), []);
      }
    },
  };
}
export type CureLedger = ReturnType<typeof cureLedger>;
