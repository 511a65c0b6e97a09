import type { Phrases } from '../phrase.ts';
import type { WorkSentences } from '../subject/work.ts';
import { gateNouns } from './gate-names.ts';

export const work: Phrases<WorkSentences> = {
  'step/edges': () => 'Kanten, solange die Bretter im Stapel stehen',
  'step/back': () => 'Rückseite, dünn ausgestrichen',
  'step/face': () => 'Vorderseite, in Faserrichtung ausgestrichen',
  'step/ends': () => 'Hirnholz, gut getränkt',
  'step/ends-again': () => 'Hirnholz ein zweites Mal, wenn das erste eingezogen ist',
  'step/rags': () => 'Lappen flach im Freien ausgelegt oder unter Wasser in einem Eimer mit Deckel',
  'mounting/fresh-cuts': () => 'Jeder frische Schnitt am selben Tag grundiert',
  'mounting/notches': () => 'Kerben und Bohrlöcher am selben Tag grundiert',
  'mounting/nail-heads': () => 'Nagelköpfe am selben Tag grundiert',
  'mounting/end-grain-twice': () =>
    'Hirnholz zweimal gestrichen, das zweite Mal, wenn das erste eingezogen ist',
  'look/soaks-in': () =>
    'Nach dem sehen, was noch glänzt: ausstreichen oder abwischen. Öl, das auf dichtem Holz steht, bleibt wochenlang klebrig. Sagen, ob es eingezogen ist.',
  'look/film': () =>
    'Gegen das Licht nach Läufern und fetten Kanten sehen und sie ausstreichen, solange sie weich sind.',
  'touch-offcut': () => 'Zuerst am Probestück, das mit diesen Brettern gestrichen wurde.',
  'touch-low-in-shade': () => 'Dann tief unten im Schatten, wo es zuletzt trocknet.',
  'touch-under-lap': () => 'Unter einer Überlappung oder einer Unterkante.',
  'touch-bottom-shelf': () =>
    'Dann auf der untersten Lage, in der Mitte des Gestells, wo die Luft steht.',
  'touch-fat-edge': () => 'An einer fetten Kante, wo sich Farbe gesammelt hat.',
  'touch-knot': () => 'An einem Ast: Farbe über Harz trocknet zuletzt.',
  'touch-lying-side': () => 'An der Seite, die auf dem nächsten Brett liegen wird.',
  'outcome-where': () => 'Sie brauchen nicht hinzugehen: sagen, wie das Schleifen ging.',
  'outcome-feel': () =>
    'Hat das Papier gestaubt, oder hat es die Farbe gerollt und sich zugesetzt?',
  'outcome-dusted': () =>
    'Es staubte: Diese Farbe braucht nicht mehr, als sie beim Schleifen hatte.',
  'outcome-clogged': () =>
    'Es setzte sich zu: Diese Farbe braucht mehr, als sie beim Schleifen hatte.',
  'if-passed/as-planned': ({ gate }) =>
    `Wenn bestanden, kann das ${gateNouns[gate]} wie geplant weitergehen.`,
  'if-passed/now': ({ gate }) =>
    `Wenn bestanden, kann das ${gateNouns[gate]} jetzt beginnen, statt zu warten.`,
  'if-failed': ({ gate }) =>
    `Wenn nicht bestanden, wartet das ${gateNouns[gate]}, und nichts ist verdorben.`,
};
