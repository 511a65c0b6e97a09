import { z } from 'zod';
import { Coating, CoatingEnd, CoatingEnded, CoatingTick, NewCoating } from '../coating.ts';
import type { Route } from '../route.ts';
import { ById, OfBatch } from './params.ts';

export const coatingRoutes = {
  listCoatings: {
    method: 'GET',
    path: '/api/v1/batches/:id/coatings',
    summary: 'Coats on their way, with their steps, and those that were finished so',
    params: ById,
    status: 200,
    reply: z.array(Coating),
  },
  beginCoating: {
    method: 'POST',
    path: '/api/v1/batches/:id/coatings',
    summary: 'Begin a coat',
    params: ById,
    body: NewCoating,
    status: 201,
    reply: Coating,
  },
  tickCoating: {
    method: 'POST',
    path: '/api/v1/batches/:id/coatings/:part/steps',
    summary: 'Tick a step of a coat, or take the tick back',
    params: OfBatch,
    body: CoatingTick,
    status: 201,
    reply: Coating,
  },
  endCoating: {
    method: 'POST',
    path: '/api/v1/batches/:id/coatings/:part/end',
    summary: 'Finish a coat: it is recorded and cure counts from here; or give it up',
    params: OfBatch,
    body: CoatingEnd,
    status: 201,
    reply: CoatingEnded,
  },
} as const satisfies Record<string, Route>;
