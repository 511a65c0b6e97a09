import { describe, expect, it } from 'vitest';
import { curedUntil, cureStays, placeOfBatch } from '../../daemon/rules/batch.ts';
import type { CoatFact, MoveFact } from '../../daemon/rules/facts.ts';
import { nextJob } from '../../daemon/rules/next-job.ts';

const move = (placeId: string, at: number | null): MoveFact => ({
  id: placeId,
  batchId: 'b',
  placeId,
  at,
});
const coat = (index: number, finishedAt: number, begunAt: number | null = null): CoatFact => ({
  id: `coat-${index}`,
  batchId: 'b',
  coat: index,
  begunAt,
  finishedAt,
  mixture: { paint: 1, rawLinseedOil: 0, turpentine: 0 },
  faces: ['face'],
  usedL: null,
  colour: null,
  tin: null,
});
const moves = [move('rack', null), move('wall', 500)];

describe('where a coat cures', () => {
  it('is where the batch lies, from move to move', () => {
    expect(placeOfBatch(moves, 0)).toBe('rack');
    expect(placeOfBatch(moves, 500)).toBe('wall');
    expect(cureStays(coat(0, 100), [coat(0, 100)], moves, null)).toEqual([
      { placeId: 'rack', fromAt: 100, toAt: 500 },
      { placeId: 'wall', fromAt: 500, toAt: null },
    ]);
  });

  it('ends when the next coat goes on, begun before it was finished', () => {
    const coats = [coat(0, 100), coat(1, 450, 400)];
    expect(curedUntil(coats[0] as CoatFact, coats)).toBe(400);
    expect(curedUntil(coats[1] as CoatFact, coats)).toBeNull();
    expect(cureStays(coats[0] as CoatFact, coats, moves, null)).toEqual([
      { placeId: 'rack', fromAt: 100, toAt: 400 },
    ]);
  });

  it('ends when the batch is closed', () => {
    expect(cureStays(coat(0, 100), [coat(0, 100)], moves, 700).at(-1)?.toAt).toBe(700);
  });
});

describe('the job a batch waits for', () => {
  it('is the next coat, then to be mounted when it still lies on a rack', () => {
    expect(nextJob(null, 3, 'rack')).toBeNull();
    expect(nextJob(0, 3, 'wall')).toBe('recoat');
    expect(nextJob(2, 3, 'rack')).toBe('mount');
    expect(nextJob(2, 3, 'wall')).toBeNull();
  });
});
