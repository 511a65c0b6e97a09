import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inLots, type JobChain, needAt, type Step } from '../../../daemon/rules/ahead/job-chain.ts';
import { findOrder } from '../../../daemon/rules/ahead/order.ts';
import { futures, spreadTimes } from '../../../daemon/rules/ahead/spread.ts';
import { expectedFuture, timetable, type Workshop } from '../../../daemon/rules/ahead/timetable.ts';
import { dayMs, hourMs, monday, steady, workDays } from './calendar.ts';

const primer: Step = {
  kind: 'coat',
  coat: 0,
  workMs: 4 * hourMs,
  cure: { p10: 48, p90: 48, gathered: 0 },
  placeId: 'room',
  onRack: true,
};
const mount: Step = {
  kind: 'mount',
  coat: 0,
  workMs: 4 * hourMs,
  cure: null,
  placeId: 'wall',
  onRack: false,
};

const chain = (change: Partial<JobChain> = {}): JobChain => ({
  batchId: 'a',
  lot: 0,
  lots: 1,
  boards: 60,
  rackM: 200,
  steps: [primer, mount],
  isOnRack: false,
  curing: null,
  fromAt: monday,
  ...change,
});

const shop = (change: Partial<Workshop> = {}): Workshop => ({
  days: workDays(120),
  rates: new Map([
    ['room', steady(120)],
    ['wall', steady(120)],
  ]),
  capacityM: null,
  leastDayHours: 3,
  ...change,
});
const at = (day: number, hour: number) => monday + day * dayMs + hour * hourMs;

describe('a timetable', () => {
  it('coats in the morning, waits two days at 20 °C, and mounts', () => {
    const { steps, doneAt } = timetable(shop(), [chain()], [0], expectedFuture);
    expect(steps).toEqual([
      { chain: 0, step: 0, beginsAt: at(0, 8), endsAt: at(0, 12), curedAt: at(2, 12) },
      { chain: 0, step: 1, beginsAt: at(2, 12), endsAt: at(2, 16), curedAt: null },
    ]);
    expect(doneAt).toEqual([at(2, 16)]);
  });

  it('has one pair of hands', () => {
    const { steps } = timetable(shop(), [chain(), chain({ batchId: 'b' })], [1, 0], expectedFuture);
    expect(steps.map((step) => [step.chain, step.step, step.beginsAt])).toEqual([
      [1, 0, at(0, 8)],
      [0, 0, at(0, 12)],
      [1, 1, at(2, 12)],
      [0, 1, at(3, 8)],
    ]);
  });

  it('does not overfill the racks', () => {
    const { steps } = timetable(
      shop({ capacityM: 300 }),
      [chain(), chain({ batchId: 'b' })],
      [0, 1],
      expectedFuture,
    );
    const second = steps.find((step) => step.chain === 1 && step.step === 0);
    expect(second?.beginsAt).toBe(at(3, 8));
  });

  it('goes on from a coat that cures already', () => {
    const curing = { p10: 48, p90: 48, gathered: 36, placeId: 'room', fromAt: at(0, 8) };
    const { steps } = timetable(
      shop(),
      [chain({ steps: [mount], isOnRack: true, curing })],
      [0],
      expectedFuture,
    );
    expect(steps[0]?.beginsAt).toBe(at(1, 8));
  });

  it('leaves the brush alone on days that are too cold at the place', () => {
    const rates = new Map([['room', [...steady(3, 2), ...steady(117, 24)]]]);
    expect(timetable(shop({ rates }), [chain()], [0], expectedFuture).steps[0]?.beginsAt).toBe(
      at(3, 8),
    );
  });

  it('is not done within a calendar that is too short', () => {
    const rates = new Map([
      ['room', steady(120, 0.1)],
      ['wall', steady(120)],
    ]);
    expect(
      timetable(shop({ rates, leastDayHours: 0 }), [chain()], [0], expectedFuture).doneAt,
    ).toEqual([null]);
  });
});

describe('a batch larger than the racks', () => {
  it('is done in parts that fit, and loses no board', () => {
    const lots = inLots({ ...chain({ boards: 100, rackM: 400 }) }, 150);
    expect(lots.map((lot) => [lot.boards, lot.rackM])).toEqual([
      [37, 148],
      [37, 148],
      [26, 104],
    ]);
    const work = lots.reduce((sum, lot) => sum + (lot.steps[0]?.workMs ?? 0), 0);
    expect(work).toBeCloseTo(primer.workMs, 3);
  });

  it('stays whole where nobody said what the racks hold', () => {
    expect(inLots(chain(), null)).toHaveLength(1);
  });
});

