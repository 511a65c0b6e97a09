import { describe, expect, it } from 'vitest';
import {
  brierScore,
  type CoatRecord,
  seasonRows,
  testBins,
} from '../../daemon/rules/season-summary.ts';

const day = 86_400_000;
const may = Date.UTC(2026, 4, 4);
const record = (change: Partial<CoatRecord> = {}): CoatRecord => ({
  coatId: 'c',
  batchId: 'b',
  finishedAt: may,
  placeId: 'rack',
  reachedAt: {
    turn: may + day,
    stack: null,
    mount: may + 2 * day,
    sand: null,
    recoat: may + 2.5 * day,
  },
  tests: [],
  boards: 60,
  areaM2: 40,
  usedL: 5,
  ...change,
});
const monthOf = (at: number) => new Date(at).toISOString().slice(0, 7);

describe('a season by month and place', () => {
  it('gives days to each job, and litres by hand', () => {
    const later = record({
      finishedAt: may + 10 * day,
      reachedAt: { ...record().reachedAt, recoat: may + 14 * day },
      usedL: 3,
      boards: 36,
      areaM2: 20,
    });
    const [row, ...rest] = seasonRows([record(), later, record({ usedL: null })], monthOf);
    expect(rest).toEqual([]);
    expect(row).toMatchObject({ month: '2026-05', placeId: 'rack', coats: 3, usedL: 8 });
    // 96 boards and 60 m² over 8 L; the coat without litres is in neither.
    expect(row?.boardsPerLitre).toBe(12);
    expect(row?.m2PerLitre).toBe(7.5);
    expect(row?.days.recoat).toEqual({ coats: 3, shortest: 2.5, median: 2.5, longest: 4 });
    expect(row?.days.stack).toBeNull();
  });

  it('keeps months and places apart, in order', () => {
    const rows = seasonRows(
      [record({ finishedAt: may + 40 * day }), record({ placeId: 'wall' }), record()],
      monthOf,
    );
    expect(rows.map((row) => [row.month, row.placeId])).toEqual([
      ['2026-05', 'rack'],
      ['2026-05', 'wall'],
      ['2026-06', 'rack'],
    ]);
  });
});

describe('the model against the tests', () => {
  const tests = [
    { at: may, gate: 'recoat', passed: true, probability: 0.8 },
    { at: may, gate: 'recoat', passed: false, probability: 0.6 },
    { at: may, gate: 'mount', passed: true, probability: 1 },
  ] as const;

  it('counts in bins, the last one with its end', () => {
    expect(testBins([record({ tests })])).toEqual([
      { from: 0.5, to: 0.75, tests: 1, passed: 0, meanProbability: 0.6 },
      { from: 0.75, to: 0.9, tests: 1, passed: 1, meanProbability: 0.8 },
      { from: 0.9, to: 1, tests: 1, passed: 1, meanProbability: 1 },
    ]);
  });

  it('scores after Brier, by hand', () => {
    // (0.2² + 0.6² + 0²) / 3
    expect(brierScore([record({ tests })])).toBeCloseTo((0.04 + 0.36) / 3, 12);
    expect(brierScore([record()])).toBeNull();
  });
});
