import type { firstSteps as English } from '../en/first-steps.ts';
import { plural } from '../plural.ts';

export const firstSteps: typeof English = {
  title: 'Die Wand ist leer',
  says: 'Von hier bis zum ersten Urteil dauert es etwa fünf Minuten: ein Raum, ein Gestell, ein Sensor, die Bretter, der erste Anstrich. Sie können jederzeit aufhören und später weitermachen.',
  waiting: (count) =>
    plural('de', count, {
      one: '# Sensor sendet schon und wartet auf seinen Platz.',
      other: '# Sensoren senden schon und warten auf ihren Platz.',
    }),
  begin: 'Anfangen',
  goOn: 'Weiter einrichten',
  allAtOnce: 'Einrichten',
};
