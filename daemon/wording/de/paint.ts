import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { PaintSentences } from '../subject/paint.ts';
import { names } from './thing-names.ts';

const parts = names.mixtureParts;

const pour = (
  { part, stickCm, millilitres, grams }: PaintSentences['mix-pour'],
  speak: Speaker,
): string => {
  const what = parts[part];
  return `${what.charAt(0).toUpperCase()}${what.slice(1)} gießen, bis der Stab bis ${speak.lengthCm(stickCm)} nass ist (${speak.cupVolume(millilitres)}, ${speak.mass(grams)}).`;
};

const short = (lacking: readonly Inner[], say: (inner: Inner) => string) =>
  `Nicht genug: Es fehlen ${lacking.map(say).join(' und ')}.`;

export const paint: Phrases<PaintSentences> = {
  'part/paint': () => parts.paint,
  'part/rawLinseedOil': () => parts.rawLinseedOil,
  'part/turpentine': () => parts.turpentine,
  'density/assumed': () => 'Annahme: auf der Dose nachsehen',
  'density/given': () => 'wie angegeben',
  'density/linseed-oil': () => 'veröffentlicht: 0,934 bei 15 °C, 0,925 bei 25 °C',
  'density/turpentine': () => 'veröffentlicht: 0,86',
  'mix-stir-up': () =>
    'Eine Haut abheben, die Farbe vom Boden der Dose her aufrühren und sieben, wo Klumpen sind.',
  'mix-pour': pour,
  'mix-pour/turpentine': (told, speak) =>
    `${pour(told, speak)} Bei offenen Türen, fern von Flammen und Funken.`,
  'mix-pots': ({ pots }) => `Das ${pots}-mal, jeder Topf gleich.`,
  'mix-turpentine-last': () =>
    'Terpentinöl kommt zuletzt hinein, bei offenen Türen, fern von Flammen und Funken.',
  'mix-stir': () =>
    'Rühren, bis keine Schliere mehr da ist; wieder rühren, wenn der Pinsel geruht hat.',
  'mix-label': () =>
    'Mischung, Farbton und Datum auf den Topf schreiben. Der Lappen kommt in den Eimer mit Wasser.',
  'tins-reach': () => 'Die Dosen reichen bis zum Schluss.',
  'tins-short': ({ lacking }, _speak, say) => short(lacking, say),
  'tins-short/boards': ({ lacking, reaches, boards }, _speak, say) =>
    `${short(lacking, say)} Sie reichen für ${reaches} von ${boards} Brettern.`,
  'litres-of': ({ litres, part }, speak) => `${speak.volume(litres, 2)} ${parts[part]}`,
  'keep-small-tin': () =>
    'Den Rest in eine kleine Dose gießen, damit wenig Luft darin bleibt, eine Scheibe Kunststofffolie darauflegen und den Deckel schließen; Mischung, Farbton und Datum daraufschreiben.',
  'keep-skin': () => 'Eine Haut vor dem Gebrauch abheben, nie einrühren.',
  'keep-thinned': () =>
    'Eine verdünnte Mischung setzt sich ab: vom Boden her aufrühren und für denselben Anstrich nehmen.',
  'keep-turpentine': () =>
    'Geschlossen und kühl halten, fern von Flammen und Heizgeräten, vor Kindern weggeschlossen.',
  'keep-waste': () => 'Reste von Farbe, Öl und Terpentinöl sind Sondermüll: nie in den Abfluss.',
};
