import { z } from 'zod';
import { Batch, BatchChange, BatchSummary, Move, Moved, NewBatch, NewMove } from '../batch.ts';
import type { Route } from '../route.ts';
import { BatchChart, BatchChartQuery } from '../series.ts';
import { ById } from './params.ts';

export const batchRoutes = {
  listBatches: {
    method: 'GET',
    path: '/api/v1/batches',
    summary: 'All batches',
    status: 200,
    reply: z.array(BatchSummary),
  },
  createBatch: {
    method: 'POST',
    path: '/api/v1/batches',
    summary: 'Start a batch',
    body: NewBatch,
    status: 201,
    reply: Batch,
  },
  readBatch: {
    method: 'GET',
    path: '/api/v1/batches/:id',
    summary: 'One batch: coats with exact sums, stages and verdicts, and all that was recorded',
    params: ById,
    status: 200,
    reply: Batch,
  },
  changeBatch: {
    method: 'PATCH',
    path: '/api/v1/batches/:id',
    summary: 'Rename a batch, close it, say more of its timber, or move it on to another plan',
    params: ById,
    body: BatchChange,
    status: 200,
    reply: Batch,
  },
  batchChart: {
    method: 'GET',
    path: '/api/v1/batches/:id/chart',
    summary: 'Temperature, humidity and degree-hours of the coat that cures',
    params: ById,
    query: BatchChartQuery,
    status: 200,
    reply: BatchChart,
  },
  listMoves: {
    method: 'GET',
    path: '/api/v1/batches/:id/moves',
    summary: 'Where a batch has lain',
    params: ById,
    status: 200,
    reply: z.array(Move),
  },
  createMove: {
    method: 'POST',
    path: '/api/v1/batches/:id/moves',
    summary: 'Record that a batch was moved',
    params: ById,
    body: NewMove,
    status: 201,
    reply: Moved,
  },
} as const satisfies Record<string, Route>;
