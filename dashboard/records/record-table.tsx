import type { SiteRecord } from '../../daemon/contract/record.ts';
import { useReader } from '../reader.ts';
import { batchAddress } from '../router.ts';
import { recordLine } from './record-line.ts';
import { type Asked, addressWith, type Sort } from './record-query.ts';

interface RecordTableProps {
  asked: Asked;
  records: readonly SiteRecord[];
}

const sortable: readonly Sort[] = ['at', 'kind', 'batch', 'place'];

/** The records, a row each; on a phone a row is a few lines. */
export function RecordTable({ asked, records }: RecordTableProps) {
  const reader = useReader();
  const { words, calendar } = reader;
  const { records: said } = words;
  const { columns } = said;
  return (
    <table class="figures figures-wide stacked record-table">
      <thead>
        <tr>
          {sortable.map((column) => (
            <SortHead key={column} column={column} asked={asked} label={columns[column]} />
          ))}
          <th scope="col">{columns.said}</th>
        </tr>
      </thead>
      <tbody>
        {records.map((record) => (
          <tr key={`${record.kind} ${record.id}`}>
            <td>
              <time dateTime={record.at}>{calendar.exact(Date.parse(record.at))}</time>
            </td>
            <td>{said.one[record.kind]}</td>
            <td>
              {record.batchId !== null && (
                <a href={batchAddress(record.batchId)}>{record.batchName}</a>
              )}
              {record.batchClosed && <small class="quiet"> {said.finishedMark}</small>}
            </td>
            <td>{record.placeName}</td>
            <td>
              {recordLine(record, reader)}
              {record.automatic && <small class="quiet"> {said.byItself}</small>}
              {record.address !== null && <a href={record.address}> {said.seePhoto}</a>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function SortHead({ column, asked, label }: { column: Sort; asked: Asked; label: string }) {
  const { records: said } = useReader().words;
  const isSorted = (asked.sort || 'at') === column;
  const isUp = asked.order === 'up';
  const order = isSorted && !isUp ? 'up' : 'down';
  const direction = isUp ? 'ascending' : 'descending';
  return (
    <th scope="col" {...(isSorted ? { 'aria-sort': direction } : {})}>
      <a href={addressWith(asked, { sort: column, order })} aria-label={said.sortBy(label)}>
        {label}
        {isSorted && <span aria-hidden="true">{isUp ? ' ↑' : ' ↓'}</span>}
      </a>
    </th>
  );
}
