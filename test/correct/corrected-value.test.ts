import { describe, expect, it } from 'vitest';
import { quantities, quantityFacts } from '../../daemon/contract/quantity.ts';
import { correctedValue } from '../../sensors/correct/corrected-value.ts';

describe('the value to calculate with', () => {
  // Common practice, no source: cheap humidity sensors pass 100 % in saturated air.
  it.each([
    [100, 100, false],
    [100.1, 100, true],
    [105, 100, true],
    [110, 100, true],
    [0, 0, false],
    [-0.4, 0, true],
    [-5, 0, true],
    [55.3, 55.3, false],
  ])('relative humidity %d %% counts as %d %%', (raw, value, clamped) => {
    expect(correctedValue('relative-humidity', raw)).toEqual({ value, clamped });
  });

  it('a battery is at most full', () => {
    expect(correctedValue('battery', 104)).toEqual({ value: 100, clamped: true });
    expect(correctedValue('battery', 87)).toEqual({ value: 87, clamped: false });
  });

  it('everything else is as sent', () => {
    expect(correctedValue('air-temperature', -12.5)).toEqual({ value: -12.5, clamped: false });
    expect(correctedValue('wood-moisture', 140)).toEqual({ value: 140, clamped: false });
  });

  it('stays within 0 and 100 for whatever a humidity sensor may send, and correcting twice changes nothing', () => {
    for (const quantity of quantities) {
      const { low, high } = quantityFacts[quantity];
      for (const raw of [low, high, (low + high) / 2]) {
        const { value } = correctedValue(quantity, raw);
        expect(correctedValue(quantity, value)).toEqual({ value, clamped: false });
        if (quantity === 'relative-humidity') expect(value >= 0 && value <= 100).toBe(true);
      }
    }
  });
});
