import type { MixturePart } from '../../contract/mixture.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { PaintSentences } from '../subject/paint.ts';
import { names } from './thing-names.ts';

const parts = names.mixtureParts;

/** The same in the partitive, as what is poured or measured. */
const some: Readonly<Record<MixturePart, string>> = {
  paint: 'maalia',
  rawLinseedOil: 'raakapellavaöljyä',
  turpentine: 'tärpättiä',
};

const pour = (
  { part, stickCm, millilitres, grams }: PaintSentences['mix-pour'],
  speak: Speaker,
): string =>
  `Kaada ${some[part]}, kunnes tikku on märkä tähän asti: ${speak.lengthCm(stickCm)} (${speak.cupVolume(millilitres)}, ${speak.mass(grams)}).`;

const short = (lacking: readonly Inner[], say: (inner: Inner) => string) =>
  `Ei riitä: puuttuu ${lacking.map(say).join(' ja ')}.`;

export const paint: Phrases<PaintSentences> = {
  'part/paint': () => parts.paint,
  'part/rawLinseedOil': () => parts.rawLinseedOil,
  'part/turpentine': () => parts.turpentine,
  'density/assumed': () => 'oletus: katso purkista',
  'density/given': () => 'annettu',
  'density/linseed-oil': () => 'julkaistu: 0,934 lämpötilassa 15 °C, 0,925 lämpötilassa 25 °C',
  'density/turpentine': () => 'julkaistu: 0,86',
  'mix-stir-up': () =>
    'Nosta nahka pois, sekoita maali purkin pohjasta asti, ja siivilöi, jos siinä on kokkareita.',
  'mix-pour': pour,
  'mix-pour/turpentine': (told, speak) =>
    `${pour(told, speak)} Ovet auki, kaukana liekistä ja kipinöistä.`,
  'mix-pots': ({ pots }) => `Näin ${pots} kertaa, kaikki astiat samanlaisia.`,
  'mix-turpentine-last': () =>
    'Tärpätti lisätään viimeisenä, ovet auki, kaukana liekistä ja kipinöistä.',
  'mix-stir': () =>
    'Sekoita, kunnes juovia ei näy; sekoita uudelleen aina, kun sivellin on levännyt.',
  'mix-label': () => 'Kirjoita astiaan seos, väri ja päivä. Rätti menee vesiastiaan.',
  'tins-reach': () => 'Purkit riittävät loppuun asti.',
  'tins-short': ({ lacking }, _speak, say) => short(lacking, say),
  'tins-short/boards': ({ lacking, reaches, boards }, _speak, say) =>
    `${short(lacking, say)} Riittää lautoihin: ${reaches}/${boards}.`,
  'litres-of': ({ litres, part }, speak) => `${speak.volume(litres, 2)} ${some[part]}`,
  'keep-small-tin': () =>
    'Kaada jäljelle jäänyt pieneen purkkiin, jotta sen päälle jää vähän ilmaa, pane pinnalle muovikalvo ja sulje kansi; kirjoita siihen seos, väri ja päivä.',
  'keep-skin': () => 'Nosta nahka pois ennen käyttöä, älä koskaan sekoita sitä joukkoon.',
  'keep-thinned': () =>
    'Ohennettu seos laskeutuu: sekoita se pohjasta asti, ja käytä samaan kerrokseen.',
  'keep-turpentine': () =>
    'Säilytä suljettuna ja viileässä, kaukana liekistä ja lämmittimistä, lasten ulottumattomissa lukon takana.',
  'keep-waste': () =>
    'Maalin, öljyn ja tärpätin tähteet ovat vaarallista jätettä: ei koskaan viemäriin.',
};
