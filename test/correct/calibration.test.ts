import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CalibrationHow } from '../../daemon/contract/calibration.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { calibrationFault, calibrationLine } from '../../sensors/correct/calibration.ts';
import { correctedValue } from '../../sensors/correct/corrected-value.ts';

const corrected = (quantity: Quantity, how: CalibrationHow, raw: number) =>
  correctedValue(quantity, raw, calibrationLine(quantity, how)).value;

describe('a calibration', () => {
  it('by an offset adds it', () => {
    expect(corrected('air-temperature', { kind: 'offset', add: -0.4 }, 20)).toBeCloseTo(19.6, 12);
  });

  it('by two points goes through both', () => {
    const points = [
      { shown: 10, actual: 10.6 },
      { shown: 30, actual: 29.8 },
    ];
    for (const { shown, actual } of points) {
      expect(corrected('air-temperature', { kind: 'two-point', points }, shown)).toBeCloseTo(
        actual,
      );
    }
  });

  it('by two salts puts the sensor on both published humidities', () => {
    const how: CalibrationHow = {
      kind: 'salts',
      points: [
        { salt: 'magnesium-chloride', tempC: 25, shown: 36 },
        { salt: 'sodium-chloride', tempC: 25, shown: 72 },
      ],
    };
    // 32.8 and 75.3 % at 25 °C (Greenspan 1977).
    expect(corrected('relative-humidity', how, 36)).toBeCloseTo(32.8, 1);
    expect(corrected('relative-humidity', how, 72)).toBeCloseTo(75.3, 1);
    // A corrected humidity stays within what there is.
    expect(corrected('relative-humidity', how, 100)).toBe(100);
  });

  it('in ice water makes zero of what was shown', () => {
    expect(corrected('surface-temperature', { kind: 'ice-point', shown: 0.7 }, 20.7)).toBeCloseTo(
      20,
    );
  });

  it('by a test resistor scales every resistance alike', () => {
    const how: CalibrationHow = { kind: 'test-resistor', ohms: 1e8, shown: 8e7 };
    expect(corrected('wood-resistance', how, 8e7)).toBeCloseTo(1e8, 0);
    expect(corrected('wood-resistance', how, 4e9) / 5e9).toBeCloseTo(1, 9);
  });

  it('keeps the order of values, so that roll-ups can be corrected by their extremes', () => {
    const value = fc.double({ min: -20, max: 60, noNaN: true });
    const gain = fc.double({ min: 0.6, max: 1.9, noNaN: true });
    fc.assert(
      fc.property(value, gain, value, value, value, (add, slope, first, x, y) => {
        const points = [first - 10, first + 10].map((shown) => ({
          shown,
          actual: slope * shown + add,
        }));
        const how: CalibrationHow = { kind: 'two-point', points };
        fc.pre(calibrationFault('air-temperature', how) === null);
        const [low, high] = [Math.min(x, y), Math.max(x, y)];
        expect(corrected('air-temperature', how, low)).toBeLessThanOrEqual(
          corrected('air-temperature', how, high),
        );
      }),
    );
  });

  it.each<[string, Quantity, CalibrationHow]>([
    ['/how/kind', 'battery', { kind: 'offset', add: 1 }],
    ['/how/kind', 'relative-humidity', { kind: 'ice-point', shown: 0 }],
    ['/how/kind', 'air-temperature', { kind: 'test-resistor', ohms: 1, shown: 1 }],
    [
      '/how/points/1/shown',
      'relative-humidity',
      {
        kind: 'two-point',
        points: [
          { shown: 50, actual: 50 },
          { shown: 51, actual: 52 },
        ],
      },
    ],
    [
      '/how/points/1/actual',
      'air-temperature',
      {
        kind: 'two-point',
        points: [
          { shown: 0, actual: 30 },
          { shown: 30, actual: 0 },
        ],
      },
    ],
    ['/how/shown', 'air-temperature', { kind: 'ice-point', shown: 200 }],
  ])('is refused at %s where it cannot be: %s', (pointer, quantity, how) => {
    expect(calibrationFault(quantity, how)).toMatchObject({ pointer });
  });
});
