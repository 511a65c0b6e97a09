import type { RecordFilter, SiteRecord } from '../contract/record.ts';

/**
 * The records that fit what was asked, in the order that was asked for; equal ones the newest first.
 *
 * @param records - in any order
 */
export function matchingRecords(
  records: readonly SiteRecord[],
  filter: RecordFilter,
): SiteRecord[] {
  const words = (filter.q ?? '')
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const from = filter.from === undefined ? Number.NEGATIVE_INFINITY : Date.parse(filter.from);
  const to = filter.to === undefined ? Number.POSITIVE_INFINITY : Date.parse(filter.to);
  const fits = (record: SiteRecord): boolean => {
    const at = Date.parse(record.at);
    if (at < from || at >= to) return false;
    if (filter.kind !== undefined && !filter.kind.includes(record.kind)) return false;
    if (filter.batch !== undefined && !isOfBatch(record, filter.batch)) return false;
    if (filter.place !== undefined && record.placeId !== filter.place) return false;
    if (filter.closed === 'without' && record.batchClosed) return false;
    if (filter.closed === 'only' && !record.batchClosed) return false;
    if (words.length === 0) return true;
    const text = searched(record);
    return words.every((word) => text.includes(word));
  };
  const sign = filter.order === 'up' ? 1 : -1;
  const key = keys[filter.sort];
  return records
    .filter(fits)
    .sort(
      (a, b) =>
        (filter.sort === 'at'
          ? sign * (Date.parse(a.at) - Date.parse(b.at))
          : sign * key(a).localeCompare(key(b), 'en') || Date.parse(b.at) - Date.parse(a.at)) ||
        a.id.localeCompare(b.id),
    );
}

const isOfBatch = ({ batchId, otherBatchId }: SiteRecord, batch: string): boolean =>
  batchId === batch || otherBatchId === batch;

const keys: Readonly<Record<RecordFilter['sort'], (record: SiteRecord) => string>> = {
  at: ({ at }) => at,
  batch: ({ batchName }) => batchName ?? '',
  kind: ({ kind }) => kind,
  place: ({ placeName }) => placeName ?? '',
};

/** What a word is looked for in: whatever people wrote, and the words of the records themselves. */
function searched(record: SiteRecord): string {
  const { batchName, placeName, coatName, colour, tin, text, otherBatchName } = record;
  const { kind, gate, remark, quantity } = record;
  return [batchName, placeName, coatName, colour, tin, text, otherBatchName]
    .concat(kind, gate, remark, quantity)
    .filter((one) => one !== null)
    .join('\n')
    .toLowerCase();
}
