import type { RemarkKind } from '../contract/batch.ts';
import type { Reason } from '../contract/gate.ts';
import { sentence } from '../wording/english.ts';
import type { CoatFact, RemarkFact } from './facts.ts';

/**
 * What is usually done about what was seen, one step a line; the paint maker’s sheet comes first.
 * All common practice, no source.
 */
export const remarkCures: Readonly<Record<RemarkKind, readonly string[]>> = {
  wrinkled: [
    'It went on too thick: the skin closed over a soft film. Wait until it is firm through, days to weeks.',
    'Scrape the wrinkles off, do not sand them hot. Old paint may hold lead: test first.',
    'Coat again, thinner, and brush it out longer.',
  ],
  runs: [
    'While they are soft: brush them out upwards.',
    'Once they have set: wait until they are firm, cut them off with a sharp scraper, and coat the spot thin.',
  ],
  dull: [
    'Dull means starved: the wood drank the oil. Feed it with another thin coat.',
    'Dull spots alone: coat them first, the whole face after they are dry.',
  ],
  glossy: [
    'Glossy means fat: too much oil lies on top and stays soft for long. Wait until a thumbnail leaves no mark.',
    'Rub it matt before the next coat so that it holds, and go thinner.',
  ],
  'got-wet': [
    'Let it dry in moving air, out of the sun.',
    'Then look for dull spots and bleaching before you go on; feed what is dull.',
  ],
  'dew-night': [
    'Let it dry off by itself; do not rub wet paint.',
    'Then look for dull spots and bleaching before you go on; feed what is dull.',
  ],
  bleached: [
    'Water stood on it while it was soft. Let it cure through, rub it matt, and coat again.',
  ],
  'still-standing': [
    'Brush it out over the dry places, or wipe it off with a rag along the grain, within the hour.',
    'Lay the rags out flat outdoors or put them under water in a lidded metal can: they heat up by themselves.',
  ],
  'wiped-off': [
    'Oily rags heat up by themselves: out flat outdoors, or under water in a lidded can.',
  ],
  'sunk-in': ['As it should be. Give it its time.'],
  clogged: [
    'It is not through-dry: stop, or the paper drags the film off. Give it days, then try an edge again.',
    'Wet the dust down or draw it off, and wear a mask. Old paint may hold lead: test first.',
  ],
  sanded: [
    'Say tomorrow whether it dusted or clogged: that teaches what this paint needs.',
    'Sanding dust soaked in oil can catch fire: out of doors with it, wetted, in a lidded metal can.',
  ],
  'looked-fine': [],
  other: [],
};

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
