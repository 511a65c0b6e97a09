import type { FastifyInstance } from 'fastify';
import type { BatchChange } from '../../contract/batch.ts';
import { BoardcureError } from '../../contract/problem.ts';
import type { BatchFact } from '../../rules/facts.ts';
import { checkPast, checkPlanFits, named, referred } from '../../rules/record-check.ts';
import { nothingSaidOfTimber, type TimberFact } from '../../rules/trade-facts.ts';
import { sentence } from '../../wording/english.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** Points of a batch’s chart when nobody asks for another number. */
const chartPoints = 600;

/** What is known of the timber once something more was said. */
function timberOf(said: BatchChange, known: TimberFact, now: number): TimberFact {
  const at = said.deliveredAt ? Date.parse(said.deliveredAt) : null;
  if (at !== null) checkPast(at, now, '/deliveredAt');
  return {
    stateBefore: said.stateBefore === undefined ? known.stateBefore : said.stateBefore,
    deliveredAt: said.deliveredAt === undefined ? known.deliveredAt : at,
    storedHow: said.storedHow === undefined ? known.storedHow : said.storedHow,
    support: said.support === undefined ? known.support : said.support,
    knots: said.knots === undefined ? known.knots : said.knots,
  };
}

export function batchRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  const batchOf = (id: string): BatchFact => named(view.facts().batches, id, 'batch');

  register(app, 'listBatches', () =>
    [...view.facts().batches.values()].map((batch) => view.summary(batch, now())),
  );

  register(app, 'readBatch', ({ params }) => view.batch(batchOf(params.id), now()));

  register(app, 'batchChart', ({ params, query }) =>
    view.chart(batchOf(params.id).id, query.points ?? chartPoints, now()),
  );

  register(app, 'createBatch', async ({ body }) => {
    const { places, plans } = view.facts();
    referred(places, body.placeId, 'place', '/placeId');
    // Sent again, it goes by the plan that was the usual one then.
    const before = body.id === undefined ? undefined : view.facts().batches.get(body.id);
    const plan =
      body.planId === undefined
        ? (plans.get(before?.planId ?? '') ??
          [...plans.values()].find((one) => one.isDefault && one.surface === body.surface))
        : referred(plans, body.planId, 'coating-plan', '/planId');
    if (!plan) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        sentence('no-default-plan', { surface: body.surface }),
        { pointer: '/planId' },
      );
    }
    const at = now();
    const batch: BatchFact = {
      id: body.id ?? newId(),
      name: body.name,
      species: body.species,
      surface: body.surface,
      boards: body.boards,
      planId: plan.id,
      createdAt: at,
      closedAt: null,
      timber: timberOf(body, nothingSaidOfTimber, at),
    };
    const firstMove = { id: newId(), batchId: batch.id, placeId: body.placeId, at: null };
    await edits.createBatch(batch, firstMove);
    return view.batch(batchOf(batch.id), now());
  });

  register(app, 'changeBatch', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const at = now();
    const closedAt =
      body.closed === undefined ? batch.closedAt : body.closed ? (batch.closedAt ?? at) : null;
    const merge = view.facts().merges.find((one) => one.mergedId === batch.id);
    if (body.closed === false && merge) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        sentence('boards-went-on', { batchName: batch.name }),
        { pointer: '/closed' },
      );
    }
    if (body.planId !== undefined) {
      const { plans, coats } = view.facts();
      const plan = referred(plans, body.planId, 'coating-plan', '/planId');
      checkPlanFits(plan, coats.get(batch.id) ?? []);
    }
    const timber = timberOf(body, batch.timber ?? nothingSaidOfTimber, at);
    const edit = { id: batch.id, name: body.name ?? batch.name, closedAt, timber };
    await edits.changeBatch(
      body.planId === undefined ? edit : { ...edit, planId: body.planId },
      at,
    );
    return view.batch(batchOf(params.id), now());
  });
}
