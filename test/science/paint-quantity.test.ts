import { describe, expect, it } from 'vitest';
import {
  boardsPerLitre,
  DENSITY_KG_PER_L,
  partMassesG,
  partsWithAdded,
} from '../../daemon/science/paint-quantity.ts';

describe('paint by parts and mass', () => {
  it('with 15 % turpentine added is 100 : 15, not 85 : 15', () => {
    expect(partsWithAdded([1], 15)).toEqual([100, 15]);
    const added = partsWithAdded([3, 1], 20);
    expect(added[0]).toBeCloseTo(75, 12);
    expect(added[2]).toBe(20);
  });

  it('weighs 930 g a litre of linseed oil and 860 g a litre of turpentine', () => {
    const { linseedOil, turpentine } = DENSITY_KG_PER_L;
    // 0.925 at 25 °C to 0.934 at 15 °C (safety data sheet; Gardner 1911)
    expect(linseedOil).toBeGreaterThan(0.925);
    expect(linseedOil).toBeLessThan(0.934);
    expect(partMassesG([1, 0.5], [linseedOil, turpentine])).toEqual([930, 430]);
  });

  it('goes round so many boards a litre', () => {
    const board = { lengthMm: 4000, widthMm: 150, thicknessMm: 22, faces: ['face'] as const };
    expect(boardsPerLitre(board, 9)).toBeCloseTo(15, 12);
  });

  it.each([
    ['addedPercent is -5; allowed: 0 to 1000', () => partsWithAdded([1], -5)],
    ['densitiesKgPerL has 2 entries; allowed: 1', () => partMassesG([1], [1, 2])],
    ['densitiesKgPerL[0] is 0; allowed: above 0', () => partMassesG([1], [0])],
    [
      'faces is empty',
      () => boardsPerLitre({ lengthMm: 1, widthMm: 1, thicknessMm: 1, faces: [] }, 9),
    ],
  ])('refuses nonsense: %s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
