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
};
