import { describe, expect, it } from 'vitest';
import { measure } from '../../sensors/shed/physics/instrument.ts';
import { seededRandom } from '../../sensors/shed/physics/random.ts';

describe('a cheap sensor', () => {
  it('shows the truth with its bias, in its own steps', () => {
    const random = seededRandom(1);
    expect(measure({ bias: 0.3, noise: 0, step: 0.1 }, 20.02, random)).toBe(20.3);
    expect(measure({ bias: 0, noise: 0, step: 0.5 }, 55.3, random)).toBe(55.5);
  });

  it('stays within its range', () => {
    const humidity = { bias: 3, noise: 0.5, step: 0.5, lowest: 0, highest: 100 };
    expect(measure(humidity, 99, seededRandom(1))).toBe(100);
  });

  it('scatters about truth plus bias', () => {
    const random = seededRandom(2);
    const shown = Array.from({ length: 5000 }, () =>
      measure({ bias: 0.5, noise: 0.2, step: 0.001 }, 20, random),
    );
    const mean = shown.reduce((sum, each) => sum + each, 0) / shown.length;
    expect(Math.abs(mean - 20.5)).toBeLessThan((5 * 0.2) / Math.sqrt(5000));
  });
});
