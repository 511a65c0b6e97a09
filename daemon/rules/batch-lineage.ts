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
function continued(segments: readonly Segment[], at: number, batchId: string): Segment[] {
  const before = segments
    .filter((one) => one.fromAt === null || one.fromAt < at)
    .map((one) => ({ ...one, untilAt: Math.min(one.untilAt ?? at, at) }));
  return [...before, { batchId, fromAt: at, untilAt: null }];
}

/**
 * Works out every history: a split child shares its parent’s up to the split, boards put to another
 * batch share that batch’s from then on. Facts are pointed at, never copied.
 */
export function lineageOf({ batches, splits, merges }: RecordedFacts): Lineage {
  const segments = new Map<string, readonly Segment[]>();
  const companions = new Map<string, readonly string[]>();
  const working = new Set<string>();

  function settle(id: string): void {
    // A batch cannot descend from itself; a file that says so is read as far as it goes.
    if (segments.has(id) || working.has(id)) return;
    working.add(id);
    const split = splits.find((one) => one.childId === id);
    const along: string[] = [];
    const keep = (from: string, at: number) => {
      const name = companionId(from, id);
      segments.set(name, continued(segments.get(from) ?? [], at, id));
      along.push(name);
    };
    let own: readonly Segment[] = [{ batchId: id, fromAt: null, untilAt: null }];
    if (split) {
      settle(split.batchId);
      own = continued(segments.get(split.batchId) ?? [], split.at, id);
      for (const other of companions.get(split.batchId) ?? []) {
        const joined = joinedAt(other);
        if (joined !== null && joined <= split.at) keep(other, split.at);
      }
    }
    segments.set(id, own);
    for (const merge of merges) {
      if (merge.batchId !== id) continue;
      settle(merge.mergedId);
      keep(merge.mergedId, merge.at);
      for (const other of companions.get(merge.mergedId) ?? []) keep(other, merge.at);
    }
    companions.set(id, along);
    working.delete(id);
  }

  /** When the boards of a history came to lie where they lie now. */
  const joinedAt = (id: string) => segments.get(id)?.at(-1)?.fromAt ?? null;

  for (const batch of batches) settle(batch.id);
  return { segments, companions };
}

const isWithin = (at: number | null, { fromAt, untilAt }: Segment): boolean =>
  at === null
    ? fromAt === null
    : (fromAt === null || at > fromAt) && (untilAt === null || at <= untilAt);

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
  const own = segments.at(-1)?.batchId;
  const along = <T extends { batchId: string }>(
    byBatch: ReadonlyMap<string, readonly T[]>,
    atOf: (fact: T) => number | null,
  ): T[] =>
    segments.flatMap((segment) =>
      (byBatch.get(segment.batchId) ?? []).filter(
        // A child’s own facts are its own, also one at the very moment of the split.
        (fact) => isWithin(atOf(fact), segment) || (segment.batchId === own && own === id),
      ),
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
