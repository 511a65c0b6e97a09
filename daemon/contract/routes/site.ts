import { Health } from '../health.ts';
import { Overview } from '../overview.ts';
import type { Route } from '../route.ts';

export const siteRoutes = {
  health: {
    method: 'GET',
    path: '/healthz',
    summary: 'Whether the daemon works, and if not, why',
    role: 'anyone',
    status: 200,
    reply: Health,
  },
  overview: {
    method: 'GET',
    path: '/api/v1/overview',
    summary: 'Every place with its air, its batches and their verdicts',
    status: 200,
    reply: Overview,
  },
} as const satisfies Record<string, Route>;
