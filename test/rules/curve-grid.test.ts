import { describe, expect, it } from 'vitest';
import {
  type CurveGrid,
  curveGrid,
  type HourExtremes,
  middles,
  speakingHours,
  spreadOfHours,
  spreadOfSamples,
  takeHour,
  takeOutline,
  unknownHours,
} from '../../daemon/rules/curve-grid.ts';

const minute = 60_000;
const hour = 60 * minute;
const start = Date.UTC(2026, 4, 4);

describe('the grid of a curve', () => {
  it('has stretches that make up whole hours and days, no more than asked for and one', () => {
    for (const points of [2, 50, 600, 2000]) {
      for (const span of [minute, hour, 31 * hour, 24 * 7 * hour, 24 * 183 * hour]) {
        const grid = curveGrid(start + 7, start + span, points);
        expect(grid.count).toBeLessThanOrEqual(points + 1);
        expect(grid.startAt).toBeLessThanOrEqual(start + 7);
        expect(grid.startAt + grid.count * grid.stepMs).toBeGreaterThan(start + span);
        const parts = grid.stepMs <= hour ? hour / grid.stepMs : grid.stepMs / hour;
        expect(Number.isInteger(parts)).toBe(true);
        expect(grid.startAt % grid.stepMs).toBe(0);
      }
    }
  });

  it('tells the middle of each stretch', () => {
    const grid = curveGrid(start, start + 2 * hour, 2);
    expect(middles(grid)).toEqual([0.5, 1.5, 2.5].map((hours) => start + hours * hour));
  });
});

describe('readings on a grid', () => {
  const grid = { startAt: start, stepMs: hour, count: 8 };
  const at = (hours: number, value: number) => ({ at: start + hours * hour, value });

  it('are the lowest, the mean and the highest of each stretch', () => {
    const samples = [at(0, 4), at(0.25, 10), at(0.5, 7), at(1, 5)];
    const { low, mean, high } = spreadOfSamples(samples, grid, 3 * hour, start, start + 9 * hour);
    expect([low[0], mean[0], high[0]]).toEqual([4, 7, 10]);
    expect([low[1], mean[1], high[1]]).toEqual([5, 5, 5]);
    expect(mean.slice(2)).toEqual(new Array(6).fill(null));
  });

  it('lie on the straight line where the next one is near enough, and are a gap where not', () => {
    const { mean } = spreadOfSamples(
      [at(0, 0), at(3, 6), at(7.5, 1)],
      grid,
      3 * hour,
      start,
      start + 8 * hour,
    );
    // In the middle of an hour: at 1.5 h half of the way from 0 to 6.
    expect(mean).toEqual([0, 3, 5, 6, null, null, null, 1]);
  });

  it('outside the stretch that counts only carry the line', () => {
    const { mean } = spreadOfSamples(
      [at(0, 0), at(3, 6)],
      grid,
      3 * hour,
      start + hour,
      start + 2 * hour,
    );
    expect(mean).toEqual([null, 3, null, null, null, null, null, null]);
  });
});

describe('hours on a grid', () => {
  const first = start / hour;
  const byHour = { startAt: start, stepMs: hour, count: 48 };

  /** Hours of which some are known. */
  function known(grid: CurveGrid, ...of: [at: number, low: number, high: number][]): HourExtremes {
    const hours = unknownHours(grid);
    for (const [at, low, high] of of) takeHour(hours, first + at, low, high);
    return hours;
  }

  it('are read from an outline; a day that is kept as one stands for each of its hours', () => {
    const outline = {
      points: [
        { at: start + 5 * minute, raw: 3 },
        { at: start + 30 * minute, raw: 9 },
        { at: start + 25 * hour, raw: 1 },
        { at: start + 40 * hour, raw: 20 },
      ],
      spans: [
        { firstAt: start, lastAt: start + 59 * minute },
        { firstAt: start + 24 * hour, lastAt: start + 47.5 * hour },
      ],
    };
    const hours = unknownHours(byHour);
    takeOutline(hours, outline);
    const day = Array.from({ length: 24 }, (_, i): [number, number, number] => [24 + i, 1, 20]);
    expect(hours).toEqual(known(byHour, [0, 3, 9], ...day));
  });

  it('let the nearest sensors speak, and of them the coldest or the dampest', () => {
    const hours = (...of: [number, number, number][]) => known(byHour, ...of);
    const sensors = [
      { level: 0, hours: hours([0, 10, 14]) },
      { level: 0, hours: hours([0, 9, 15]) },
      { level: 1, hours: hours([0, 1, 2], [1, 5, 6]) },
    ];
    expect(speakingHours(sensors, 'lowest', byHour)).toEqual(hours([0, 9, 14], [1, 5, 6]));
    expect(speakingHours(sensors, 'highest', byHour)).toEqual(hours([0, 10, 15], [1, 5, 6]));
  });

  it('come to the lowest and highest of each stretch and the mean of their middles', () => {
    const grid = { startAt: start, stepMs: 2 * hour, count: 5 };
    const hours = known(grid, [0, 2, 4], [1, 6, 20], [9, 1, 1], [10, 99, 99]);
    const { low, mean, high } = spreadOfHours(hours, grid, 3 * hour);
    expect(low).toEqual([2, null, null, null, 1]);
    expect(mean).toEqual([8, null, null, null, 1]);
    expect(high).toEqual([20, null, null, null, 1]);
  });

  it('are bridged where a reading comes every other hour', () => {
    const grid = { startAt: start, stepMs: hour, count: 5 };
    const hours = known(grid, [0, 0, 0], [2, 2, 2], [4, 4, 4]);
    expect(spreadOfHours(hours, grid, 3 * hour).mean).toEqual([0, 1, 2, 3, 4]);
  });
});
