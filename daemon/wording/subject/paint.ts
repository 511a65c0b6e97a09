import type { MixturePart } from '../../contract/mixture.ts';
import type { Inner, Nothing } from '../phrase.ts';

type Parts = { [Part in MixturePart as `part/${Part}`]: Nothing };

interface Poured {
  part: MixturePart;
  stickCm: number;
  millilitres: number;
  grams: number;
}

/** What is done at the mixing bench, whether the tins reach, and how to keep what is left. */
export interface PaintSentences extends Parts {
  'density/assumed': Nothing;
  'density/given': Nothing;
  'density/linseed-oil': Nothing;
  'density/turpentine': Nothing;
  'mix-stir-up': Nothing;
  'mix-pour': Poured;
  'mix-pour/turpentine': Poured;
  'mix-pots': { pots: number };
  'mix-turpentine-last': Nothing;
  'mix-stir': Nothing;
  'mix-label': Nothing;
  'tins-reach': Nothing;
  /** `lacking`: each a `litres-of`. */
  'tins-short': { lacking: Inner[] };
  'tins-short/boards': { lacking: Inner[]; reaches: number; boards: number };
  'litres-of': { litres: number; part: MixturePart };
  'keep-small-tin': Nothing;
  'keep-skin': Nothing;
  'keep-thinned': Nothing;
  'keep-turpentine': Nothing;
  'keep-waste': Nothing;
}
