import type { FastifyInstance } from 'fastify';
import { toMoment } from '../../contract/moment.ts';
import type { Photo } from '../../contract/photo.ts';
import { BoardcureError } from '../../contract/problem.ts';
import { type PhotoFact, pictureType } from '../../rules/photo.ts';
import { checkPast, named } from '../../rules/record-check.ts';
import { sentence } from '../../wording/english.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';
import { reportCsv } from '../report-csv.ts';

/** Reports, the season, what would help, and the photos that go with them. */
export function reportRoutes(
  app: FastifyInstance,
  { site, view, edits, now, newId }: HttpParts,
): void {
  const batchOf = (id: string) => named(view.facts().batches, id, 'batch');
  const photosOf = (batchId: string) => view.photos(batchId).map(photoReply);
  const reportOf = (id: string) => {
    const batch = batchOf(id);
    return { ...view.report(batch, now()), site, photos: photosOf(batch.id) };
  };

  register(app, 'whatHelps', ({ params }) => view.whatHelps(batchOf(params.id), now()));
  register(app, 'batchReport', ({ params }) => reportOf(params.id));
  register(app, 'season', ({ query }) => {
    const at = (moment: string | undefined) => (moment === undefined ? null : Date.parse(moment));
    return view.season(at(query.from), at(query.to), now());
  });

  app.get<{ Params: { id: string } }>(
    '/api/v1/batches/:id/report.csv',
    { schema: { hide: true } },
    (request, reply) => {
      const report = reportOf(request.params.id);
      reply.header('content-disposition', 'attachment; filename="batch-report.csv"');
      reply.type('text/csv; charset=utf-8');
      return reportCsv(report);
    },
  );

  register(app, 'listPhotos', ({ params }) => photosOf(batchOf(params.id).id));

  register(app, 'createPhoto', async ({ params, body }) => {
    const batch = batchOf(params.id);
    const at = Date.parse(body.at);
    checkPast(at, now(), '/at');
    const picture = Buffer.from(body.picture, 'base64');
    const type = pictureType(picture);
    if (type === null) {
      throw new BoardcureError('BC_REQUEST_INVALID', sentence('no-picture', {}), {
        pointer: '/picture',
      });
    }
    const photo = { id: body.id ?? newId(), batchId: batch.id, at, text: body.text ?? null, type };
    await edits.addPhoto(photo, picture, now());
    return photoReply({ ...photo, bytes: picture.length });
  });

  register(app, 'removePhoto', async ({ params }) => {
    const batch = batchOf(params.id);
    if (!view.photos(batch.id).some((photo) => photo.id === params.part)) {
      throw new BoardcureError(
        'BC_THING_UNKNOWN',
        sentence('no-photo-in-batch', { id: params.part }),
      );
    }
    await edits.removePhoto(params.part, now());
    return photosOf(batch.id);
  });

  app.get<{ Params: { id: string } }>(
    '/api/v1/photos/:id',
    { schema: { hide: true } },
    (request, reply) => {
      const photo = view.photo(request.params.id);
      if (photo === null) {
        throw new BoardcureError('BC_THING_UNKNOWN', sentence('no-photo', {}));
      }
      // A picture never changes under its id.
      reply.header('cache-control', 'private, max-age=31536000, immutable');
      reply.type(photo.type);
      return reply.send(Buffer.from(photo.picture));
    },
  );
}

function photoReply({ id, at, text, type, bytes }: PhotoFact): Photo {
  return { id, at: toMoment(at), text, type, bytes, address: `/api/v1/photos/${id}` };
}
