import { expect, it } from 'vitest';
import { heardMoments } from '../../daemon/monitor/heard-moments.ts';
import { type ReadingRun, runBuilder } from '../../daemon/rules/reading-run.ts';

const start = Date.UTC(2026, 1, 1);
const timeUnknown = 2;

/** Sensors that sent so many readings at even steps; every thousandth has no time. */
function source(counts: ReadonlyMap<number, { count: number; stepMs: number }>) {
  const answers: number[] = [];
  return {
    answers,
    readingRun(key: number, _of: string, from: number, to: number, limit: number): ReadingRun {
      const { count, stepMs } = counts.get(key) ?? { count: 0, stepMs: 1 };
      const run = runBuilder();
      for (let i = Math.max(0, Math.ceil((from - start) / stepMs)); i < count; i++) {
        if (start + i * stepMs > to || run.length === limit) break;
        run.add(start + i * stepMs, key + (i % 7), i % 1000 === 999 ? timeUnknown : 0);
      }
      answers.push(run.length);
      return run.run();
    },
  };
}

it('what sensors said comes moment by moment, and a flood never as a whole', () => {
  // The fault injected: a node that sends a hundred readings a second for over an hour beside two calm ones.
  const flood = { count: 450_000, stepMs: 10 };
  const calm = { count: 75, stepMs: 60_000 };
  const store = source(
    new Map([
      [1, calm],
      [2, flood],
      [3, calm],
    ]),
  );
  const leaving = start + 30 * 60_000;
  const heard = [1, 2, 3].map((sensorKey) => {
    const untilAt = sensorKey === 3 ? leaving : null;
    return { sensorKey, level: 0, fromAt: null, untilAt };
  });
  const parts = { readings: store, corrected: ({ raw }: { raw: number }) => raw / 2 };
  const asked = { ...parts, flags: { timeUnknown } };
  const said = new Map<number, number>();
  let before = Number.NEGATIVE_INFINITY;
  let wrong = 0;
  for (const moment of heardMoments(asked, heard, 'air-temperature', start, start + 4_499_990)) {
    const at = moment[0]?.at ?? 0;
    if (at <= before) wrong++;
    before = at;
    for (const one of moment) {
      const stepMs = one.sensorKey === 2 ? flood.stepMs : calm.stepMs;
      const index = (one.at - start) / stepMs;
      if (one.at !== at || one.value !== (one.sensorKey + (index % 7)) / 2) wrong++;
      if (one.sensorKey === 3 && one.at >= leaving) wrong++;
      said.set(one.sensorKey, (said.get(one.sensorKey) ?? 0) + 1);
    }
  }
  expect(wrong).toBe(0);
  expect(Object.fromEntries(said)).toEqual({ 1: 75, 2: 449_550, 3: 30 });
  expect(Math.max(...store.answers)).toBeLessThan(100_000);
});
