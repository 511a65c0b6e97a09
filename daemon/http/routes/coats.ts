import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import type { BatchFact, CoatFact, TouchTestFact } from '../../rules/facts.ts';
import { ragsText } from '../../rules/notice.ts';
import { litresUsed } from '../../rules/pot.ts';
import { checkCoat, checkPast, coatFelt, named } from '../../rules/record-check.ts';
import type { HttpParts } from '../ports.ts';
import { possible } from '../possible.ts';
import { register } from '../register-route.ts';

const momentOrNull = (text: string | null | undefined) => (text ? Date.parse(text) : null);

export function coatRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  const batchOf = (id: string): BatchFact => named(view.facts().batches, id, 'batch');
  const coatsOf = (batchId: string) => view.facts().coats.get(batchId) ?? [];

  register(app, 'listCoats', ({ params }) =>
    coatsOf(batchOf(params.id).id).map((coat) => view.coat(coat, now())),
  );

  register(app, 'createCoat', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const plan = named(view.facts().plans, batch.planId, 'coating plan');
    const at = now();
    const finishedAt = Date.parse(body.finishedAt);
    const id = body.id ?? newId();
    const begunAt = momentOrNull(body.begunAt);
    checkPast(finishedAt, at, '/finishedAt');
    checkCoat({ id, coat: body.coat, begunAt, finishedAt }, plan, coatsOf(batch.id));
    const { pots } = body;
    const usedL = pots ? possible(() => litresUsed(pots)) : null;
    const planned = plan.coats[body.coat];
    if (!planned) throw new Error(`The plan ${plan.id} lost coat ${body.coat}.`);
    const coat: CoatFact = {
      id,
      batchId: batch.id,
      coat: body.coat,
      begunAt,
      finishedAt,
      mixture: planned.mixture,
      faces: body.faces ?? planned.faces,
      usedL: body.usedL ?? usedL,
      colour: body.colour ?? null,
      tin: body.tin ?? null,
    };
    await edits.createCoat(coat, at, {
      id: newId(),
      kind: 'rags',
      subject: batch.id,
      text: ragsText,
      raisedAt: at,
      seenAt: null,
      clearedAt: null,
    });
    return view.coat(coatWithId(coatsOf(batch.id), coat.id), now());
  });

  register(app, 'removeCoat', async ({ params }) => {
    const batch = batchOf(params.id);
    const coat = coatWithId(coatsOf(batch.id), params.part);
    await edits.removeCoat(coat, now());
    return view.batch(batch, now());
  });

  register(app, 'listTests', ({ params }) => view.batch(batchOf(params.id), now()).tests);

  register(app, 'createTest', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const at = Date.parse(body.at);
    checkPast(at, now(), '/at');
    const test: TouchTestFact = {
      id: body.id ?? newId(),
      batchId: batch.id,
      coatId: coatFelt(coatsOf(batch.id), at).id,
      at,
      gate: body.gate,
      passed: body.passed,
      on: body.on ?? 'board',
    };
    await edits.createTest(test, now());
    return view.touchTest(test);
  });
}

function coatWithId(coats: readonly CoatFact[], id: string): CoatFact {
  const coat = coats.find((one) => one.id === id);
  if (coat) return coat;
  throw new BoardcureError('BC_THING_UNKNOWN', `This batch has no coat with the id ${id}.`);
}
