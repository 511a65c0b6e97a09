import { beforeAll, describe, expect, it } from 'vitest';
import { type JudgedShed, judgeShed } from './judge-shed.ts';
import { airTable, quantile, tally, threeDays } from './tally.ts';

/*
 * A small run of the judge: four invented sheds for twelve days, without failing sensors. The bounds
 * are generous, so that only a broken model turns them red; `npm run bench` has the figures.
 */
const DAYS = 12;
let sheds: JudgedShed[];

beforeAll(async () => {
  sheds = [];
  for (const seed of [1, 7, 9, 11]) {
    sheds.push(await judgeShed(seed, { days: DAYS, faults: 0, tests: seed !== 9 }));
  }
}, 120_000);

const jobs = () => sheds.flatMap((shed) => shed.jobs);

describe('verdicts in invented sheds, against their hidden truth', () => {
  it('are seldom too early', () => {
    const { said, early } = tally(jobs());
    expect(said).toBeGreaterThan(60);
    expect(early / said).toBeLessThan(0.12);
  });

  it('do not keep people waiting for days', () => {
    expect(tally(jobs().filter(({ isGoal }) => isGoal)).waited).toBeLessThan(24);
  });

  it('are worth more than three days for every coat', () => {
    const goals = jobs().filter(({ isGoal }) => isGoal);
    const ours = tally(goals);
    const rule = threeDays(goals);
    expect(ours.early / ours.said).toBeLessThan(rule.early / rule.said);
  });

  it('refuse no reading of a sound sensor', () => {
    expect(sheds.map(({ refused }) => refused)).toEqual([0, 0, 0, 0]);
  });

  it('call no more of the good air poor than of the poor', () => {
    const share = (isSo: string) => {
      const row = airTable(sheds).find((one) => one.isSo === isSo);
      if (row === undefined) return Number.NaN;
      return row.poor / (row.poor + row.cannotTell + row.good);
    };
    expect(share('poor')).toBeGreaterThan(share('good'));
  });
});

describe('the tally', () => {
  const hour = 3_600_000;
  const job = (trueAfter: number | null, readyAfter: number | null) => ({
    ...{ gate: 'recoat' as const, coat: 0, isGoal: true, finishedAt: 0, testsBefore: 0 },
    trueAt: trueAfter === null ? null : trueAfter * hour,
    readyAt: readyAfter === null ? null : readyAfter * hour,
    ...{ readyHours: 10, earlyHours: 1, until: 100 * hour },
  });

  it('counts as early what was said before it was so, and waiting from there on', () => {
    const counted = tally([job(50, 60), job(50, 54), job(60, 57), job(null, 80), job(50, null)]);
    expect(counted).toMatchObject({ said: 4, early: 2, earlyByHours: 3, waited: 10, waited90: 10 });
    expect(counted.earlyHoursShare).toBeCloseTo(0.1, 12);
  });

  it('counts hours of work from six to eight in the evening', () => {
    expect(tally([job(18, 33)]).workWaited).toBe(2 + 3);
  });

  it('holds the three-day rule to the same truth', () => {
    const rule = threeDays([job(50, 60), job(80, 90), job(null, null)]);
    expect(rule).toMatchObject({ said: 3, early: 2, waited: 22 });
    expect(quantile([], 0.5)).toBeNaN();
  });
});
