import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import { boardsAt } from '../../rules/batch-lineage.ts';
import type { BatchFact } from '../../rules/facts.ts';
import { checkMerge, checkSplit } from '../../rules/merge-check.ts';
import { checkPast, named, referred } from '../../rules/record-check.ts';
import { sentence } from '../../wording/english.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** Boards that part ways or come together, and what is ticked when they go up. */
export function lineageRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  const batchOf = (id: string): BatchFact => named(view.facts().batches, id, 'batch');
  const coatsOf = (id: string) => view.facts().coats.get(id) ?? [];

  /** Boards there at a moment, and after everything that was split off later. */
  function boardsLeft(batch: BatchFact, at: number): number[] {
    const { begun, splits, merges } = view.facts();
    const recorded = { batches: begun, splits, merges };
    const asBegun = begun.find((one) => one.id === batch.id) ?? batch;
    const later = splits.filter((one) => one.batchId === batch.id && one.at >= at);
    return [at, ...later.map((one) => one.at)].map((time) => boardsAt(asBegun, time + 1, recorded));
  }

  register(app, 'splitBatch', async ({ params, body }) => {
    const parent = batchOf(params.id);
    const at = Date.parse(body.at);
    const known = view.facts().splits.find((one) => one.id === body.id);
    if (!known) {
      if (parent.closedAt !== null) {
        throw new BoardcureError(
          'BC_STATE_CONFLICT',
          sentence('batch-closed', { batchName: parent.name }),
        );
      }
      checkPast(at, now(), '/at');
      checkSplit(body.boards, boardsLeft(parent, at), parent.name);
      if (body.placeId !== undefined) {
        referred(view.facts().places, body.placeId, 'place', '/placeId');
      }
    }
    const childId = known?.childId ?? body.childId ?? newId();
    const split = {
      ...{ id: body.id ?? newId(), batchId: parent.id, childId },
      ...{ boards: body.boards, at },
    };
    const child: BatchFact = {
      ...parent,
      id: childId,
      name: body.name ?? `${parent.name}, ${body.boards} boards`,
      boards: { ...parent.boards, count: body.boards },
      createdAt: now(),
    };
    const move =
      body.placeId === undefined
        ? null
        : { id: newId(), batchId: childId, placeId: body.placeId, at };
    await edits.createSplit(split, child, move, now());
    const made = view.batch(batchOf(childId), now());
    return {
      id: split.id,
      at: new Date(at).toISOString(),
      parent: view.batch(batchOf(parent.id), now()),
      child: made,
      warnings: view.trade.warningsAt(made.placeId, now()),
    };
  });

  register(app, 'mergeBatch', async ({ params, body }) => {
    const into = batchOf(params.id);
    const from = referred(view.facts().batches, body.batchId, 'batch', '/batchId');
    const at = Date.parse(body.at);
    if (!view.facts().merges.some((one) => one.id === body.id)) {
      checkPast(at, now(), '/at');
      checkMerge(
        { batch: into, coats: coatsOf(into.id) },
        { batch: from, coats: coatsOf(from.id) },
        at,
      );
    }
    const merge = { id: body.id ?? newId(), batchId: into.id, mergedId: from.id, at };
    await edits.createMerge(merge, now());
    const batch = view.batch(batchOf(into.id), now());
    return {
      id: merge.id,
      at: new Date(at).toISOString(),
      batch,
      warnings: view.trade.warningsAt(batch.placeId, now()),
    };
  });

  register(app, 'tickMounting', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const move = (view.facts().moves.get(batch.id) ?? []).find((one) => one.id === params.part);
    if (!move) {
      throw new BoardcureError(
        'BC_THING_UNKNOWN',
        sentence('no-move-in-batch', { id: params.part }),
      );
    }
    if (view.facts().places.get(move.placeId)?.kind !== 'wall') {
      throw new BoardcureError('BC_STATE_CONFLICT', sentence('move-not-to-wall', {}));
    }
    const at = Date.parse(body.at);
    checkPast(at, now(), '/at');
    await edits.tickMounting({ moveId: move.id, line: body.line, at }, body.done ?? true, now());
    return view.move(move);
  });
}
