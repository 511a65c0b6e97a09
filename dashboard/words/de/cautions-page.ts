import type { Caution } from '../caution.ts';
import type { cautionsPage as English } from '../en/cautions-page.ts';
import { cautions } from './cautions.ts';

/** The cautions of the trade. Common practice, no source; local codes and licensed practice first. */
const all: readonly Caution[] = [
  { ...cautions.rags, title: 'Ölige Lappen erhitzen sich von selbst' },
  {
    title: 'Lösemitteldämpfe',
    lines: [
      'Terpentinöl und andere Verdünner geben Dämpfe ab, die schaden und die brennen können. Sie sind schwerer als Luft und sammeln sich am Boden. Lüften, Flammen und Funken fernhalten und das Merkblatt des Produkts und den örtlichen Grenzwert am Arbeitsplatz beachten.',
      'Dieses Programm ist kein Gaswarner, und nichts, was es steuert oder was ihm Werte liefert, ist für eine explosionsfähige Atmosphäre gebaut.',
    ],
  },
  {
    title: 'Staub',
    lines: [
      'Schleifstaub von Holz und Farbe schadet der Lunge, und öliger Staub kann sich erhitzen wie Lappen. Dort absaugen, wo er entsteht, eine Maske tragen und den Beutel im Freien leeren.',
    ],
  },
  {
    title: 'Alte Farbe',
    lines: [
      'Alte Farbe kann Blei oder andere Gifte enthalten. Vor dem Abkratzen, Schleifen oder Abbrennen untersuchen lassen und die örtlichen Vorschriften für solche Arbeit befolgen.',
    ],
  },
  {
    title: 'Heizgeräte',
    lines: [
      'Heizgeräte von nassen Brettern, Lappen und Dämpfen fernhalten. Ein Gas- oder Ölheizer ohne Abzug gibt Wasser und Abgase in den Raum. Elektrische Heizgeräte so anschließen und beaufsichtigen lassen, wie es die örtlichen Vorschriften verlangen.',
    ],
  },
  {
    title: 'Was die Zahlen sind',
    lines: [
      'Jedes Urteil ist eine Schätzung aus der Luft, die bei den Brettern gemessen wurde, nicht aus der Farbe selbst. Es sagt, wie wahrscheinlich etwas ist; dass es so ist, kann es nicht sagen. Vor dem Weitermachen anfassen.',
      'Das Merkblatt des Farbherstellers, die örtlichen Vorschriften und zugelassene Fachleute gehen allem vor, was hier steht.',
    ],
  },
];

export const cautionsPage: typeof English = {
  title: 'Warnhinweise',
  lead: 'Die üblichen des Handwerks. Sie ersetzen weder das Merkblatt des Farbherstellers noch örtliche Vorschriften oder zugelassene Fachleute; die gehen vor.',
  all,
};
