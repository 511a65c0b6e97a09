import type { wall as English } from '../en/wall.ts';
import { plural } from '../plural.ts';

export const wall: typeof English = {
  title: 'Die Wand',
  coatsPlanned: (coats) =>
    plural('de', coats, { one: '# Anstrich geplant', other: '# Anstriche geplant' }),
  coatOf: (coat, coats) => `Anstrich ${coat} von ${coats}`,
  spoken: (sign, job) => `${sign} (${job})`,
  spokenOld: (verdict) => `Nicht mehr gewiss: ${verdict}`,
  notSure: 'Nicht mehr gewiss',
  air: (word) => `Luft: ${word}`,
  airOld: (word, ago) => `Luft: ${word}, ${ago}`,
  noSensor: 'Kein Sensor meldet, wie die Luft hier ist.',
  oldFigures: (ago) => `Alte Zahlen: Der letzte Messwert kam ${ago}.`,
  driedUnknown: 'Wie weit die Farbe getrocknet ist, ist nicht bekannt.',
  dried: (share, job) => `Die Farbe ist zu ${share} so weit, wie ${job} wahrscheinlich nötig ist.`,
  pages: 'Seiten der Wand',
  pageOf: (page, pages) => `${page} von ${pages}`,
  next: 'Nächste Gestelle',
  back: 'Vorige Gestelle',
  standStill: 'Anhalten',
  turnOn: 'Von selbst blättern',
  also: (racks) => `Auch: ${racks}`,
  rackSays: (rack, sign) => `${rack} – ${sign}`,
  needsLook: 'Nachsehen',
  moreRacks: (racks) => `${racks} weitere`,
  moreNotices: (notices) => `und ${notices} weitere`,
};
