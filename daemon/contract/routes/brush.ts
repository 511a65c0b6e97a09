import { FitToBrush, FitToBrushQuery } from '../fit-to-brush.ts';
import { LockUp, LockUpQuery, NewLockUpTick } from '../lock-up.ts';
import type { Route } from '../route.ts';

export const brushRoutes = {
  fitToBrush: {
    method: 'GET',
    path: '/api/v1/fit-to-brush',
    summary: 'Whether a place and its boards are fit to be coated now, and until when',
    query: FitToBrushQuery,
    status: 200,
    reply: FitToBrush,
  },
  readLockUp: {
    method: 'GET',
    path: '/api/v1/lock-up',
    summary: 'What is to be seen to before the shed is left, and what the night does to wet boards',
    query: LockUpQuery,
    status: 200,
    reply: LockUp,
  },
  tickLockUp: {
    method: 'POST',
    path: '/api/v1/lock-up/ticks',
    summary: 'Tick a line of the lock-up list, or take a tick back',
    body: NewLockUpTick,
    status: 201,
    reply: LockUp,
  },
} as const satisfies Record<string, Route>;
