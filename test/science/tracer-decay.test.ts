import { describe, expect, it } from 'vitest';
import { decayAirChange, removalHours } from '../../daemon/science/tracer-decay.ts';
import { AIR_CHANGE_REMOVAL } from '../published/air-change-removal.ts';
import { REPLACED_AFTER_ONE_CHANGE_PERCENT } from '../published/ventilation.ts';

describe('a tracer that dies away', () => {
  it.each(AIR_CHANGE_REMOVAL)(
    'at %d air changes is down by 90, 99 and 99.9 per cent after %d, %d and %d min',
    (perHour, ...minutes) => {
      [90, 99, 99.9].forEach((share, column) => {
        // the table is rounded to whole minutes
        const printed = minutes[column] as number;
        expect(Math.abs(60 * removalHours(perHour, share) - printed)).toBeLessThan(0.5);
        // and back: the printed minutes give the air change within their own rounding
        const low = decayAirChange({ from: 1, to: 1 - share / 100, hours: (printed + 0.5) / 60 });
        const high = decayAirChange({ from: 1, to: 1 - share / 100, hours: (printed - 0.5) / 60 });
        expect(low).toBeLessThanOrEqual(perHour);
        expect(high).toBeGreaterThanOrEqual(perHour);
      });
    },
  );

  it('is down by 63.2 % after one air change', () => {
    expect(removalHours(1, REPLACED_AFTER_ONE_CHANGE_PERCENT)).toBeCloseTo(1, 3);
  });

  it('is counted above the outdoor background', () => {
    // carbon dioxide from 1,420 to 620 ppm over 420 outdoors in an hour: a fifth is left
    const perHour = decayAirChange({ from: 1420, to: 620, background: 420, hours: 1 });
    expect(perHour).toBeCloseTo(Math.log(5), 12);
  });

  it.each([
    ['from is 400', () => decayAirChange({ from: 400, to: 300, background: 420, hours: 1 })],
    ['hours is 0; allowed: above 0', () => decayAirChange({ from: 2, to: 1, hours: 0 })],
    ['airChangesPerHour is 0; allowed: above 0', () => removalHours(0, 90)],
    ['sharePercent is 100; allowed: 0 to', () => removalHours(1, 100)],
  ])('refuses nonsense: %s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
