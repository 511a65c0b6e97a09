import { describe, expect, it } from 'vitest';
import { chartRows } from '../../dashboard/batch/chart-rows.ts';
import { logEntries } from '../../dashboard/batch/log-entries.ts';
import { createReader } from '../../dashboard/reader.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';

describe('what was recorded about a batch', () => {
  it('stands newest first, in words, and leaves out the place it lay at from ever', () => {
    const entries = logEntries(
      {
        moves: [
          { id: 'first', placeId: 'north', at: null, mounting: null },
          { id: 'move', placeId: 'south', at: '2026-05-11T08:00:00Z', mounting: null },
        ],
        tests: [
          {
            id: 'test',
            coatId: 'coat',
            at: '2026-05-12T08:00:00Z',
            gate: 'turn',
            passed: false,
            on: 'offcut',
            learnedBy: 'touch',
            degreeHours: 312.4,
          },
        ],
        remarks: [
          {
            id: 'remark',
            at: '2026-05-10T08:00:00Z',
            kind: 'got-wet',
            text: null,
            textSaid: null,
            automatic: false,
            cure: [],
            cureSaid: [],
          },
        ],
        handReadings: [
          {
            id: 'meter',
            placeId: null,
            batchId: 'batch',
            quantity: 'wood-moisture',
            values: [13.1, 14],
            at: '2026-05-09T08:00:00Z',
          },
        ],
      },
      (id) => (id === 'south' ? 'South rack' : id),
      createReader('en', 'metric', { ...first, ...rest }, {}, ['en-GB']),
    );
    expect(entries.map(({ what }) => what)).toEqual([
      'Not yet ready to turn at 312 °C·h, felt on the offcut: it prints',
      'Moved to South rack',
      'Got wet',
      'Wood moisture: 13.1 % · 14 %',
    ]);
  });
});

describe('the table beside a chart', () => {
  const chart = {
    at: [0, 1, 2, 3, 4, 5, 6, 7, 8],
    tempC: [1, 2, 3, 4, null, 6, 7, 8, 9],
    rhPercent: [1, 2, 3, 4, 5, 6, 7, 8, 9],
    degreeHours: [0, 1, 2, 3, 4, 5, 6, 7, 8],
  };

  it('keeps the first and the last row and shows a gap as a gap', () => {
    const rows = chartRows(chart, 3);
    expect(rows.map(({ at }) => at)).toEqual([0, 4, 8]);
    expect(rows[1]?.tempC).toBeNull();
  });

  it('is no longer than the curves', () => {
    expect(chartRows(chart, 25)).toHaveLength(9);
    expect(chartRows({ at: [], tempC: [], rhPercent: [], degreeHours: [] }, 25)).toEqual([]);
  });
});
