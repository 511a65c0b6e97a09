import { describe, expect, it } from 'vitest';
import { questionOf, worthOfAnswer } from '../../daemon/rules/morning-round.ts';

describe('what an answer is worth', () => {
  it('is nothing where it is known already', () => {
    expect(worthOfAnswer(0, 24)).toBe(0);
    expect(worthOfAnswer(1, 24)).toBe(0);
    expect(worthOfAnswer(0.5, 0)).toBe(0);
  });
  // Two acts with losses 72·(1−p) and 24·p are equally bad at p = 72/(72+24).
  it('is most where going on and waiting are equally bad', () => {
    const worths = Array.from({ length: 101 }, (_, i) => worthOfAnswer(i / 100, 24));
    expect(worths.indexOf(Math.max(...worths))).toBe(75);
    expect(worthOfAnswer(0.75, 24)).toBeCloseTo(18, 12);
  });
  it('is no less the longer one would wait', () => {
    for (const p of [0.1, 0.5, 0.9]) {
      expect(worthOfAnswer(p, 30)).toBeGreaterThanOrEqual(worthOfAnswer(p, 10));
    }
  });
});

describe('the question of the morning', () => {
  const one = {
    batchId: 'a',
    gate: 'recoat',
    boards: 40,
    probability: 0.7,
    waitHours: 12,
  } as const;
  it('is asked where the answer changes most over all boards', () => {
    const sure = { ...one, batchId: 'b', probability: 0.99 };
    const few = { ...one, batchId: 'c', boards: 5 };
    expect(questionOf([sure, few, one])).toMatchObject({ batchId: 'a' });
    expect(questionOf([])).toBeNull();
  });
  it('is left unasked where no answer is worth the walk', () => {
    expect(questionOf([{ ...one, probability: 0.02 }])).toBeNull();
    expect(questionOf([{ ...one, probability: 0.999 }])).toBeNull();
  });
});
