import { describe, expect, it } from 'vitest';
import { type SolventQuestion, solventCautions } from '../../daemon/rules/solvent-air.ts';

const primer: SolventQuestion = {
  mixture: { paint: 35, rawLinseedOil: 50, turpentine: 15 },
  mixedL: 6,
  hoursSince: 2,
  volumeM3: 60,
  airChangesPerHour: 1,
  localLimitPpm: null,
};
const said = (more: Partial<SolventQuestion> = {}) => solventCautions({ ...primer, ...more });
const codes = (more: Partial<SolventQuestion> = {}) => said(more).map((caution) => caution.code);

describe('the solvent of a fresh coat', () => {
  it('is 15 parts in 100 of what was used', () => {
    expect(said()[0]?.text).toMatch(/^About 0.9 L of turpentine/);
  });

  // 0.9 L of 0.86 kg/L at once in 60 m³ would be 12,900 mg/m³, by 5.57 mg/m³ per ppm (NIOSH Pocket
  // Guide 0648: 5.56) 2,300 ppm; spread over hours with one change an hour it must stay well below.
  it('is compared with the lowest published limit, 20 ppm, and says what air it would take', () => {
    expect(codes()).toEqual(
      expect.arrayContaining(['solvent-leaves', 'solvent-estimate', 'solvent-air-needed']),
    );
    expect(said()[1]?.text).toMatch(/lowest published limit is 20 ppm/);
    const peak = Number(/(\d+) ppm at the most/.exec(said()[1]?.text ?? '')?.[1]);
    expect(peak).toBeGreaterThan(20);
    expect(peak).toBeLessThan(2300);
  });

  it('is compared with the local limit where one is set', () => {
    expect(said({ localLimitPpm: 50 })[1]?.text).toMatch(/limit set here is 50 ppm/);
  });

  // NIOSH: immediate danger at 800 ppm is a tenth of the lower explosive limit of 0.8 %.
  it('is loud where a tenth of the explosive limit is near', () => {
    expect(codes({ volumeM3: 20, airChangesPerHour: 0.1, mixedL: 20 })).toContain(
      'solvent-explosive',
    );
    expect(codes({ volumeM3: 600, airChangesPerHour: 2 })).not.toContain('solvent-explosive');
  });

  it('is taken for a closed-up room where nobody knows the air changes', () => {
    expect(said({ airChangesPerHour: null })[1]?.text).toMatch(/only 0.5 times an hour/);
  });

  it('is named without figures outdoors, and not at all without turpentine or after two days', () => {
    expect(codes({ volumeM3: null })).toEqual(['solvent-leaves']);
    expect(said({ mixture: { paint: 100, rawLinseedOil: 0, turpentine: 0 } })).toEqual([]);
    expect(said({ hoursSince: 49 })).toEqual([]);
  });

  it('is never called safe', () => {
    const words = said({ volumeM3: 5000, airChangesPerHour: 20 }).map((one) => one.text);
    expect(words.join(' ')).not.toMatch(/safe/i);
  });
});
