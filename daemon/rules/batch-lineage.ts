import { placeOfBatch } from './batch.ts';
import type { BatchFact, CoatFact, MoveFact, RemarkFact, TouchTestFact } from './facts.ts';
import type { MergeFact, SplitFact } from './trade-facts.ts';

/**
 * A stretch of a history in which what was recorded of one batch is what happened to the boards:
 * after `fromAt` (null: from ever) up to and with `untilAt` (null: until now).
 */
export interface Segment {
  batchId: string;
  fromAt: number | null;
  untilAt: number | null;
  /** True where the batch began with this segment: all that was recorded of it is of these boards. */
  isBirth: boolean;
}

/** How batches came from one another. */
export interface Lineage {
  /** What happened to the boards of each history, the earliest segment first. */
  segments: ReadonlyMap<string, readonly Segment[]>;
  /** The other histories whose boards lie in a batch since they were put to it. */
  companions: ReadonlyMap<string, readonly string[]>;
}

/** What was recorded, batch by batch, as it is kept. */
export interface RecordedFacts {
  batches: readonly BatchFact[];
  moves: ReadonlyMap<string, readonly MoveFact[]>;
  coats: ReadonlyMap<string, readonly CoatFact[]>;
  /** By the batch they were recorded at. */
  tests: ReadonlyMap<string, readonly TouchTestFact[]>;
  remarks: ReadonlyMap<string, readonly RemarkFact[]>;
  splits: readonly SplitFact[];
  merges: readonly MergeFact[];
}

/** The history of boards that were put to a batch goes by a name of its own. */
const companionId = (id: string, batchId: string) => `${id}>${batchId}`;

/** The batch that a history’s boards lie in now: itself, or the one they were put to. */
export const batchOfHistory = (id: string): string => id.slice(id.lastIndexOf('>') + 1);

/** The history up to a moment, and from then on that of another batch. */
function continued(
  segments: readonly Segment[],
  at: number,
  batchId: string,
  isBirth: boolean,
): Segment[] {
  const before = segments
    .filter((one) => one.fromAt === null || one.fromAt < at)
    .map((one) => ({ ...one, untilAt: Math.min(one.untilAt ?? at, at) }));
  return [...before, { batchId, fromAt: at, untilAt: null, isBirth }];
}

/**
 * Works out every history: a split child shares its parent’s up to the split, boards put to another
 * batch share that batch’s from then on. Facts are pointed at, never copied.
 */
export function lineageOf({ batches, splits, merges }: RecordedFacts): Lineage {
  const segments = new Map<string, readonly Segment[]>();
  const companions = new Map<string, string[]>(batches.map(({ id }) => [id, []]));

  function ownSegments(id: string, younger: ReadonlySet<string> = new Set()): readonly Segment[] {
    const known = segments.get(id);
    if (known) return known;
    const split = splits.find((one) => one.childId === id);
    // A batch cannot descend from itself; a file that says so is read as far as it goes.
    const parent = split && !younger.has(split.batchId) ? split : undefined;
    const own = parent
      ? continued(ownSegments(parent.batchId, new Set([...younger, id])), parent.at, id, true)
      : [{ batchId: id, fromAt: null, untilAt: null, isBirth: true }];
    segments.set(id, own);
    return own;
  }
  for (const { id } of batches) ownSegments(id);

  /** The boards of a history lie in another batch from a moment on. */
  function keep(from: string, batchId: string, at: number): void {
    const name = companionId(from, batchId);
    segments.set(name, continued(segments.get(from) ?? [], at, batchId, false));
    companions.get(batchId)?.push(name);
  }

  // In the order of time: boards may be split off and put back to where they came from.
  const events = [
    ...splits.map(({ at, batchId, childId }) => ({ at, from: batchId, to: childId, whole: false })),
    ...merges.map(({ at, batchId, mergedId }) => ({
      at,
      from: mergedId,
      to: batchId,
      whole: true,
    })),
  ].sort((a, b) => a.at - b.at);
  for (const { at, from, to, whole } of events) {
    const along = [...(companions.get(from) ?? [])];
    for (const one of whole ? [from, ...along] : along) keep(one, to, at);
  }
  return { segments, companions };
}

