import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountsOf, enoughInTins, litresUsed, mixingSteps, potOf } from '../../daemon/rules/pot.ts';

const primer = [35, 50, 15];
/** A straight pot 20 cm wide: 1 cm of it holds π · 10² = 314.16 mL (by hand). */
const straight = { bottomMm: 200 };
const noDensity = { paintKgPerL: null };

describe('one pot of primer, 2 L in a straight pot 20 cm wide', () => {
  const pot = potOf(2, primer, straight, noDensity);
  // By hand: 2 L of 35 : 50 : 15 is 0.7 + 1.0 + 0.3 L; marks at 700, 1,700, 2,000 mL over 314.16 mL/cm.
  it('has its marks at 2.2, 5.4 and 6.4 cm', () => {
    expect(pot.marks.map(({ stickCm }) => stickCm)).toEqual([2.2, 5.4, 6.4]);
  });
  it('holds 700, 1,000 and 300 mL', () => {
    expect(pot.marks.map(({ millilitres }) => millilitres)).toEqual([700, 1000, 300]);
  });
  // Linseed oil 0.93 kg/L (Gardner 1911 and a safety data sheet), turpentine 0.86 (NIOSH 0648).
  it('weighs 1,050, 930 and 258 g, the paint by an assumed density that says so', () => {
    expect(pot.marks.map(({ grams }) => grams)).toEqual([1050, 930, 258]);
    expect(pot.marks[0]?.densityFrom).toMatch(/assumption/);
    expect(pot.marks[1]?.densityFrom).toMatch(/published/);
  });
  it('weighs the paint by the density on its tin where that is given', () => {
    const [paint] = potOf(2, primer, straight, { paintKgPerL: 1.62 }).marks;
    expect(paint).toMatchObject({ grams: 1134, densityFrom: 'as given' });
  });
  it('takes the steps in the order of the marks, turpentine last', () => {
    const mixture = { paint: 35, rawLinseedOil: 50, turpentine: 15 };
    const steps = mixingSteps(mixture, pot).map(({ text }) => text);
    expect(steps[1]).toBe('Pour paint until the stick is wet to 2.2 cm (700 mL, 1050 g).');
    expect(steps[3]).toMatch(/^Pour turpentine .* 6\.4 cm/);
    expect(steps.join(' ')).toMatch(/any flame or spark/);
  });
});

describe('more than a pot holds', () => {
  // By hand: 200 mm wide and 250 mm high holds 7.854 L; four fifths are 6.283 L; 14 L are 3 × 4.667 L.
  it('is mixed in pots that are all alike, four fifths full at the most', () => {
    const pot = potOf(14, primer, { bottomMm: 200, heightMm: 250 }, noDensity);
    expect(pot.holdsL).toBeCloseTo(7.854, 3);
    expect(pot.fills).toBe(3);
    expect(pot.fillL).toBeCloseTo(4.667, 3);
  });
  // By hand, bucket 200 to 260 mm over 250 mm: V = π·h/12·(D²+Dd+d²) = 10.45 L; 80 % are 8.36 L.
  it('is told for a bucket that widens as well', () => {
    const bucket = { bottomMm: 200, topMm: 260, heightMm: 250 };
    const pot = potOf(8, [1, 1, 0], bucket, noDensity);
    expect(pot.holdsL).toBeCloseTo(10.446, 3);
    expect(pot.fills).toBe(1);
    // 4 L: depth h with π/3·h·(100² + 100·r + r²) = 4e6 and r = 100 + 0.12·h gives 111.7 mm.
    expect(pot.marks[0]?.stickCm).toBe(11.2);
  });
  it('asks for the height of a bucket that widens', () => {
    expect(() => potOf(8, [1, 0, 0], { bottomMm: 200, topMm: 260 }, noDensity)).toThrow(
      /potHeightMm/,
    );
  });
});

it('leaves out what is not in the mixture', () => {
  expect(amountsOf([2, 0, 0.3], null).map(({ part }) => part)).toEqual(['paint', 'turpentine']);
});

describe('enough in the tins?', () => {
  it('is answered with what is short and how many boards it reaches for', () => {
    // By hand: 3 of 4 L reach for 30 of 40 boards.
    expect(enoughInTins([4, 0, 1], [3, undefined, 2], 40)).toMatchObject({
      word: 'no',
      words: 'Not enough: 1.00 L of paint short. They reach for 30 of 40 boards.',
      missing: [{ part: 'paint', litres: 1 }],
      boards: 30,
    });
  });
  it('is yes when all is there, and not answered when nobody said', () => {
    expect(enoughInTins([4, 0, 1], [4, undefined, 1], 40)).toMatchObject({
      word: 'yes',
      boards: 40,
    });
    expect(enoughInTins([4, 0, 1], [undefined, undefined, undefined], 40)).toBeNull();
  });
});

describe('what was used', () => {
  it('is the pots less what is left in the last', () => {
    // By hand: 3 pots of 4 L, the last a quarter full: 12 − 1 = 11 L.
    expect(litresUsed({ count: 3, litresEach: 4, lastLeftPercent: 25 })).toBeCloseTo(11, 9);
    expect(litresUsed({ count: 3, litresEach: 4 })).toBe(12);
  });
  it('is told by how deep the last one stands', () => {
    // By hand: 3.2 cm in a straight pot 20 cm wide are 1.005 L.
    const used = litresUsed({ count: 2, litresEach: 4, lastLeftCm: 3.2, pot: straight });
    expect(used).toBeCloseTo(6.995, 3);
  });
  it('by depth and by marks agree in a bucket that widens', () => {
    const bucket = { bottomMm: 180, topMm: 240, heightMm: 300 };
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 7, noNaN: true }), (litres) => {
        const [mark] = potOf(litres, [1, 0, 0], bucket, { ...noDensity, fillPercent: 100 }).marks;
        const used = litresUsed({
          ...{ count: 1, litresEach: 20, pot: bucket },
          lastLeftCm: mark?.stickCm ?? 0,
        });
        // A mark is read to half a millimetre, which is up to 23 mL in this bucket.
        expect(Math.abs(20 - used - litres)).toBeLessThan(0.023);
      }),
    );
  });
  it('cannot leave more than was mixed', () => {
    expect(() => litresUsed({ count: 1, litresEach: 1, lastLeftCm: 10, pot: straight })).toThrow(
      /up to the 1 L/,
    );
  });
});
