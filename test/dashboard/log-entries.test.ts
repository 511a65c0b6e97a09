import { describe, expect, it } from 'vitest';
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
      'Not yet ready to turn at 312\u00a0°C·h, felt on the offcut: it prints',
      'Moved to South rack',
      'Got wet',
      'Wood moisture: 13.1 % · 14 %',
    ]);
  });
});
