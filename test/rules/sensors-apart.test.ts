import { expect, it } from 'vitest';
import { apartNow, hear, nothingHeard } from '../../daemon/rules/place-series.ts';

const heard = (sensorKey: number, value: number, level = 0) => ({
  sensorKey,
  at: 1000,
  value,
  level,
  untilAt: null,
});

it('says how far apart the sensors of a place are, and nothing of those of its room', () => {
  const held = nothingHeard();
  hear(held, [heard(1, 15), heard(2, 18.5), heard(3, 30, 1)], 60_000, 'lowest');
  expect(apartNow(held)).toBe(3.5);
});

it('says nothing where fewer than two speak', () => {
  const held = nothingHeard();
  expect(apartNow(held)).toBeNull();
  hear(held, [heard(1, 15), heard(3, 30, 1)], 60_000, 'lowest');
  expect(apartNow(held)).toBeNull();
});
