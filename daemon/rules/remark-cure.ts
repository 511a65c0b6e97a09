import type { RemarkKind } from '../contract/batch.ts';
import type { Reason } from '../contract/gate.ts';
import type { Sentence } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import type { SentenceCode } from '../wording/sentence.ts';
import type { CoatFact, RemarkFact } from './facts.ts';

/**
 * What is usually done about what was seen, one step a line; the paint maker’s sheet comes first.
 * All common practice, no source.
 */
const cures = {
  wrinkled: ['cure-wrinkled/wait', 'cure-wrinkled/scrape', 'cure-wrinkled/thinner'],
  runs: ['cure-runs/while-soft', 'cure-runs/once-set'],
  dull: ['cure-dull/feed', 'cure-dull/spots-first'],
  glossy: ['cure-glossy/wait', 'cure-glossy/rub-matt'],
  'got-wet': ['cure-got-wet/dry', 'cure-got-wet/look'],
  'dew-night': ['cure-dew-night/dry', 'cure-dew-night/look'],
  bleached: ['cure-bleached/cure-through'],
  'still-standing': ['cure-still-standing/brush-out', 'cure-still-standing/rags'],
  'wiped-off': ['cure-wiped-off/rags'],
  'sunk-in': ['cure-sunk-in/fine'],
  clogged: ['cure-clogged/stop', 'cure-clogged/dust'],
  sanded: ['cure-sanded/tell', 'cure-sanded/dust'],
  'looked-fine': [],
  other: [],
} as const satisfies Record<RemarkKind, readonly SentenceCode[]>;

export const remarkCures = (kind: RemarkKind): Sentence[] =>
  cures[kind].map((code) => sentence(code, {}));

/** What says that somebody has looked after water came on a coat. */
const looked: readonly RemarkKind[] = ['looked-fine', 'dull', 'bleached'];
const wet: readonly RemarkKind[] = ['got-wet', 'dew-night'];

/**
 * Why a coat that got wet is not to be gone on with yet: until somebody has looked.
 *
 * @param remarks - all of the batch, any order
 * @returns empty where it stayed dry, or was looked at since
 */
export function wetHolds(coat: CoatFact, remarks: readonly RemarkFact[]): Reason[] {
  const last = (kinds: readonly RemarkKind[]) =>
    Math.max(
      Number.NEGATIVE_INFINITY,
      ...remarks
        .filter(({ kind, at }) => kinds.includes(kind) && at >= coat.finishedAt)
        .map(({ at }) => at),
    );
  const wetAt = last(wet);
  if (wetAt === Number.NEGATIVE_INFINITY || last(looked) >= wetAt) return [];
  return [sentence('was-wet', {})];
}
