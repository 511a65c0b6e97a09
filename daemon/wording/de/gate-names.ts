import type { Gate } from '../../contract/gate.ts';

/** The job as a noun, after “zum” and “vor dem”. */
export const gateNouns: Readonly<Record<Gate, string>> = {
  turn: 'Wenden',
  stack: 'Stapeln',
  mount: 'Anbringen',
  sand: 'Schleifen',
  recoat: 'Überstreichen',
};

/** How the trade tests for a job. */
export const gateTests: Readonly<Record<Gate, string>> = {
  turn: 'Mit dem Fingerrücken berühren: Nichts geht ab, und kein Abdruck bleibt.',
  stack: 'Fünf Sekunden eine Handfläche aufdrücken: Sie löst sich sauber.',
  mount: 'Fünf Sekunden eine Handfläche fest aufdrücken: Sie löst sich sauber.',
  sand: 'Das Papier an einer Kante versuchen: Es staubt, rollt nicht und setzt sich nicht zu.',
  recoat: 'Einen Daumennagel eindrücken: Es bleibt keine Spur, und ein Tuch nimmt keine Farbe an.',
};
