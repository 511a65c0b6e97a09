import { z } from 'zod';
import type { Route } from '../route.ts';
import { NewTin, Tin, TinChange } from '../tin.ts';
import { ById } from './params.ts';

export const tinRoutes = {
  listTins: {
    method: 'GET',
    path: '/api/v1/tins',
    summary: 'All tins of paint, oil and turpentine',
    status: 200,
    reply: z.array(Tin),
  },
  createTin: {
    method: 'POST',
    path: '/api/v1/tins',
    summary: 'Enter a tin, once',
    body: NewTin,
    status: 201,
    reply: Tin,
  },
  changeTin: {
    method: 'PATCH',
    path: '/api/v1/tins/:id',
    summary: 'Correct a tin, say when it was opened, or that it is empty',
    params: ById,
    body: TinChange,
    status: 200,
    reply: Tin,
  },
} as const satisfies Record<string, Route>;
