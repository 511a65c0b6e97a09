import type { stages as English } from '../en/stages.ts';

export const stages: typeof English = {
  wet: 'våt',
  'set-to-touch': 'satt sig',
  'tack-free': 'klibbfri',
  'dry-hard': 'hårdtorr',
  'dry-through': 'genomtorr',
};
