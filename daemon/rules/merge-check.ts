import { BoardcureError } from '../contract/problem.ts';
import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import { inner } from '../wording/sentence.ts';
import type { BatchFact, CoatFact } from './facts.ts';
import { nothingSaidOfTimber } from './trade-facts.ts';

/** A batch with its coats, as far as it matters for putting boards together. */
export interface MergeSide {
  batch: BatchFact;
  coats: readonly CoatFact[];
}

const sameMixture = (a: CoatFact, b: CoatFact): boolean => {
  const share = ({ mixture }: CoatFact) => {
    const total = mixture.paint + mixture.rawLinseedOil + mixture.turpentine;
    return [mixture.paint, mixture.rawLinseedOil].map((part) => Math.round((1000 * part) / total));
  };
  return share(a).join() === share(b).join();
};

const colourOf = (coat: CoatFact) => (coat.colour ?? '').trim().toLowerCase();

/**
 * What keeps two batches from being put together, each as a few words.
 *
 * @param at - when they are put together, UTC epoch ms
 */
export function mergeDifferences(into: MergeSide, from: MergeSide, at: number): Said[] {
  const a = into.batch;
  const b = from.batch;
  const differences: Said[] = [];
  const unless = (isSame: boolean, said: Said) => {
    if (!isSame) differences.push(said);
  };
  unless(
    a.species === b.species,
    sentence('unlike/timber', { ours: a.species, theirs: b.species }),
  );
  unless(
    a.surface === b.surface,
    sentence('unlike/surface', { ours: a.surface, theirs: b.surface }),
  );
  for (const side of ['length', 'width', 'thickness'] as const) {
    const [oursMm, theirsMm] = [a.boards[`${side}Mm`], b.boards[`${side}Mm`]];
    unless(oursMm === theirsMm, sentence(`unlike/${side}`, { oursMm, theirsMm }));
  }
  const state = ({ timber }: BatchFact) => (timber ?? nothingSaidOfTimber).stateBefore;
  unless(state(a) === state(b), sentence('unlike/state', { ours: state(a), theirs: state(b) }));
  unless(a.planId === b.planId, sentence('unlike/plan', {}));
  const then = (coats: readonly CoatFact[]) => coats.filter((coat) => coat.finishedAt <= at);
  const [ours, theirs] = [then(into.coats), then(from.coats)];
  unless(
    ours.length === theirs.length,
    sentence('unlike/coats', { ours: ours.length, theirs: theirs.length }),
  );
  for (const coat of ours) {
    const other = theirs.find((one) => one.coat === coat.coat);
    if (!other) continue;
    const number = coat.coat + 1;
    unless(sameMixture(coat, other), sentence('unlike/mixture', { number }));
    unless(colourOf(coat) === colourOf(other), sentence('unlike/colour', { number }));
    const faces = (one: CoatFact) => [...one.faces].sort().join();
    unless(faces(coat) === faces(other), sentence('unlike/faces', { number }));
  }
  return differences;
}

/** Boards may be put together only where they are alike. @throws BoardcureError naming what is not */
export function checkMerge(into: MergeSide, from: MergeSide, at: number): void {
  const refuse = (said: Said) => {
    throw new BoardcureError('BC_MERGE_UNLIKE', said, { pointer: '/batchId' });
  };
  if (into.batch.id === from.batch.id) refuse(sentence('merge-itself', {}));
  for (const { batch } of [into, from]) {
    if (batch.closedAt !== null) refuse(sentence('batch-closed', { batchName: batch.name }));
  }
  const later = from.coats.find((coat) => coat.finishedAt > at);
  if (later) {
    const told = { batchName: from.batch.name, number: later.coat + 1, at };
    refuse(sentence('merge-later-coat', told));
  }
  const differences = mergeDifferences(into, from, at);
  if (differences.length > 0) {
    refuse(sentence('boards-unlike', { differences: differences.map(inner) }));
  }
}

/**
 * Boards can be split off only where at least one is left, then and ever after.
 *
 * @param left - boards there at the moment of the split and after each later one
 */
export function checkSplit(boards: number, left: readonly number[], name: string): void {
  const fewest = Math.min(...left);
  if (boards < fewest) return;
  throw new BoardcureError(
    'BC_SPLIT_TOO_MANY',
    sentence('split-too-many', { batchName: name, left: fewest, boards }),
    { pointer: '/boards' },
  );
}
