import { describe, expect, it } from 'vitest';
import { keepingWords } from '../../daemon/rules/keeping-paint.ts';
import { leftOverL } from '../../daemon/science/paint-quantity.ts';

const kept = (mixture: Parameters<typeof keepingWords>[0]) =>
  keepingWords(mixture)
    .map(({ text }) => text)
    .join(' ');

describe('what is left in the pot', () => {
  it('is what was mixed less what was used', () => {
    expect(leftOverL(6.5, 5.25)).toBe(1.25);
    expect(() => leftOverL(5, 6)).toThrow(RangeError);
  });

  // Common practice, no source.
  it('is kept in little air, closed, and never goes down a drain', () => {
    const plain = kept({ paint: 1, rawLinseedOil: 0, turpentine: 0 });
    const thinned = kept({ paint: 35, rawLinseedOil: 50, turpentine: 15 });
    expect(plain).toMatch(/small tin/);
    expect(plain).toMatch(/hazardous waste/);
    expect(plain).not.toMatch(/heaters/);
    expect(thinned).toMatch(/away from flame and heaters/);
    expect(`${plain} ${thinned}`).not.toMatch(/\bsafe/i);
  });
});