function isWithin(at: number | null, { fromAt, untilAt, isBirth }: Segment): boolean {
  if (at === null) return isBirth;
  return (isBirth || fromAt === null || at > fromAt) && (untilAt === null || at <= untilAt);
}

/** A history as if it were one batch’s: what happened to its boards, under its own name. */
export interface History {
  moves: MoveFact[];
  coats: CoatFact[];
  tests: TouchTestFact[];
  remarks: RemarkFact[];
}

/**
 * What happened to the boards of one history. Coats keep their id, so that everyone who shares one
 * points at the same fact; `batchId` is the name of the history.
 */
export function historyOf(id: string, lineage: Lineage, recorded: RecordedFacts): History {
  const segments = lineage.segments.get(id) ?? [];
  const along = <T extends { batchId: string }>(
    byBatch: ReadonlyMap<string, readonly T[]>,
    atOf: (fact: T) => number | null,
  ): T[] =>
    segments.flatMap((segment) =>
      (byBatch.get(segment.batchId) ?? []).filter((fact) => isWithin(atOf(fact), segment)),
    );
  const named = <T extends { batchId: string }>(facts: T[]): T[] =>
    facts.map((fact) => (fact.batchId === id ? fact : { ...fact, batchId: id }));

  const moves = named(along(recorded.moves, (move) => move.at));
  const joined = segments.at(-1);
  if (joined && joined.fromAt !== null && batchOfHistory(id) !== id) {
    const host = historyOf(joined.batchId, lineage, recorded).moves;
    const placeId = placeOfBatch(host, joined.fromAt);
    if (placeId !== null) {
      moves.push({ id: `${id} joined`, batchId: id, placeId, at: joined.fromAt });
    }
  }
  const newest = new Map<number, CoatFact>();
  for (const coat of along(recorded.coats, (one) => one.finishedAt)) {
    const isOwn = coat.batchId === id;
    newest.set(coat.coat, isOwn ? coat : { ...coat, batchId: id, originId: coat.batchId });
  }
  const coats = [...newest.values()].sort((a, b) => a.coat - b.coat);
  const tests = along(recorded.tests, (test) => test.at).flatMap((test) => {
    const felt = coatOfTest(test, coats, recorded);
    return felt === null ? [] : [{ ...test, coatId: felt.id }];
  });
  return { moves, coats, tests, remarks: named(along(recorded.remarks, (one) => one.at)) };
}

/** Boards that were put together are felt together: the coat of the same number is meant. */
function coatOfTest(
  test: TouchTestFact,
  coats: readonly CoatFact[],
  { coats: recorded }: RecordedFacts,
): CoatFact | null {
  const same = coats.find((coat) => coat.id === test.coatId);
  if (same) return same;
  const felt = [...recorded.values()].flat().find((coat) => coat.id === test.coatId);
  return coats.find((coat) => coat.coat === felt?.coat) ?? null;
}

/**
 * How many boards a batch had at a moment: what it began with, less what was split off, more what
 * was put to it. What happens at the moment itself comes after it.
 *
 * @param at - UTC epoch ms; infinity for now
 */
export function boardsAt(
  batch: BatchFact,
  at: number,
  { batches, splits, merges }: Pick<RecordedFacts, 'batches' | 'splits' | 'merges'>,
): number {
  let boards = batch.boards.count;
  for (const split of splits) {
    if (split.batchId === batch.id && split.at < at) boards -= split.boards;
  }
  for (const merge of merges) {
    if (merge.batchId !== batch.id || merge.at >= at) continue;
    const merged = batches.find((other) => other.id === merge.mergedId);
    if (merged) boards += boardsAt(merged, Number.POSITIVE_INFINITY, { batches, splits, merges });
  }
  return boards;
}
