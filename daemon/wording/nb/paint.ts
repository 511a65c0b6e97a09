import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { PaintSentences } from '../subject/paint.ts';
import { names } from './thing-names.ts';

const parts = names.mixtureParts;

const pour = (
  { part, stickCm, millilitres, grams }: PaintSentences['mix-pour'],
  speak: Speaker,
): string =>
  `Hell i ${parts[part]} til pinnen er våt til ${speak.lengthCm(stickCm)} (${speak.cupVolume(millilitres)}, ${speak.mass(grams)}).`;

const short = (lacking: readonly Inner[], say: (inner: Inner) => string) =>
  `Ikke nok: det mangler ${lacking.map(say).join(' og ')}.`;

export const paint: Phrases<PaintSentences> = {
  'part/paint': () => parts.paint,
  'part/rawLinseedOil': () => parts.rawLinseedOil,
  'part/turpentine': () => parts.turpentine,
  'density/assumed': () => 'antakelse: se på boksen',
  'density/given': () => 'som oppgitt',
  'density/linseed-oil': () => 'publisert: 0,934 ved 15 °C, 0,925 ved 25 °C',
  'density/turpentine': () => 'publisert: 0,86',
  'mix-stir-up': () =>
    'Løft av skinnet, rør opp malingen fra bunnen av boksen, og sil den der det er klumper.',
  'mix-pour': pour,
  'mix-pour/turpentine': (told, speak) =>
    `${pour(told, speak)} Åpne dører, unna enhver flamme eller gnist.`,
  'mix-pots': ({ pots }) => `Slik ${pots} ganger, likt i hvert spann.`,
  'mix-turpentine-last': () =>
    'Terpentinen helles i sist, med åpne dører, unna enhver flamme eller gnist.',
  'mix-stir': () => 'Rør til ingen striper er igjen; rør igjen hver gang penselen har hvilt.',
  'mix-label': () =>
    'Skriv blanding, farge og dato på spannet. Filla legges i metallboksen med vann.',
  'tins-reach': () => 'Boksene rekker helt fram.',
  'tins-short': ({ lacking }, _speak, say) => short(lacking, say),
  'tins-short/boards': ({ lacking, reaches, boards }, _speak, say) =>
    `${short(lacking, say)} De rekker til ${reaches} av ${boards} bord.`,
  'litres-of': ({ litres, part }, speak) => `${speak.volume(litres, 2)} ${parts[part]}`,
  'keep-small-tin': () =>
    'Hell det som er igjen i en liten boks, så det får lite luft med seg, legg en rund bit plastfilm på og lukk lokket; skriv blanding, farge og dato på den.',
  'keep-skin': () => 'Løft av skinnet før bruk, rør det aldri inn.',
  'keep-thinned': () =>
    'En tynnet blanding synker: rør den opp fra bunnen, og bruk den til samme strøk.',
  'keep-turpentine': () =>
    'Hold den lukket og kjølig, unna flammer og varmeovner, innelåst for barn.',
  'keep-waste': () => 'Rester av maling, olje og terpentin er farlig avfall: aldri i avløpet.',
};
