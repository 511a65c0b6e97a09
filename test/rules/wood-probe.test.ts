import { describe, expect, it } from 'vitest';
import type { WoodProbe } from '../../daemon/contract/wood-probe.ts';
import { asTold, boardsProbed, probeMoisture } from '../../daemon/rules/wood-probe.ts';
import { resistanceFromMoisture } from '../../daemon/science/wood.ts';

const probe = (sensor: string, percent: number): WoodProbe => ({
  ...{ sensor, at: '2026-05-20T12:00:00.000Z', ...asTold(percent), ohms: null },
  ...{ curve: null, curveAssumed: false, woodTempC: null, woodTempFrom: null },
});

describe('pins in the wood', () => {
  it('tell 14.4 % in pine and 16.1 % in spruce at 100 MΩ and 20 °C', () => {
    // Printed with the Nordic curves; see test/published/wood-resistance.ts.
    expect(probeMoisture(1e8, 'scots-pine', 20)).toBeCloseTo(14.4, 1);
    expect(probeMoisture(1e8, 'norway-spruce', 20)).toBeCloseTo(16.1, 1);
  });

  it('tell less in warmer wood at the same resistance: about 1.2 % for 10 K', () => {
    const apart = probeMoisture(1e8, 'scots-pine', 20) - probeMoisture(1e8, 'scots-pine', 30);
    // 0.10 to 0.15 % a kelvin: Forsén and Tarvainen 2000, VTT Publications 420.
    expect(apart).toBeGreaterThanOrEqual(1);
    expect(apart).toBeLessThanOrEqual(1.5);
  });

  it('tell no number above fibre saturation or below 7 %', () => {
    expect(asTold(28.1)).toEqual({ range: 'wetter-than', moisturePercent: null, limitPercent: 28 });
    expect(asTold(6.9)).toEqual({ range: 'drier-than', moisturePercent: null, limitPercent: 7 });
    expect(asTold(18)).toEqual({ range: 'measured', moisturePercent: 18, limitPercent: null });
    const wet = resistanceFromMoisture(35, { species: 'scots-pine', woodTempC: 20 });
    expect(asTold(probeMoisture(wet, 'scots-pine', 20)).range).toBe('wetter-than');
  });

  it('speak by the wettest, with how far they spread', () => {
    expect(boardsProbed([probe('a', 14), probe('b', 17.5), probe('c', 15)])).toMatchObject({
      worst: 'b',
      moisturePercent: 17.5,
      spreadPercent: 3.5,
    });
    expect(boardsProbed([probe('a', 14), probe('b', 40)])).toMatchObject({
      worst: 'b',
      range: 'wetter-than',
      moisturePercent: null,
      spreadPercent: null,
    });
    expect(boardsProbed([])).toBeNull();
  });
});
