import type { FastifyInstance } from 'fastify';
import { handReadingReply, remarkReply } from '../../rules/fact-reply.ts';
import type { HandReadingFact, RemarkFact } from '../../rules/facts.ts';
import { checkFigures, checkPast, named, referred } from '../../rules/record-check.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** Moves, remarks and hand-meter figures: what the operator writes down beside coats and tests. */
export function entryRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  const batchOf = (id: string) => named(view.facts().batches, id, 'batch');

  register(app, 'listMoves', ({ params }) =>
    (view.facts().moves.get(batchOf(params.id).id) ?? []).map(view.move),
  );

  register(app, 'createMove', async ({ params, body }) => {
    const batch = batchOf(params.id);
    referred(view.facts().places, body.placeId, 'place', '/placeId');
    const at = Date.parse(body.at);
    checkPast(at, now(), '/at');
    const move = { id: body.id ?? newId(), batchId: batch.id, placeId: body.placeId, at };
    await edits.createMove(move, now());
    const lies = view.trade.lies(batch.id, now());
    return { ...view.move(move), warnings: view.trade.warningsAt(lies.placeId, now()) };
  });

  register(app, 'listRemarks', ({ params }) =>
    (view.facts().remarks.get(batchOf(params.id).id) ?? []).map(remarkReply),
  );

  register(app, 'createRemark', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const at = Date.parse(body.at);
    checkPast(at, now(), '/at');
    const remark: RemarkFact = {
      id: body.id ?? newId(),
      batchId: batch.id,
      at,
      kind: body.kind,
      text: body.text ?? null,
    };
    await edits.createRemark(remark, now());
    return remarkReply(remark);
  });

  register(app, 'listReadings', () => view.facts().handReadings.map(handReadingReply));

  register(app, 'createReading', async ({ body }) => {
    const { places, batches } = view.facts();
    if (body.placeId !== undefined) referred(places, body.placeId, 'place', '/placeId');
    if (body.batchId !== undefined) referred(batches, body.batchId, 'batch', '/batchId');
    const at = Date.parse(body.at);
    checkPast(at, now(), '/at');
    checkFigures(body.quantity, body.values);
    const reading: HandReadingFact = {
      id: body.id ?? newId(),
      placeId: body.placeId ?? null,
      batchId: body.batchId ?? null,
      quantity: body.quantity,
      values: body.values,
      at,
    };
    await edits.createHandReading(reading, now());
    return handReadingReply(reading);
  });
}
