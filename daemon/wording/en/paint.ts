import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { PaintSentences } from '../subject/paint.ts';
import { names } from './thing-names.ts';

const parts = names.mixtureParts;

const pour = (
  { part, stickCm, millilitres, grams }: PaintSentences['mix-pour'],
  speak: Speaker,
): string =>
  `Pour ${parts[part]} until the stick is wet to ${speak.lengthCm(stickCm)} (${speak.cupVolume(millilitres)}, ${speak.mass(grams)}).`;

const short = (lacking: readonly Inner[], say: (inner: Inner) => string) =>
  `Not enough: ${lacking.map(say).join(' and ')} short.`;

export const paint: Phrases<PaintSentences> = {
  'part/paint': () => parts.paint,
  'part/rawLinseedOil': () => parts.rawLinseedOil,
  'part/turpentine': () => parts.turpentine,
  'density/assumed': () => 'assumption: look on the tin',
  'density/given': () => 'as given',
  'density/linseed-oil': () => 'published: 0.934 at 15 °C, 0.925 at 25 °C',
  'density/turpentine': () => 'published: 0.86',
  'mix-stir-up': () =>
    'Lift off a skin, stir the paint up from the bottom of its tin, and strain it where there are lumps.',
  'mix-pour': pour,
  'mix-pour/turpentine': (told, speak) =>
    `${pour(told, speak)} Doors open, away from any flame or spark.`,
  'mix-pots': ({ pots }) => `So ${pots} times, each pot alike.`,
  'mix-turpentine-last': () =>
    'Turpentine goes in last, with the doors open, away from any flame or spark.',
  'mix-stir': () => 'Stir until no streak is left; stir again whenever the brush has rested.',
  'mix-label': () =>
    'Write mixture, colour and date on the pot. The rag goes into the can with water.',
  'tins-reach': () => 'The tins reach to the end.',
  'tins-short': ({ lacking }, _speak, say) => short(lacking, say),
  'tins-short/boards': ({ lacking, reaches, boards }, _speak, say) =>
    `${short(lacking, say)} They reach for ${reaches} of ${boards} boards.`,
  'litres-of': ({ litres, part }, speak) => `${speak.volume(litres, 2)} of ${parts[part]}`,
  'keep-small-tin': () =>
    'Pour what is left into a small tin, so that little air stays with it, lay a disc of plastic film on it and close the lid; write mixture, colour and date on it.',
  'keep-skin': () => 'Lift a skin off before use, never stir it in.',
  'keep-thinned': () =>
    'A thinned mixture settles: stir it from the bottom, and use it for the same coat.',
  'keep-turpentine': () =>
    'Keep it closed and cool, away from flame and heaters, locked up from children.',
  'keep-waste': () => 'Leftover paint, oil and turpentine are hazardous waste: never down a drain.',
};
