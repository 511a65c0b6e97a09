import { useCallback, useEffect } from 'preact/hooks';
import type { RecordQuery } from '../../daemon/contract/record.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { RecordFilters } from './record-filters.tsx';
import { type Asked, addressWith, askedOf, PAGE_SIZE, queryOf } from './record-query.ts';
import { RecordTable } from './record-table.tsx';

/** Everything that was recorded of all batches, to search, filter, sort and take away. */
export function RecordsPage({ given }: { given: URLSearchParams }) {
  const { records: said } = useReader().words;
  return (
    <main class="page page-wide records">
      <h1>{said.title}</h1>
      <Records asked={askedOf(given)} />
    </main>
  );
}

function Records({ asked }: { asked: Asked }) {
  const { api, live } = useShed();
  const { words, figures } = useReader();
  const { records: said } = words;
  const query = JSON.stringify(queryOf(asked));
  const offset = (asked.page - 1) * PAGE_SIZE;
  const list = useReply(
    useCallback(() => {
      const filter = JSON.parse(query) as Omit<Partial<RecordQuery>, 'kind'> & { kind?: string };
      return api.call('listRecords', { query: { ...filter, offset, limit: PAGE_SIZE } });
    }, [api, query, offset]),
  );
  const batches = useReply(useCallback(() => api.call('listBatches', {}), [api]));
  const overview = live.overview.value;
  useEffect(list.again, [overview]);
  const { replied } = list;
  const page = replied.kind === 'there' ? replied.reply : null;
  const last = page === null ? 0 : page.offset + page.records.length;
  return (
    <div class="records-columns">
      <RecordFilters
        key={JSON.stringify(asked)}
        asked={asked}
        batches={batches.replied.kind === 'there' ? batches.replied.reply : []}
      />
      <section aria-label={said.title}>
        {replied.kind === 'failed' && <ProblemNote problem={replied.problem} />}
        <p class="records-found" role="status">
          {page !== null && page.total > 0 && said.found(page.total)}
          {page?.total === 0 && (query === '{}' ? said.nothingYet : said.none)}
        </p>
        {page !== null && page.records.length > 0 && (
          <RecordTable asked={asked} records={page.records} />
        )}
        {page !== null && page.total > PAGE_SIZE && (
          <nav class="action-row records-pages" aria-label={said.pages}>
            <span>
              {said.page(
                figures.number(Math.min(page.offset + 1, page.total)),
                figures.number(last),
                figures.number(page.total),
              )}
            </span>
            {asked.page > 1 && (
              <a class="button" href={addressWith(asked, { page: asked.page - 1 })}>
                {said.earlier}
              </a>
            )}
            {last < page.total && (
              <a class="button" href={addressWith(asked, { page: asked.page + 1 })}>
                {said.further}
              </a>
            )}
          </nav>
        )}
        {page !== null && page.total > 0 && (
          <p>
            <a href={`/api/v1/records.csv?${new URLSearchParams(queryOf(asked))}`} download>
              {said.csv}
            </a>
          </p>
        )}
      </section>
    </div>
  );
}
