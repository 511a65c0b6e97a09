import { describe, expect, it } from 'vitest';
import { defaultPlans } from '../../daemon/rules/coating-plan.ts';
import type { BatchFact, PlanFact } from '../../daemon/rules/facts.ts';
import { shoppingList, tinsFor } from '../../daemon/rules/shopping.ts';

const sawn: PlanFact = {
  ...{ id: 'p', name: 'Three coats', surface: 'sawn', isDefault: true, createdAt: 0 },
  coats: defaultPlans[0]?.coats ?? [],
};
const batch: BatchFact = {
  ...{ id: 'b', name: 'South gable', species: 'norway-spruce', surface: 'sawn', planId: 'p' },
  ...{ createdAt: 0, closedAt: null },
  boards: { count: 40, lengthMm: 4200, widthMm: 145, thicknessMm: 22 },
};
const ask = (given: Partial<Parameters<typeof shoppingList>[0]> = {}) =>
  shoppingList({
    batches: [batch],
    plans: new Map([['p', sawn]]),
    coats: new Map(),
    lossPercent: 0,
    keepPrimerL: 0,
    tinsL: { paint: [], rawLinseedOil: [], turpentine: [] },
    ...given,
  });
const needed = (list: ReturnType<typeof ask>) =>
  Object.fromEntries(list.lines.map(({ part, neededL }) => [part, Number(neededL.toFixed(3))]));

describe('what to buy', () => {
  // By hand, 40 boards of 4200 × 145 × 22 mm: all round 40 · (2·0.609 + 2·0.0924 + 2·0.00319) m² =
  // 56.367 m² at 8 m²/L: 7.0459 L; face and edges 40 · (0.609 + 2·0.0924) = 31.752 m² at 10 and 12
  // m²/L: 3.1752 and 2.6460 L. Paint 0.35·7.0459 + 3.1752·100/115 + 2.6460 = 7.8731 L; oil 3.5229 L;
  // turpentine 0.15·7.0459 + 3.1752·15/115 = 1.4710 L.
  it('is the sum of all coats of the plan', () => {
    expect(needed(ask())).toEqual({ paint: 7.873, rawLinseedOil: 3.523, turpentine: 1.471 });
  });
  it('grows by what is lost: a tenth that stays in the pot makes it 1 / 0.9', () => {
    expect(needed(ask({ lossPercent: 10 })).paint).toBeCloseTo(7.8731 / 0.9, 3);
  });
  it('holds a litre of primer more for cut ends', () => {
    const list = ask({ keepPrimerL: 1 });
    expect(needed(list)).toEqual({ paint: 8.223, rawLinseedOil: 4.023, turpentine: 1.621 });
    expect(list.keepPrimerL).toBe(1);
  });
  it('leaves out what is done, and batches that are closed', () => {
    const done = {
      ...{ id: 'c', batchId: 'b', coat: 0, begunAt: null, finishedAt: 0, usedL: null },
      ...{
        colour: null,
        tin: null,
        faces: [],
        mixture: { paint: 1, rawLinseedOil: 0, turpentine: 0 },
      },
    };
    expect(ask({ coats: new Map([['b', [done]]]) }).coats.map(({ coatName }) => coatName)).toEqual([
      'Second coat',
      'Last coat',
    ]);
    expect(ask({ batches: [{ ...batch, closedAt: 1 }] })).toMatchObject({ coats: [], lines: [] });
  });
  it('is rounded up to tins where their sizes are known', () => {
    const list = ask({ tinsL: { paint: [5, 1], rawLinseedOil: [], turpentine: [1] } });
    expect(list.lines.map(({ tins, boughtL }) => ({ tins, boughtL }))).toEqual([
      {
        tins: [
          { sizeL: 5, count: 1 },
          { sizeL: 1, count: 3 },
        ],
        boughtL: 8,
      },
      { tins: null, boughtL: null },
      { tins: [{ sizeL: 1, count: 2 }], boughtL: 2 },
    ]);
  });
});

describe('tins', () => {
  it.each([
    [7.9, [10, 5, 1], { 5: 1, 1: 3 }],
    [9.6, [10, 5, 1], { 10: 1 }],
    [0.2, [2.5, 0.75], { 0.75: 1 }],
    [3, [2.5, 0.75], { 0.75: 4 }],
    [10, [5, 10], { 10: 1 }],
    [10.01, [10], { 10: 2 }],
  ] as const)('for %s L of %j leave the least over', (litres, sizes, expected) => {
    const counts = tinsFor(litres, sizes).map(({ sizeL, count }) => [sizeL, count]);
    expect(Object.fromEntries(counts)).toEqual(expected);
  });
});
