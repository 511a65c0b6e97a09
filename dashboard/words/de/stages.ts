import type { stages as English } from '../en/stages.ts';

export const stages: typeof English = {
  wet: 'nass',
  'set-to-touch': 'angetrocknet',
  'tack-free': 'klebfrei',
  'dry-hard': 'harttrocken',
  'dry-through': 'durchgetrocknet',
};
