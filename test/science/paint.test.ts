import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boardArea,
  dryFilmThickness,
  mixture,
  stickMarks,
  wetFilmThickness,
} from '../../daemon/science/paint.ts';

describe('film thickness', () => {
  it('is 100 µm wet for a litre on 10 m²', () => {
    expect(wetFilmThickness(10)).toBe(100);
  });

  it('follows the printed relation: 71 % solids, 125 µm dry, 176 µm wet, 5.68 m²/L', () => {
    // ISO 2808 relation in a technical note, read; m²/L from it by own calculation
    expect(Math.round(125 / 0.71)).toBe(176);
    expect(dryFilmThickness(wetFilmThickness(5.68), 71)).toBeCloseTo(125, 0);
  });

  it('at 6 m²/L is 60 µm dry for a paint of 36 % solids', () => {
    // public building descriptions: 60 µm dry primer is about 1 L per 6 m², read
    expect(dryFilmThickness(wetFilmThickness(6), 36)).toBeCloseTo(60, 10);
  });
});

describe('a mixture by parts', () => {
  it('of 35 : 50 : 15 for 20 m² at 10 m²/L is 0.7, 1.0 and 0.3 L', () => {
    const { totalL, partsL } = mixture({ areaM2: 20, spreadingM2PerL: 10, parts: [35, 50, 15] });
    expect(totalL).toBe(2);
    expect(partsL[0]).toBeCloseTo(0.7, 12);
    expect(partsL[1]).toBeCloseTo(1.0, 12);
    expect(partsL[2]).toBeCloseTo(0.3, 12);
  });

  it('with a tenth lost in pot and brush leaves exactly the paint that the boards need', () => {
    const { totalL } = mixture({ areaM2: 18, spreadingM2PerL: 10, parts: [1], lossPercent: 10 });
    expect(totalL * 0.9).toBeCloseTo(1.8, 12);
  });

  it('adds up to the total whatever the scale of the parts', () => {
    const parts = fc
      .array(fc.double({ min: 0, max: 1000, noNaN: true }), { minLength: 1, maxLength: 5 })
      .filter((list) => list.some((part) => part > 1e-6));
    fc.assert(
      fc.property(parts, fc.double({ min: 0.1, max: 500, noNaN: true }), (list, areaM2) => {
        const { totalL, partsL } = mixture({ areaM2, spreadingM2PerL: 10, parts: list });
        const sum = partsL.reduce((a, b) => a + b, 0);
        expect(Math.abs(sum - totalL)).toBeLessThan(1e-9 * totalL);
      }),
    );
  });
});

describe('marks on the stick', () => {
  it('stand where the cylinder holds each part: 1 L in a 100 mm pot is 127.3 mm deep', () => {
    const marks = stickMarks({ potDiameterMm: 100, volumeL: 1, parts: [35, 50, 15] });
    expect(marks).toHaveLength(3);
    expect(marks[2]).toBeCloseTo(1e6 / (Math.PI * 2500), 9);
    expect(marks[0]).toBeCloseTo(0.35 * 127.324, 3);
    expect(marks[1]).toBeCloseTo(0.85 * 127.324, 3);
  });

  it('repeat themselves for a part of nothing', () => {
    const [paint, oil] = stickMarks({ potDiameterMm: 100, volumeL: 1, parts: [100, 0, 15] });
    expect(oil).toBe(paint);
  });
});

describe('area of boards', () => {
  const board = { count: 10, lengthMm: 4000, widthMm: 150, thicknessMm: 22 };

  it('of the face alone is length times width', () => {
    expect(boardArea({ ...board, faces: ['face'] })).toBeCloseTo(6, 12);
  });

  it('all round is the surface of the box', () => {
    const all = boardArea({ ...board, faces: ['face', 'back', 'edges', 'ends'] });
    expect(all).toBeCloseTo((10 * 2 * (4000 * 150 + 4000 * 22 + 150 * 22)) / 1e6, 12);
  });

  it('counts each side once', () => {
    expect(boardArea({ ...board, faces: ['face', 'face'] })).toBeCloseTo(6, 12);
  });
});

describe('nonsense is refused by name, value and range', () => {
  it.each([
    ['spreadingM2PerL is 0; allowed: above 0', () => wetFilmThickness(0)],
    ['volumeSolidsPercent is 101; allowed: 0 to 100', () => dryFilmThickness(100, 101)],
    ['areaM2 is -1; allowed: 0', () => mixture({ areaM2: -1, spreadingM2PerL: 10, parts: [1] })],
    ['parts is empty', () => mixture({ areaM2: 1, spreadingM2PerL: 10, parts: [] })],
    ['parts is 0 : 0', () => mixture({ areaM2: 1, spreadingM2PerL: 10, parts: [0, 0] })],
    ['parts[1] is -1', () => mixture({ areaM2: 1, spreadingM2PerL: 10, parts: [1, -1] })],
    [
      'potDiameterMm is NaN',
      () => stickMarks({ potDiameterMm: Number.NaN, volumeL: 1, parts: [1] }),
    ],
    [
      'count is 1.5; allowed: whole numbers',
      () => boardArea({ count: 1.5, lengthMm: 1, widthMm: 1, thicknessMm: 1, faces: ['face'] }),
    ],
  ])('%s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
