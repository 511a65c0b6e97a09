import type { Caution } from '../caution.ts';

/** Shown after a coat was recorded. Common practice, no source; local rules come first. */
const rags: Caution = {
  title: 'The rags, now',
  lines: [
    'Rags, sponges and paper with linseed oil on them warm up by themselves and can catch fire hours later. Never leave them in a heap, a pocket or a bin.',
    'Lay them out flat, one layer, outdoors on something that does not burn, until they are stiff; or put them under water in a metal can with a lid.',
    'Then dispose of them as your local rules say.',
  ],
};

/** The cautions of the trade. Common practice, no source; local codes and licensed practice first. */
const all: readonly Caution[] = [
  { ...rags, title: 'Oily rags heat up by themselves' },
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

/** Common practice, no source; the paint maker’s sheet, local codes and licensed practice first. */
export const cautions = {
  link: 'Cautions',
  /** Always at the foot of every page. */
  short:
    'Oily rags can catch fire by themselves. All figures are estimates; the paint maker’s sheet and local rules come first.',
  /** The same in one short line, for the foot of the wall. */
  wall: 'Oily rags can catch fire by themselves. Figures are estimates.',
  /** After a coat, until someone has seen it. */
  ragsLine:
    'Oily rags from today? Out flat in one layer outdoors, or under water in a lidded metal can.',
  /** Shown after a coat was recorded. */
  rags,
  /** The page of cautions. */
  all,
};
