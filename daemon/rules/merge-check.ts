import { BoardcureError } from '../contract/problem.ts';
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
 * What keeps two batches from being put together; each as a few words that go on “differs”.
 *
 * @param at - when they are put together, UTC epoch ms
 */
export function mergeDifferences(into: MergeSide, from: MergeSide, at: number): string[] {
  const a = into.batch;
  const b = from.batch;
  const differences: string[] = [];
  const say = (isSame: boolean, words: string) => {
    if (!isSame) differences.push(words);
  };
  say(a.species === b.species, `the timber (${a.species}, ${b.species})`);
  say(a.surface === b.surface, `the surface (${a.surface}, ${b.surface})`);
  for (const [side, words] of [
    ['lengthMm', 'length'],
    ['widthMm', 'width'],
    ['thicknessMm', 'thickness'],
  ] as const) {
    say(
      a.boards[side] === b.boards[side],
      `the ${words} (${a.boards[side]} and ${b.boards[side]} mm)`,
    );
  }
  const state = ({ timber }: BatchFact) =>
    (timber ?? nothingSaidOfTimber).stateBefore ?? 'not said';
  say(state(a) === state(b), `the state before coating (${state(a)}, ${state(b)})`);
  say(a.planId === b.planId, 'the coating plan or its version');
  const then = (coats: readonly CoatFact[]) => coats.filter((coat) => coat.finishedAt <= at);
  const [ours, theirs] = [then(into.coats), then(from.coats)];
  say(ours.length === theirs.length, `the coats that are on (${ours.length} and ${theirs.length})`);
  for (const coat of ours) {
    const other = theirs.find((one) => one.coat === coat.coat);
    if (!other) continue;
    const number = coat.coat + 1;
    say(sameMixture(coat, other), `the mixture of coat ${number}`);
    say(colourOf(coat) === colourOf(other), `the colour of coat ${number}`);
    const faces = (one: CoatFact) => [...one.faces].sort().join();
    say(faces(coat) === faces(other), `the faces of coat ${number}`);
  }
  return differences;
}

/** Boards may be put together only where they are alike. @throws BoardcureError naming what is not */
export function checkMerge(into: MergeSide, from: MergeSide, at: number): void {
  const refuse = (text: string) => {
    throw new BoardcureError('BC_MERGE_UNLIKE', text, { pointer: '/batchId' });
  };
  if (into.batch.id === from.batch.id) refuse('A batch cannot be put to itself.');
  for (const { batch } of [into, from]) {
    if (batch.closedAt !== null) refuse(`The batch “${batch.name}” is closed.`);
  }
  const later = from.coats.find((coat) => coat.finishedAt > at);
  if (later) {
    refuse(
      `“${from.batch.name}” got its coat ${later.coat + 1} only after ${new Date(at).toISOString()}.`,
    );
  }
  const differences = mergeDifferences(into, from, at);
  if (differences.length > 0) {
    refuse(`These boards are not alike. What differs: ${differences.join('; ')}.`);
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
    `“${name}” has ${fewest} boards to split from; ${boards} cannot go while at least one stays.`,
    { pointer: '/boards' },
  );
}
