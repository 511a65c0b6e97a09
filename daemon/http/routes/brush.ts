import type { FastifyInstance } from 'fastify';
import { checkPast, named } from '../../rules/record-check.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** Before the brush, and after it: fit to brush, and the lock-up list. */
export function brushRoutes(app: FastifyInstance, { view, edits, now, newId }: HttpParts): void {
  register(app, 'fitToBrush', ({ query }) => {
    const { places, batches } = view.facts();
    const place = named(places, query.placeId, 'place');
    const batch = query.batchId === undefined ? null : named(batches, query.batchId, 'batch');
    return view.fitToBrush(place, batch, now());
  });

  register(app, 'readLockUp', ({ query }) => view.lockUp(now(), query.day));

  register(app, 'tickLockUp', async ({ body }) => {
    const at = now();
    const { day } = view.lockUp(at);
    const ticked = body.day ?? day;
    checkPast(Date.parse(`${ticked}T00:00:00Z`), at + dayMs, '/day');
    await edits.tickLockUp(
      {
        id: body.id ?? newId(),
        day: ticked,
        line: body.line,
        done: body.done ?? true,
        at,
        by: body.by ?? null,
      },
      at,
    );
    return view.lockUp(now(), ticked);
  });
}

/** Somewhere it is tomorrow already. */
const dayMs = 86_400_000;
