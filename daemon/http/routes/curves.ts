import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import { named } from '../../rules/record-check.ts';
import { sentence } from '../../wording/english.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';
import { sensorById } from '../sensor-by-id.ts';

/** Stretches of a curve when nobody asks for another number. */
const usualPoints = 600;

/** Curves on one grid of time, and what is to come. */
export function curveRoutes(app: FastifyInstance, { view, now }: HttpParts): void {
  register(app, 'placeCurves', ({ params, query }) =>
    view.curves.ofPlace(named(view.facts().places, params.id, 'place').id, spanOf(query), now()),
  );

  register(app, 'sensorCurves', ({ params, query }) =>
    view.curves.ofSensor(sensorById(view.facts().sensors, params.id).key, spanOf(query), now()),
  );

  register(app, 'batchCurves', ({ params, query }) => {
    const batch = named(view.facts().batches, params.id, 'batch');
    const coats = view.facts().coats.get(batch.id) ?? [];
    const coat =
      query.coatId === undefined ? coats.at(-1) : coats.find(({ id }) => id === query.coatId);
    if (query.coatId !== undefined && !coat) {
      throw new BoardcureError(
        'BC_REFERENCE_UNKNOWN',
        sentence('batch-without-coat', { batchName: batch.name }),
        {
          pointer: '/coatId',
        },
      );
    }
    return view.curves.ofBatch(batch.id, coat ?? null, spanOf(query), now());
  });

  register(app, 'airChanges', ({ params, query }) =>
    view.curves.airChanges(named(view.facts().places, params.id, 'place').id, spanOf(query), now()),
  );

  function spanOf(query: {
    from?: string | undefined;
    to?: string | undefined;
    points?: number | undefined;
  }) {
    const at = (moment: string | undefined) => (moment === undefined ? null : Date.parse(moment));
    const [from, to] = [at(query.from), at(query.to)];
    if (from !== null && from > (to ?? now())) {
      throw new BoardcureError('BC_REQUEST_INVALID', sentence('end-before-start', {}), {
        pointer: to === null ? '/from' : '/to',
      });
    }
    return { from, to, points: query.points ?? usualPoints };
  }
}
