import type { FastifyInstance } from 'fastify';
import { RecordFilter, type SiteRecord } from '../../contract/record.ts';
import { csvLine } from '../../rules/csv-line.ts';
import { matchingRecords } from '../../rules/matching-records.ts';
import { siteRecords } from '../../rules/site-records.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

/** All that was recorded, as one list. */
export function recordRoutes(app: FastifyInstance, { view }: HttpParts): void {
  const matching = (filter: RecordFilter): SiteRecord[] =>
    matchingRecords(siteRecords(view.facts(), view.photos), filter);

  register(app, 'listRecords', ({ query: { offset, limit, ...filter } }) => {
    const all = matching(filter);
    return { total: all.length, offset, records: all.slice(offset, offset + limit) };
  });

  app.get<{ Querystring: RecordFilter }>(
    '/api/v1/records.csv',
    { schema: { hide: true, querystring: RecordFilter } },
    (request, reply) => {
      reply.header('content-disposition', 'attachment; filename="records.csv"');
      reply.type('text/csv; charset=utf-8');
      return [csvLine(head), ...matching(request.query).map((one) => csvLine(csvRow(one)))].join(
        '',
      );
    },
  );
}

const head = [
  ...['at', 'kind', 'batch', 'closed', 'place', 'coat', 'used (L)', 'colour', 'tin', 'felt for'],
  ...['passed', 'remark', 'text', 'quantity', 'values', 'boards', 'other batch', 'photo', 'id'],
];

const csvRow = (record: SiteRecord) => [
  ...[record.at, record.kind, record.batchName, record.batchClosed, record.placeName],
  ...[record.coatName, record.usedL, record.colour, record.tin, record.gate, record.passed],
  ...[record.remark, record.text, record.quantity, record.values.join(' ') || null],
  ...[record.boards, record.otherBatchName, record.address, record.id],
];
