import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stickMarks } from '../../daemon/science/paint.ts';
import { potVolume, taperedStickMarks } from '../../daemon/science/tapered-pot.ts';

const BUCKET = { bottomDiameterMm: 200, topDiameterMm: 260, heightMm: 250 };

describe('a tapered bucket', () => {
  it('holds what a truncated cone holds', () => {
    // π·h/12·(D² + D·d + d²)
    expect(potVolume(BUCKET)).toBeCloseTo(
      (Math.PI * 250 * (200 ** 2 + 200 * 260 + 260 ** 2)) / 12e6,
      9,
    );
  });

  it('full to the brim has its last mark at its height', () => {
    expect(taperedStickMarks(BUCKET, potVolume(BUCKET), [35, 50, 15])[2]).toBeCloseTo(250, 6);
  });

  it('has marks that hold the volumes they stand for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 400, noNaN: true }),
        fc.double({ min: 50, max: 400, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (bottomDiameterMm, topDiameterMm, fill) => {
          const pot = { bottomDiameterMm, topDiameterMm, heightMm: 300 };
          const litres = fill * potVolume(pot);
          const marks = taperedStickMarks(pot, litres, [1, 2]);
          const widthAt = (mm: number) =>
            bottomDiameterMm + ((topDiameterMm - bottomDiameterMm) * mm) / 300;
          const upTo = (mm: number) =>
            potVolume({ bottomDiameterMm, topDiameterMm: widthAt(mm), heightMm: mm });
          expect(upTo(marks[0] ?? 0)).toBeCloseTo(litres / 3, 6);
          expect(upTo(marks[1] ?? 0)).toBeCloseTo(litres, 6);
        },
      ),
    );
  });

  it('that is straight has the marks of a straight-sided pot', () => {
    const straight = { bottomDiameterMm: 100, topDiameterMm: 100, heightMm: 200 };
    const marks = taperedStickMarks(straight, 1, [35, 50, 15]);
    stickMarks({ potDiameterMm: 100, volumeL: 1, parts: [35, 50, 15] }).forEach((mark, index) => {
      expect(marks[index]).toBeCloseTo(mark, 6);
    });
  });

  it.each([
    ['volumeL is 20; allowed: 0 to 10.4', () => taperedStickMarks(BUCKET, 20, [1])],
    ['heightMm is 0; allowed: above 0', () => potVolume({ ...BUCKET, heightMm: 0 })],
  ])('refuses nonsense: %s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
