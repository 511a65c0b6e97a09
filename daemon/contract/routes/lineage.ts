import { Move } from '../batch.ts';
import { MergeReply, NewMerge, NewSplit, SplitReply } from '../lineage.ts';
import { MountingTick } from '../mounting.ts';
import type { Route } from '../route.ts';
import { ById, OfBatch } from './params.ts';

export const lineageRoutes = {
  splitBatch: {
    method: 'POST',
    path: '/api/v1/batches/:id/splits',
    summary: 'Record that some of the boards went their own way: they become a batch of their own',
    params: ById,
    body: NewSplit,
    status: 201,
    reply: SplitReply,
  },
  mergeBatch: {
    method: 'POST',
    path: '/api/v1/batches/:id/merges',
    summary: 'Put the boards of another batch of the same timber, plan and coats to this one',
    params: ById,
    body: NewMerge,
    status: 201,
    reply: MergeReply,
  },
  tickMounting: {
    method: 'POST',
    path: '/api/v1/batches/:id/moves/:part/ticks',
    summary: 'Tick a line of what is done on the day boards go up',
    params: OfBatch,
    body: MountingTick,
    status: 201,
    reply: Move,
  },
} as const satisfies Record<string, Route>;
