import type { stages as English } from '../en/stages.ts';

export const stages: typeof English = {
  wet: 'märkä',
  'set-to-touch': 'asettunut',
  'tack-free': 'tahmaton',
  'dry-hard': 'kovakuiva',
  'dry-through': 'läpikuiva',
};
