import type { FastifyInstance } from 'fastify';
import { planReply } from '../../rules/fact-reply.ts';
import type { PlanFact } from '../../rules/facts.ts';
import { named } from '../../rules/record-check.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

export function planRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  register(app, 'listPlans', () => [...view.facts().plans.values()].map(planReply));

  register(app, 'createPlan', async ({ body }) => {
    const plan: PlanFact = {
      id: body.id ?? newId(),
      name: body.name,
      surface: body.surface,
      coats: body.coats,
      isDefault: false,
      createdAt: now(),
    };
    await edits.createPlan(plan);
    return planReply(named(view.facts().plans, plan.id, 'coating plan'));
  });
}
