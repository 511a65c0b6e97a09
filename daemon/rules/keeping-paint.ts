import type { Mixture } from '../contract/plan.ts';
import type { Sentence } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';

/**
 * How to keep what is left of a mixture. Common practice, no source; the maker’s sheet comes first.
 */
export function keepingWords(mixture: Mixture): Sentence[] {
  const isThinned = mixture.rawLinseedOil > 0 || mixture.turpentine > 0;
  return [
    sentence('keep-small-tin', {}),
    sentence('keep-skin', {}),
    ...(isThinned ? [sentence('keep-thinned', {})] : []),
    ...(mixture.turpentine > 0 ? [sentence('keep-turpentine', {})] : []),
    sentence('keep-waste', {}),
  ];
}
