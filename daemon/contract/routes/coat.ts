import { z } from 'zod';
import { Batch, Lies, NewRemark, Remark } from '../batch.ts';
import { Coat, GateChange, NewCoat, NewTouchTest, TouchTest } from '../coat.ts';
import type { Route } from '../route.ts';
import { ById, OfBatch } from './params.ts';

export const coatRoutes = {
  listCoats: {
    method: 'GET',
    path: '/api/v1/batches/:id/coats',
    summary: 'The coats of a batch',
    params: ById,
    status: 200,
    reply: z.array(Coat),
  },
  createCoat: {
    method: 'POST',
    path: '/api/v1/batches/:id/coats',
    summary: 'Record a coat',
    params: ById,
    body: NewCoat,
    status: 201,
    reply: Coat.extend({ lies: Lies }),
  },
  removeCoat: {
    method: 'DELETE',
    path: '/api/v1/batches/:id/coats/:part',
    summary: 'Take back a coat that was recorded by mistake (it is kept, marked as taken back)',
    params: OfBatch,
    status: 200,
    reply: Batch,
  },
  listTests: {
    method: 'GET',
    path: '/api/v1/batches/:id/tests',
    summary: 'The touch tests of a batch',
    params: ById,
    status: 200,
    reply: z.array(TouchTest),
  },
  createTest: {
    method: 'POST',
    path: '/api/v1/batches/:id/tests',
    summary: 'Record a touch test',
    params: ById,
    body: NewTouchTest,
    status: 201,
    reply: TouchTest.extend({ changed: z.array(GateChange), lies: Lies }),
  },
  listRemarks: {
    method: 'GET',
    path: '/api/v1/batches/:id/remarks',
    summary: 'What was seen on a batch',
    params: ById,
    status: 200,
    reply: z.array(Remark),
  },
  createRemark: {
    method: 'POST',
    path: '/api/v1/batches/:id/remarks',
    summary: 'Record what was seen',
    params: ById,
    body: NewRemark,
    status: 201,
    reply: Remark,
  },
} as const satisfies Record<string, Route>;
