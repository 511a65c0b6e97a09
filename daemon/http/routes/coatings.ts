import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import type { BatchFact } from '../../rules/facts.ts';
import { checkPast, named, noSuchCoat, referred } from '../../rules/record-check.ts';
import type { CoatingFact } from '../../rules/trade-facts.ts';
import { sentence } from '../../wording/english.ts';
import { newCoat } from '../new-coat.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** A coat on its way, in steps. */
export function coatingRoutes(app: FastifyInstance, parts: HttpParts): void {
  const { view, edits, now, newId } = parts;
  const batchOf = (id: string): BatchFact => named(view.facts().batches, id, 'batch');
  const coatingsOf = (batchId: string) => view.facts().coatings.get(batchId) ?? [];

  function coatingOf(batchId: string, id: string): CoatingFact {
    const coating = coatingsOf(batchOf(batchId).id).find((one) => one.id === id);
    if (coating) return coating;
    throw new BoardcureError('BC_THING_UNKNOWN', sentence('no-such-coat/on-its-way', { id }));
  }

  register(app, 'listCoatings', ({ params }) =>
    coatingsOf(batchOf(params.id).id).map(view.trade.coating),
  );

  register(app, 'beginCoating', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const plan = named(view.facts().plans, batch.planId, 'coating-plan');
    const begunAt = Date.parse(body.begunAt);
    const known = coatingsOf(batch.id).find((one) => one.id === body.id);
    if (!known) {
      checkPast(begunAt, now(), '/begunAt');
      const open = coatingsOf(batch.id).find(
        (one) => one.coatId === null && one.givenUpAt === null,
      );
      if (open) {
        throw new BoardcureError(
          'BC_STATE_CONFLICT',
          sentence('coat-begun-already', { number: open.coat + 1 }),
          { pointer: '/coat' },
        );
      }
      if (body.coat >= plan.coats.length) {
        throw new BoardcureError('BC_STATE_CONFLICT', noSuchCoat(plan, body.coat), {
          pointer: '/coat',
        });
      }
      if ((view.facts().coats.get(batch.id) ?? []).some((one) => one.coat === body.coat)) {
        throw new BoardcureError(
          'BC_STATE_CONFLICT',
          sentence('coat-on-already', { number: body.coat + 1 }),
          { pointer: '/coat' },
        );
      }
      if (body.tinId) referred(view.facts().tins, body.tinId, 'tin', '/tinId');
    }
    const coating: CoatingFact = {
      ...{ id: body.id ?? newId(), batchId: batch.id, coat: body.coat, begunAt },
      ...{ tinId: body.tinId ?? null, coatId: null, givenUpAt: null },
    };
    await edits.beginCoating(coating, now());
    return view.trade.coating(coatingOf(batch.id, coating.id));
  });

  register(app, 'tickCoating', async ({ params, body }) => {
    const coating = coatingOf(params.id, params.part);
    const at = Date.parse(body.at);
    checkPast(at, now(), '/at');
    const tick = { coatingId: coating.id, step: body.step, at };
    await edits.tickCoating(tick, body.done ?? true, now());
    return view.trade.coating(coatingOf(params.id, params.part));
  });

  register(app, 'endCoating', async ({ params, body }) => {
    const coating = coatingOf(params.id, params.part);
    const batch = batchOf(params.id);
    const reply = () => view.trade.coating(coatingOf(params.id, params.part));
    const madeOf = (id: string | null) => {
      const coat = (view.facts().coats.get(batch.id) ?? []).find((one) => one.id === id);
      return coat ? view.coat(coat, now()) : null;
    };
    // Sent again after it was ended: what stands is the answer.
    if (coating.coatId !== null || coating.givenUpAt !== null) {
      if (body.coatId !== undefined && body.coatId !== coating.coatId) {
        throw new BoardcureError('BC_STATE_CONFLICT', sentence('coat-ended-already', {}));
      }
      return { ...reply(), made: madeOf(coating.coatId) };
    }
    if (body.finishedAt === null) {
      await edits.endCoating({ ...coating, givenUpAt: now() }, null, now(), null);
      return { ...reply(), made: null };
    }
    const { coat, caution } = newCoat(parts, batch, {
      ...(body.coatId === undefined ? {} : { id: body.coatId }),
      coat: coating.coat,
      begunAt: new Date(coating.begunAt).toISOString(),
      finishedAt: body.finishedAt,
      tinId: coating.tinId,
      usedL: body.usedL ?? null,
      faces: body.faces ?? null,
    });
    await edits.endCoating({ ...coating, coatId: coat.id }, coat, now(), caution);
    return { ...reply(), made: madeOf(coat.id) };
  });
}
