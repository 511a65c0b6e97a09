import { expect, it } from 'vitest';
import { leftInTins } from '../../daemon/rules/tin-stock.ts';

const tin = { kind: 'paint' as const, volumeL: 5, usedL: 0, emptiedAt: null };

it('what is left is what the tins held less what coats took, tin by tin', () => {
  // By hand: 5 − 2 and 1 − 3, which is none: 3 L.
  expect(
    leftInTins(
      [
        { ...tin, usedL: 2 },
        { ...tin, volumeL: 1, usedL: 3 },
      ],
      'paint',
    ),
  ).toBe(3);
});
it('empty tins, other kinds and tins of unknown size do not count', () => {
  const others = [
    { ...tin, emptiedAt: '2026-05-20T10:00:00.000Z' },
    { ...tin, kind: 'oil' as const },
    { ...tin, volumeL: null },
  ];
  expect(leftInTins(others, 'paint')).toBeUndefined();
  expect(leftInTins([...others, tin], 'paint')).toBe(5);
});
