import { z } from 'zod';
import { MixtureQuery, MixtureReply, ShoppingList, ShoppingQuery } from '../mixture.ts';
import { NewPlan, NewPlanVersion, Plan } from '../plan.ts';
import type { Route } from '../route.ts';
import { ById } from './params.ts';

export const planRoutes = {
  listPlans: {
    method: 'GET',
    path: '/api/v1/plans',
    summary: 'All coating plans, each in its newest version',
    status: 200,
    reply: z.array(Plan),
  },
  createPlan: {
    method: 'POST',
    path: '/api/v1/plans',
    summary: 'Make a coating plan',
    body: NewPlan,
    status: 201,
    reply: Plan,
  },
  listPlanVersions: {
    method: 'GET',
    path: '/api/v1/plans/:id/versions',
    summary: 'All versions of a plan, the newest first',
    params: ById,
    status: 200,
    reply: z.array(Plan),
  },
  createPlanVersion: {
    method: 'POST',
    path: '/api/v1/plans/:id/versions',
    summary: 'Change a plan: batches and coats keep the version they have',
    params: ById,
    body: NewPlanVersion,
    status: 201,
    reply: Plan,
  },
  mixture: {
    method: 'GET',
    path: '/api/v1/mixture',
    summary: 'How much of what goes into the pot',
    query: MixtureQuery,
    status: 200,
    reply: MixtureReply,
  },
  shoppingList: {
    method: 'GET',
    path: '/api/v1/shopping-list',
    summary: 'What to buy for every coat that is still to come',
    query: ShoppingQuery,
    status: 200,
    reply: ShoppingList,
  },
} as const satisfies Record<string, Route>;
