import type { cautions as English } from '../en/cautions.ts';

export const cautions: typeof English = {
  link: 'Advarsler',
  short:
    'Oljefiller kan selvantenne. Alle tall er anslag; malingsprodusentens anvisninger og lokale regler går foran.',
  wall: 'Oljefiller kan selvantenne. Tallene er anslag.',
  ragsLine:
    'Oljefiller fra i dag? Legg dem utendørs, flatt i ett lag, eller under vann i en metallboks med lokk.',
  rags: {
    title: 'Fillene, nå med en gang',
    lines: [
      'Filler, svamper og papir med linolje på blir varme av seg selv og kan ta fyr flere timer senere. La dem aldri ligge i en haug, i en lomme eller i en søppelbøtte.',
      'Legg dem flatt ut, i ett lag, utendørs på noe som ikke brenner, til de er stive; eller legg dem under vann i en metallboks med lokk.',
      'Lever dem deretter som avfall slik de lokale reglene sier.',
    ],
  },
};
