import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Divider, END_SHARE, probeResistance } from '../../sensors/attached/divider.ts';

const PLAIN: Divider = {
  supplyV: 3.3,
  referenceOhms: 10e6,
  seriesOhms: 0,
  probeTo: 'ground',
  inputOhms: null,
};

/** The circuit solved the other way, by the current that flows. */
function middleV(probeOhms: number, divider: Divider): number {
  const { supplyV, referenceOhms, seriesOhms, probeTo, inputOhms } = divider;
  const probeLeg = probeOhms + seriesOhms;
  const [upper, bare] =
    probeTo === 'ground' ? [referenceOhms, probeLeg] : [probeLeg, referenceOhms];
  const lower = inputOhms === null ? bare : (bare * inputOhms) / (bare + inputOhms);
  const currentA = supplyV / (upper + lower);
  return currentA * lower;
}

describe('two screws and a divider', () => {
  it('give the reference resistance at half of the supply, whichever way round', () => {
    expect(probeResistance(1.65, PLAIN)).toMatchObject({ kind: 'value', value: 10e6 });
    const turned = { ...PLAIN, probeTo: 'supply' } as const;
    expect(probeResistance(1.65, turned)).toMatchObject({ kind: 'value', value: 10e6 });
    // worked by hand: 1.1 V of 3.3 V leave 2.2 V on 10 MΩ, 0.22 µA, so 5 MΩ to ground, 20 MΩ to supply
    expect(ohms(probeResistance(1.1, PLAIN))).toBeCloseTo(5e6, 3);
    expect(ohms(probeResistance(1.1, turned))).toBeCloseTo(20e6, 3);
  });

  it('leave out the protection resistor and what the converter itself draws', () => {
    expect(ohms(probeResistance(1.65, { ...PLAIN, seriesOhms: 100e3 }))).toBeCloseTo(9.9e6, 3);
    // a probe of 20 MΩ beside an input of 20 MΩ looks like 10 MΩ
    expect(ohms(probeResistance(1.65, { ...PLAIN, inputOhms: 20e6 }))).toBeCloseTo(20e6, 3);
  });

  it('give back the resistance of any probe they can tell', () => {
    const divider = fc.record({
      supplyV: fc.double({ min: 1, max: 5, noNaN: true }),
      referenceOhms: fc.double({ min: 1e4, max: 1e8, noNaN: true }),
      seriesOhms: fc.double({ min: 0, max: 1e4, noNaN: true }),
      probeTo: fc.constantFrom('ground' as const, 'supply' as const),
      inputOhms: fc.option(fc.double({ min: 1e8, max: 1e10, noNaN: true })),
    });
    fc.assert(
      fc.property(divider, fc.double({ min: -1.5, max: 1.5, noNaN: true }), (made, power) => {
        const probe = made.referenceOhms * 10 ** power;
        const share = middleV(probe, made) / made.supplyV;
        fc.pre(share > 1.5 * END_SHARE && share < 1 - 1.5 * END_SHARE);
        expect(ohms(probeResistance(middleV(probe, made), made)) / probe).toBeCloseTo(1, 6);
      }),
    );
  });

  it('give no number where leads touch or hang free, nor outside the supply', () => {
    const turned = { ...PLAIN, probeTo: 'supply' } as const;
    for (const voltage of [0, 0.001, 0.03, -0.01, 3.28, 3.3, 3.31, 5, -1, Number.NaN]) {
      expect(probeResistance(voltage, PLAIN).kind).toBe('no-value');
      expect(probeResistance(voltage, turned).kind).toBe('no-value');
    }
    expect(reason(probeResistance(3.3, PLAIN))).toContain('lost its wire');
    expect(reason(probeResistance(3.3, turned))).toContain('leads touch');
    expect(reason(probeResistance(5, PLAIN))).toContain('supplyV');
    // all that is measured is the protection resistor: the leads touch behind it
    expect(probeResistance(1.65, { ...PLAIN, seriesOhms: 10e6 }).kind).toBe('no-value');
  });
});

type Result = ReturnType<typeof probeResistance>;
const ohms = (result: Result) => (result.kind === 'value' ? result.value : Number.NaN);
const reason = (result: Result) => (result.kind === 'no-value' ? result.because : '');
