import type { Caution } from '../caution.ts';
import { cautions } from './cautions.ts';

/** The cautions of the trade. Common practice, no source; local codes and licensed practice first. */
const all: readonly Caution[] = [
  { ...cautions.rags, title: 'Oily rags heat up by themselves' },
  {
    title: 'Solvent vapour',
    lines: [
      'Turpentine and other thinners give off vapour that harms and that can burn. It is heavier than air and gathers low down. Change the air, keep flames and sparks away, and follow the sheet of the product and the local exposure limit.',
      'This program is no gas alarm, and nothing it drives or is fed by is built for an explosive atmosphere.',
    ],
  },
  {
    title: 'Dust',
    lines: [
      'Sanding dust of wood and paint harms the lungs, and oily dust can heat up like rags. Take it off where it arises, wear a mask, and empty the bag outdoors.',
    ],
  },
  {
    title: 'Old paint',
    lines: [
      'Old paint may hold lead or other poisons. Have it tested before it is scraped, sanded or burnt off, and follow the local rules for such work.',
    ],
  },
  {
    title: 'Heaters',
    lines: [
      'Keep heaters away from wet boards, rags and vapour. A gas or oil heater without a flue makes water and fumes. Have electric heaters wired and watched as local codes ask.',
    ],
  },
  {
    title: 'What the figures are',
    lines: [
      'Every verdict is an estimate from air that was measured near the boards, not from the paint itself. It says how likely something is; it cannot say that it is so. Feel before you go on.',
      'The paint maker’s sheet, local codes and licensed practice come before anything said here.',
    ],
  },
];

/** The cautions of the trade on one page. */
export const cautionsPage = {
  title: 'Cautions',
  lead: 'The usual ones of the trade. They do not replace the paint maker’s sheet, local codes or licensed practice, which come first.',
  all,
};
