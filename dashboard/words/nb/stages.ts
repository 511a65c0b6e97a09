import type { stages as English } from '../en/stages.ts';

export const stages: typeof English = {
  wet: 'våt',
  'set-to-touch': 'satt seg',
  'tack-free': 'klebefri',
  'dry-hard': 'hardtørr',
  'dry-through': 'gjennomtørr',
};
