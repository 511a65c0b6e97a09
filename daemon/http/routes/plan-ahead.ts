import type { FastifyInstance } from 'fastify';
import type { PlanAhead } from '../../contract/plan-ahead.ts';
import { planCalendar } from '../plan-calendar.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** How long a plan for nobody in particular stands: phones and pages ask often. */
const freshMs = 5 * 60_000;

export function planAheadRoutes(
  app: FastifyInstance,
  { site, view, now, onChange, timeZone, voice, language }: HttpParts,
): void {
  let kept: { at: number; plan: PlanAhead } | null = null;
  // A batch that is named changed by hand; readings alone bend no plan within minutes.
  const stop = onChange((batchId) => {
    if (batchId !== null) kept = null;
  });
  app.addHook('onClose', async () => stop());
  const current = (at: number): PlanAhead => {
    if (kept === null || at < kept.at || at - kept.at > freshMs) {
      kept = { at, plan: view.planAhead(null, at) };
    }
    return kept.plan;
  };

  register(app, 'planAhead', ({ query }) => {
    const { boards, ...like } = query;
    return boards === undefined ? current(now()) : view.planAhead({ boards, ...like }, now());
  });

  app.get('/api/v1/plan-ahead.ics', { schema: { hide: true } }, (_request, reply) => {
    const { places } = view.facts();
    reply.type('text/calendar; charset=utf-8');
    return planCalendar(current(now()), {
      site,
      ...{ timeZone, voice, language },
      placeName: (placeId) => places.get(placeId)?.name ?? null,
    });
  });
}
