import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import type { PlanFact } from '../../rules/facts.ts';
import { newestOf, newestPlans, versionsOf } from '../../rules/plan-family.ts';
import { named } from '../../rules/record-check.ts';
import { sentence } from '../../wording/english.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

export function planRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  const planOf = (id: string) => named(view.facts().plans, id, 'coating-plan');

  register(app, 'listPlans', () => newestPlans(view.facts().plans.values()).map(view.trade.plan));

  register(app, 'listPlanVersions', ({ params }) =>
    versionsOf(planOf(params.id), view.facts().plans.values()).map(view.trade.plan),
  );

  register(app, 'createPlanVersion', async ({ params, body }) => {
    const base = planOf(params.id);
    const known = body.id === undefined ? undefined : view.facts().plans.get(body.id);
    const newest = newestOf(base, view.facts().plans.values());
    if (!known && newest.id !== base.id) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        sentence('plan-changed', { version: newest.version ?? 1 }),
      );
    }
    const plan: PlanFact = {
      id: body.id ?? newId(),
      name: body.name ?? base.name,
      surface: base.surface,
      coats: body.coats,
      isDefault: known?.isDefault ?? base.isDefault,
      createdAt: now(),
      familyId: base.familyId ?? base.id,
      version: known?.version ?? (base.version ?? 1) + 1,
      use: base.use ?? null,
    };
    await edits.createPlan(plan);
    return view.trade.plan(planOf(plan.id));
  });

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
    return view.trade.plan(planOf(plan.id));
  });
}
