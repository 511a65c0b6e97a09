import { z } from 'zod';
import { HandReading, NewHandReading } from '../batch.ts';
import { Refused } from '../health.ts';
import type { Route } from '../route.ts';
import { Series, SeriesQuery } from '../series.ts';

export const readingRoutes = {
  createReading: {
    method: 'POST',
    path: '/api/v1/readings',
    summary: 'Record what a hand meter showed',
    body: NewHandReading,
    status: 201,
    reply: HandReading,
  },
  listReadings: {
    method: 'GET',
    path: '/api/v1/readings',
    summary: 'What hand meters showed',
    status: 200,
    reply: z.array(HandReading),
  },
  series: {
    method: 'GET',
    path: '/api/v1/series',
    summary: 'The readings of one sensor and quantity as columns',
    query: SeriesQuery,
    status: 200,
    reply: Series,
  },
  listRefused: {
    method: 'GET',
    path: '/api/v1/refused',
    summary: 'The last messages that could not be taken as readings, with the reason',
    status: 200,
    reply: z.array(Refused),
  },
} as const satisfies Record<string, Route>;
