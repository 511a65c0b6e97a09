import type { Stage } from '../../daemon/contract/gate.ts';

/** Drying stages as they are written on a page. */
export const stageWords: Readonly<Record<Stage, string>> = {
  wet: 'wet',
  'set-to-touch': 'set to touch',
  'tack-free': 'tack-free',
  'dry-hard': 'dry hard',
  'dry-through': 'dry through',
};