describe('an order to work in', () => {
  const someChain = fc.record({
    rackM: fc.integer({ min: 50, max: 300 }),
    workMs: fc.integer({ min: hourMs, max: 10 * hourMs }),
    need: fc.integer({ min: 20, max: 90 }),
    coats: fc.integer({ min: 1, max: 3 }),
  });

  it('is never before its bound, and the best of all orders of a few batches', () => {
    fc.assert(
      fc.property(fc.array(someChain, { minLength: 2, maxLength: 5 }), (given) => {
        const chains = given.map(chainOf);
        const narrow = shop({ capacityM: 350 });
        const found = findOrder(narrow, chains);
        const ends = permutations(chains.map((_, i) => i)).map((order) => {
          const { doneAt } = timetable(narrow, chains, order, expectedFuture);
          return Math.max(...doneAt.map((one) => one ?? Number.POSITIVE_INFINITY));
        });
        const best = Math.min(...ends);
        expect(found.boundAt).not.toBeNull();
        expect(found.boundAt as number).toBeLessThanOrEqual(best);
        expect(found.endsAt).toBe(best);
      }),
      { numRuns: 40 },
    );
  });

  it('of many batches is close to its bound, and found within its tries', () => {
    const ratios: number[] = [];
    fc.assert(
      fc.property(fc.array(someChain, { minLength: 8, maxLength: 12 }), (given) => {
        const found = findOrder(shop({ capacityM: 350 }), given.map(chainOf));
        expect(found.tried).toBeLessThanOrEqual(300);
        expect(found.boundAt as number).toBeLessThanOrEqual(found.endsAt as number);
        ratios.push(((found.endsAt as number) - monday) / ((found.boundAt as number) - monday));
      }),
      { numRuns: 15 },
    );
    // The bound takes boards as water and knows no nights or Sundays, so it cannot be met.
    ratios.sort((a, b) => a - b);
    expect(ratios[7]).toBeLessThan(1.8);
    expect(ratios.at(-1)).toBeLessThan(3);
  });
});

describe('early, likely and late', () => {
  it('come out as the 10, 50 and 90 % points of the paint alone in steady air', () => {
    const coat: Step = { ...primer, cure: { p10: 48, p90: 72, gathered: 0 }, onRack: false };
    const alone = chain({ steps: [coat] });
    const { done } = spreadTimes(shop(), [alone], [0]);
    const days = (time: number | null | undefined) => ((time ?? 0) - at(0, 12)) / dayMs;
    expect(days(done[0]?.early)).toBeCloseTo(2, 1);
    expect(days(done[0]?.likely)).toBeCloseTo(Math.sqrt(48 * 72) / 24, 1);
    expect(days(done[0]?.late)).toBeCloseTo(3, 1);
  });

  it('count a future in which it is never done as later than all others', () => {
    const rates = new Map([
      ['room', steady(120, 0.9)],
      ['wall', steady(120)],
    ]);
    const coat: Step = { ...primer, cure: { p10: 60, p90: 200, gathered: 0 }, onRack: false };
    const { all } = spreadTimes(shop({ rates, leastDayHours: 0 }), [chain({ steps: [coat] })], [0]);
    expect(all.early).not.toBeNull();
    expect(all.late).toBeNull();
  });

  it('are the same each time', () => {
    expect(futures()).toEqual(futures());
  });

  it('need less where something was gathered', () => {
    expect(needAt({ p10: 48, p90: 72, gathered: 20 }, 0)).toBeCloseTo(Math.sqrt(48 * 72) - 20, 9);
    expect(needAt({ p10: 48, p90: 72, gathered: 99 }, 0)).toBe(0);
  });
});

interface Given {
  rackM: number;
  workMs: number;
  need: number;
  coats: number;
}

function chainOf({ rackM, workMs, need, coats }: Given, index: number): JobChain {
  const coat = (_: unknown, n: number): Step => ({
    ...primer,
    coat: n,
    workMs,
    cure: { p10: need, p90: need, gathered: 0 },
  });
  const steps = [...Array.from({ length: coats }, coat), mount];
  return chain({ batchId: String(index), rackM, steps });
}

function permutations(items: number[]): number[][] {
  if (items.length <= 1) return [items];
  return items.flatMap((item, i) =>
    permutations([...items.slice(0, i), ...items.slice(i + 1)]).map((rest) => [item, ...rest]),
  );
}
