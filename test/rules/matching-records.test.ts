import { describe, expect, it } from 'vitest';
import { RecordFilter, RecordQuery, type SiteRecord } from '../../daemon/contract/record.ts';
import { matchingRecords } from '../../daemon/rules/matching-records.ts';

const record = (id: number, at: string, changes: Partial<SiteRecord>): SiteRecord => ({
  id: `0190a000-0000-7000-8000-00000000000${id}`,
  ...{ kind: 'coat', at, batchId: null, batchName: null, batchClosed: false },
  ...{ placeId: null, placeName: null, coat: null, coatName: null, usedL: null, colour: null },
  ...{ tin: null, gate: null, passed: null, remark: null, automatic: false, text: null },
  ...{ quantity: null, values: [], boards: null, otherBatchId: null, otherBatchName: null },
  address: null,
  ...changes,
});

const south = { batchId: '0190a000-0000-7000-8000-0000000000a1', batchName: 'South gable' };
const north = { batchId: '0190a000-0000-7000-8000-0000000000a2', batchName: 'North gable' };
const records = [
  record(1, '2026-05-01T08:00:00Z', { ...south, coatName: 'Primer', colour: 'Red ochre' }),
  record(2, '2026-05-03T08:00:00Z', { ...north, kind: 'test', gate: 'recoat', passed: false }),
  record(3, '2026-05-02T08:00:00Z', {
    ...south,
    kind: 'remark',
    remark: 'runs',
    text: 'Lower end',
  }),
  record(4, '2026-05-02T08:00:00Z', {
    ...{ kind: 'split', ...north, batchClosed: true },
    ...{ otherBatchId: south.batchId, otherBatchName: south.batchName },
  }),
];

const found = (asked: object): number[] =>
  matchingRecords(records, RecordFilter.parse(asked)).map(({ id }) => Number(id.at(-1)));

describe('the list of all records', () => {
  it('is the newest first, and turned round or by name when asked', () => {
    expect(found({})).toEqual([2, 3, 4, 1]);
    expect(found({ order: 'up' })).toEqual([1, 3, 4, 2]);
    expect(found({ sort: 'batch', order: 'up' })).toEqual([2, 4, 3, 1]);
    expect(found({ sort: 'kind', order: 'down' })).toEqual([2, 4, 3, 1]);
  });

  it('is searched for words in any order and any case, all of which must stand there', () => {
    expect(found({ q: 'RED south' })).toEqual([1]);
    expect(found({ q: 'lower' })).toEqual([3]);
    expect(found({ q: 'gable' })).toEqual([2, 3, 4, 1]);
    expect(found({ q: 'red north' })).toEqual([]);
  });

  it('is filtered by kind, batch, time and whether the batch is closed', () => {
    expect(found({ kind: 'coat,test' })).toEqual([2, 1]);
    expect(found({ batch: south.batchId })).toEqual([3, 4, 1]);
    expect(found({ from: '2026-05-02T08:00:00Z', to: '2026-05-03T08:00:00Z' })).toEqual([3, 4]);
    expect(found({ closed: 'only' })).toEqual([4]);
    expect(found({ closed: 'without' })).toEqual([2, 3, 1]);
  });

  it('is never asked for more than it can carry, nor for a kind that is none', () => {
    expect(RecordQuery.safeParse({ limit: '501' }).success).toBe(false);
    expect(RecordQuery.safeParse({ kind: 'coat,tea' }).success).toBe(false);
    expect(RecordQuery.parse({ limit: '20', offset: '40' })).toMatchObject({
      limit: 20,
      offset: 40,
    });
  });
});
