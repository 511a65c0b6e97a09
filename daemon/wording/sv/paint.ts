import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { PaintSentences } from '../subject/paint.ts';
import { names } from './thing-names.ts';

const parts = names.mixtureParts;

const pour = (
  { part, stickCm, millilitres, grams }: PaintSentences['mix-pour'],
  speak: Speaker,
): string =>
  `Häll ${parts[part]} tills pinnen är våt till ${speak.lengthCm(stickCm)} (${speak.cupVolume(millilitres)}, ${speak.mass(grams)}).`;

const short = (lacking: readonly Inner[], say: (inner: Inner) => string) =>
  `Räcker inte: det fattas ${lacking.map(say).join(' och ')}.`;

export const paint: Phrases<PaintSentences> = {
  'part/paint': () => parts.paint,
  'part/rawLinseedOil': () => parts.rawLinseedOil,
  'part/turpentine': () => parts.turpentine,
  'density/assumed': () => 'antagande: se på burken',
  'density/given': () => 'som angivet',
  'density/linseed-oil': () => 'publicerat: 0,934 vid 15 °C, 0,925 vid 25 °C',
  'density/turpentine': () => 'publicerat: 0,86',
  'mix-stir-up': () =>
    'Lyft av skinnet, rör upp färgen från burkens botten, och sila den om det finns klumpar.',
  'mix-pour': pour,
  'mix-pour/turpentine': (told, speak) =>
    `${pour(told, speak)} Öppna dörrar, borta från lågor och gnistor.`,
  'mix-pots': ({ pots }) => `Så ${pots} gånger, varje burk lika.`,
  'mix-turpentine-last': () =>
    'Terpentinet hälls i sist, med öppna dörrar, borta från lågor och gnistor.',
  'mix-stir': () => 'Rör tills inga strimmor syns; rör igen varje gång penseln har vilat.',
  'mix-label': () =>
    'Skriv blandning, kulör och datum på burken. Trasan läggs i burken med vatten.',
  'tins-reach': () => 'Burkarna räcker hela vägen.',
  'tins-short': ({ lacking }, _speak, say) => short(lacking, say),
  'tins-short/boards': ({ lacking, reaches, boards }, _speak, say) =>
    `${short(lacking, say)} De räcker till ${reaches} av ${boards} brädor.`,
  'litres-of': ({ litres, part }, speak) => `${speak.volume(litres, 2)} ${parts[part]}`,
  'keep-small-tin': () =>
    'Häll det som är kvar i en liten burk, så att det får lite luft med sig, lägg en rund bit plastfilm på och stäng locket; skriv blandning, kulör och datum på den.',
  'keep-skin': () => 'Lyft av skinnet före användning, rör aldrig ner det.',
  'keep-thinned': () =>
    'En förtunnad blandning sjunker: rör upp den från botten, och använd den till samma strykning.',
  'keep-turpentine': () =>
    'Håll det slutet och svalt, borta från lågor och värmare, inlåst för barn.',
  'keep-waste': () => 'Överbliven färg, olja och terpentin är farligt avfall: aldrig i avloppet.',
};
