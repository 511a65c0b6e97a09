import type { Stage } from '../../../daemon/contract/gate.ts';

/** Drying stages as they are written on a page. */
export const stages = {
  wet: 'wet',
  'set-to-touch': 'set to touch',
  'tack-free': 'tack-free',
  'dry-hard': 'dry hard',
  'dry-through': 'dry through',
} satisfies Record<Stage, string>;
