import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  estimatedBoardLagHours,
  estimatedBoardMoisture,
} from '../../daemon/science/board-moisture.ts';
import { lagWeights } from '../../daemon/science/lagged-response.ts';
import { equilibriumMoistureContent } from '../../daemon/science/wood.ts';

const HOUR = 3_600_000;

describe('a board without a probe', () => {
  it('lags four times as long when twice as thick, or with one face closed', () => {
    const thin = estimatedBoardLagHours({ thicknessMm: 22, openFaces: 2 });
    expect(estimatedBoardLagHours({ thicknessMm: 44, openFaces: 2 }) / thin).toBeCloseTo(4, 12);
    expect(estimatedBoardLagHours({ thicknessMm: 22, openFaces: 1 }) / thin).toBeCloseTo(4, 12);
    expect(
      estimatedBoardLagHours({ thicknessMm: 22, openFaces: 2, coatingFactor: 3 }) / thin,
    ).toBeCloseTo(3, 12);
  });

  it('of 22 mm in stick takes a matter of days, not hours or months', () => {
    // common practice, no source
    const hours = estimatedBoardLagHours({ thicknessMm: 22, openFaces: 2 });
    expect(hours).toBeGreaterThan(24);
    expect(hours).toBeLessThan(24 * 7);
  });

  it('in steady air goes 63 % of its way in one lag and ends at equilibrium', () => {
    const air = (hours: number) =>
      Array.from({ length: hours + 1 }, (_, hour) => ({
        at: hour * HOUR,
        tempC: 20,
        rhPercent: 65,
      }));
    const end = equilibriumMoistureContent(20, 65);
    expect(estimatedBoardMoisture(20, air(50), 50)).toBeCloseTo(end + (20 - end) / Math.E, 9);
    expect(estimatedBoardMoisture(20, air(2000), 50)).toBeCloseTo(end, 9);
  });

  it('stays between the wettest and driest of its start and the equilibria it has seen', () => {
    const reading = fc.record({
      tempC: fc.double({ min: -10, max: 35, noNaN: true }),
      rhPercent: fc.double({ min: 20, max: 98, noNaN: true }),
    });
    fc.assert(
      fc.property(
        fc.array(reading, { minLength: 1, maxLength: 30 }),
        fc.double({ min: 6, max: 30, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        (readings, start, lag) => {
          const air = readings.map((one, index) => ({ ...one, at: index * HOUR }));
          const all = air.map((one) => equilibriumMoistureContent(one.tempC, one.rhPercent));
          const moisture = estimatedBoardMoisture(start, air, lag);
          expect(moisture).toBeLessThanOrEqual(Math.max(start, ...all) + 1e-9);
          expect(moisture).toBeGreaterThanOrEqual(Math.min(start, ...all) - 1e-9);
        },
      ),
    );
  });

  it.each([
    ['thicknessMm is 0', () => estimatedBoardLagHours({ thicknessMm: 0, openFaces: 2 })],
    ['startPercent is 50; allowed: 0 to 40', () => estimatedBoardMoisture(50, [], 10)],
    ['lagHours is 0; allowed: above 0', () => estimatedBoardMoisture(12, [], 0)],
    [
      'at is 0; allowed: not before 1',
      () =>
        estimatedBoardMoisture(
          12,
          [
            { at: 1, tempC: 20, rhPercent: 50 },
            { at: 0, tempC: 20, rhPercent: 50 },
          ],
          10,
        ),
    ],
  ])('refuses nonsense: %s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});

describe('a first-order lag', () => {
  it('weighs old output and straight input so that the weights add to 1 and follow the equation', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 50, noNaN: true }), (x) => {
        const { kept, start, end } = lagWeights(x);
        expect(kept + start + end).toBeCloseTo(1, 12);
        expect(Math.min(kept, start, end)).toBeGreaterThanOrEqual(-1e-15);
      }),
    );
    // input rising 0 → 1 over one time constant: 1 − (1 − e^−1) = e^−1
    expect(lagWeights(1).end).toBeCloseTo(Math.exp(-1), 12);
    expect(lagWeights(1e-6).end).toBeCloseTo(5e-7, 12);
  });
});
