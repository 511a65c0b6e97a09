import { RecordPage, RecordQuery } from '../record.ts';
import type { Route } from '../route.ts';

export const recordRoutes = {
  listRecords: {
    method: 'GET',
    path: '/api/v1/records',
    summary: 'All that was recorded of all batches, searched, filtered, sorted, a page at a time',
    query: RecordQuery,
    status: 200,
    reply: RecordPage,
  },
} as const satisfies Record<string, Route>;
