import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import type { BatchFact } from '../../rules/facts.ts';
import { named, referred } from '../../rules/record-check.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** Points of a batch’s chart when nobody asks for another number. */
const chartPoints = 600;

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
    const plan =
      body.planId === undefined
        ? [...plans.values()].find((one) => one.isDefault && one.surface === body.surface)
        : referred(plans, body.planId, 'coating plan', '/planId');
    if (!plan) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        `There is no default plan for ${body.surface} boards: give planId.`,
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
    await edits.changeBatch({ id: batch.id, name: body.name ?? batch.name, closedAt }, at);
    return view.batch(batchOf(params.id), now());
  });
}
