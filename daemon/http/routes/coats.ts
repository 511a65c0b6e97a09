import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import type { BatchFact, CoatFact, TouchTestFact } from '../../rules/facts.ts';
import { gateChanges } from '../../rules/gate-change.ts';
import { checkPast, coatFelt, named } from '../../rules/record-check.ts';
import { sentence } from '../../wording/english.ts';
import { newCoat } from '../new-coat.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

export function coatRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  const batchOf = (id: string): BatchFact => named(view.facts().batches, id, 'batch');
  const coatsOf = (batchId: string) => view.facts().coats.get(batchId) ?? [];

  register(app, 'listCoats', ({ params }) =>
    coatsOf(batchOf(params.id).id).map((coat) => view.coat(coat, now())),
  );

  register(app, 'createCoat', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const { coat, caution } = newCoat({ view, now, newId }, batch, body);
    await edits.createCoat(coat, now(), caution);
    const lies = view.trade.lies(batch.id, now());
    return { ...view.coat(coatWithId(coatsOf(batch.id), coat.id), now()), lies };
  });

  register(app, 'removeCoat', async ({ params }) => {
    const batch = batchOf(params.id);
    const coat = coatWithId(coatsOf(batch.id), params.part);
    const { batches } = view.facts();
    const origin = coat.originId === undefined ? undefined : batches.get(coat.originId);
    if (origin && origin.id !== batch.id) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        sentence('coat-of-origin', { batchName: origin.name }),
      );
    }
    await edits.removeCoat(coat, now());
    return view.batch(batch, now());
  });

  register(app, 'listTests', ({ params }) => view.batch(batchOf(params.id), now()).tests);

  register(app, 'createTest', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const at = Date.parse(body.at);
    checkPast(at, now(), '/at');
    const felt = coatFelt(coatsOf(batch.id), at);
    const before = view.coat(felt, now());
    const test: TouchTestFact = {
      id: body.id ?? newId(),
      batchId: batch.id,
      coatId: felt.id,
      at,
      gate: body.gate,
      passed: body.passed,
      on: body.on ?? 'board',
      learnedBy: body.learnedBy ?? 'touch',
    };
    await edits.createTest(test, now());
    const after = view.coat(coatWithId(coatsOf(batch.id), felt.id), now());
    return {
      ...view.touchTest(test),
      changed: gateChanges(before.gates, after.gates),
      lies: view.trade.lies(batch.id, at),
    };
  });
}

function coatWithId(coats: readonly CoatFact[], id: string): CoatFact {
  const coat = coats.find((one) => one.id === id);
  if (coat) return coat;
  throw new BoardcureError('BC_THING_UNKNOWN', sentence('no-such-coat/in-batch', { id }));
}
