import { PlanAhead, PlanAheadQuery } from '../plan-ahead.ts';
import type { Route } from '../route.ts';

export const planAheadRoutes = {
  planAhead: {
    method: 'GET',
    path: '/api/v1/plan-ahead',
    summary: 'What is to be done when, with early, likely and late; by a link also as a calendar',
    query: PlanAheadQuery,
    status: 200,
    reply: PlanAhead,
  },
} as const satisfies Record<string, Route>;
