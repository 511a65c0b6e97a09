import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addCure,
  type CureModel,
  type CureSample,
  EMPTY_CURE,
  integrateCure,
} from '../../daemon/science/cure.ts';
import {
  arrheniusRate,
  cappedSegmentEquivalentHours,
  degreeHoursPerEquivalentHour,
  nurseSaulRate,
  type RateModel,
  rateAt,
  segmentEquivalentHours,
} from '../../daemon/science/cure-rate.ts';
import { ARRHENIUS_FACTORS } from '../published/arrhenius-factors.ts';
import {
  ARRHENIUS_EXAMPLES,
  NURSE_SAUL_EXAMPLES,
  NURSE_SAUL_INVERSE,
  type Steady,
} from '../published/maturity-examples.ts';

const HOUR = 3_600_000;
const LINEAR: CureModel = { rate: 'nurse-saul', datumC: 5, maxGapHours: 3 };
const ARRHENIUS: CureModel = {
  rate: 'arrhenius',
  activationEnergyJPerMol: 50_000,
  referenceC: 20,
  maxGapHours: 3,
};

/** Adds steady stretches, each held flat to its end. */
function steadyHours(model: RateModel, stretches: readonly Steady[]): number {
  let at = 0;
  let sum = 0;
  for (const { hours, tempC } of stretches) {
    sum += segmentEquivalentHours(model, at, tempC, at + hours * HOUR, tempC);
    at += hours * HOUR;
  }
  return sum;
}

/** Midpoint sum with so many steps that it stands for the integral. */
function fineSum(rate: (tempC: number) => number, from: number, to: number, steps: number): number {
  let sum = 0;
  for (let step = 0; step < steps; step++) sum += rate(from + ((to - from) * (step + 0.5)) / steps);
  return sum / steps;
}

describe('maturity worked examples', () => {
  it.each(NURSE_SAUL_EXAMPLES)(
    '$id gives $degreeHours °C·h over a datum of $datumC °C',
    (example) => {
      const model = { rate: 'nurse-saul', datumC: example.datumC } as const;
      const sum = steadyHours(model, example.stretches) * degreeHoursPerEquivalentHour(model);
      expect(sum).toBeCloseTo(example.degreeHours, 8);
    },
  );

  it('M4 and M5: 3,500 °C·h take 152 h at 23 °C, or 72 h at 49 °C', () => {
    const model = { rate: 'nurse-saul', datumC: 0 } as const;
    const perHour = rateAt(model, NURSE_SAUL_INVERSE.atC) * degreeHoursPerEquivalentHour(model);
    expect(Math.round(NURSE_SAUL_INVERSE.degreeHours / perHour)).toBe(
      NURSE_SAUL_INVERSE.printedHours,
    );
    const meanC = NURSE_SAUL_INVERSE.degreeHours / NURSE_SAUL_INVERSE.inHours;
    expect(Math.round(meanC)).toBe(NURSE_SAUL_INVERSE.printedMeanC);
    const reached = rateAt(model, meanC) * degreeHoursPerEquivalentHour(model) * 72;
    expect(reached).toBeCloseTo(NURSE_SAUL_INVERSE.degreeHours, 8);
  });

  it.each(ARRHENIUS_EXAMPLES)('$id gives $equivalentHours h at 20 °C', (example) => {
    const { activationEnergyJPerMol, stretches, equivalentHours } = example;
    const model = { rate: 'arrhenius', activationEnergyJPerMol, referenceC: 20 } as const;
    expect(steadyHours(model, stretches)).toBeCloseTo(equivalentHours, 4);
  });
});

describe('relative rates', () => {
  it.each(ARRHENIUS_FACTORS)('at $kJPerMol kJ/mol are those of the table', (row) => {
    const model = { activationEnergyJPerMol: row.kJPerMol * 1000, referenceC: 20 };
    const rate = (tempC: number) => arrheniusRate(tempC, model);
    [5, 10, 15, 20].forEach((cool, column) => {
      expect(Math.abs(rate(cool + 10) / rate(cool) - (row.q10[column] as number))).toBeLessThan(
        0.00051,
      );
    });
    [5, 10, 25, 30].forEach((tempC, column) => {
      expect(Math.abs(rate(tempC) - (row.relative[column] as number))).toBeLessThan(0.00051);
    });
    const slope = (rate(20.001) - rate(19.999)) / 0.002;
    expect(20 - 1 / slope).toBeCloseTo(row.tangentDatumC, 2);
  });

  it('are 1 at 20 °C; Nurse–Saul stops at the datum where Arrhenius only slows', () => {
    expect(nurseSaulRate(20, { datumC: 5 })).toBe(1);
    expect(nurseSaulRate(5, { datumC: 5 })).toBe(0);
    expect(nurseSaulRate(-10, { datumC: 5 })).toBe(0);
    expect(rateAt(ARRHENIUS, 20)).toBe(1);
    expect(rateAt(ARRHENIUS, 5)).toBeCloseTo(0.331, 3);
  });
});

describe('one straight-line stretch', () => {
  it('that crosses the datum counts only the triangle above it', () => {
    // 0 → 10 °C in an hour over a datum of 5: half an hour at a mean of 2.5 K
    expect(segmentEquivalentHours(LINEAR, 0, 0, HOUR, 10) * 15).toBeCloseTo(1.25, 12);
    expect(segmentEquivalentHours(LINEAR, 0, 10, HOUR, 0) * 15).toBeCloseTo(1.25, 12);
    expect(segmentEquivalentHours(LINEAR, 0, -10, HOUR, 5)).toBe(0);
  });

  it.each([
    [20_000, -90, 150],
    [50_000, -90, 150],
    [50_000, 5, 35],
    [70_000, -20, 40],
    [200_000, -90, 150],
    [50_000, 18, 18.7],
  ])('by Arrhenius at %d J/mol from %d to %d °C is a fine sum to 1e-7', (energy, from, to) => {
    const model = { rate: 'arrhenius', activationEnergyJPerMol: energy, referenceC: 20 } as const;
    const fine = fineSum((tempC) => rateAt(model, tempC), from, to, 200_000);
    expect(Math.abs(segmentEquivalentHours(model, 0, from, HOUR, to) / fine - 1)).toBeLessThan(
      1e-7,
    );
  });

  it('above a cap is clipped exactly at the crossing', () => {
    // 20 → 36 °C capped at 28: half at a mean of 24 °C, half at 28 °C
    const capped = cappedSegmentEquivalentHours(LINEAR, 28, 0, 20, HOUR, 36);
    expect(capped * 15).toBeCloseTo((24 - 5 + 28 - 5) / 2, 12);
    expect(cappedSegmentEquivalentHours(LINEAR, 28, 0, 30, HOUR, 36) * 15).toBeCloseTo(23, 12);
    const fine = fineSum((tempC) => rateAt(ARRHENIUS, Math.min(28, tempC)), 20, 36, 200_000);
    const ours = cappedSegmentEquivalentHours(ARRHENIUS, 28, 0, 20, HOUR, 36);
    expect(Math.abs(ours / fine - 1)).toBeLessThan(1e-7);
  });

  const temperature = fc.double({ min: -90, max: 150, noNaN: true });
  const model = fc.oneof(
    fc.record({
      rate: fc.constant('nurse-saul' as const),
      datumC: fc.double({ min: -20, max: 15, noNaN: true }),
    }),
    fc.record({
      rate: fc.constant('arrhenius' as const),
      activationEnergyJPerMol: fc.double({ min: 20_000, max: 100_000, noNaN: true }),
      referenceC: fc.double({ min: 15, max: 25, noNaN: true }),
    }),
  );

  it('split anywhere gives the same sum', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(model, temperature, temperature, share, (rate, from, to, cut) => {
        const middle = from + cut * (to - from);
        const whole = segmentEquivalentHours(rate, 0, from, HOUR, to);
        const parts =
          segmentEquivalentHours(rate, 0, from, cut * HOUR, middle) +
          segmentEquivalentHours(rate, cut * HOUR, middle, HOUR, to);
        expect(Math.abs(parts - whole)).toBeLessThanOrEqual(1e-7 * whole + 1e-12);
      }),
    );
  });

  it('capped is never more than uncapped, and the same when the cap is out of reach', () => {
    fc.assert(
      fc.property(model, temperature, temperature, temperature, (rate, from, to, cap) => {
        const whole = segmentEquivalentHours(rate, 0, from, HOUR, to);
        const capped = cappedSegmentEquivalentHours(rate, cap, 0, from, HOUR, to);
        expect(capped).toBeLessThanOrEqual(whole * (1 + 1e-7));
        expect(cappedSegmentEquivalentHours(rate, 150, 0, from, HOUR, to)).toBe(whole);
      }),
    );
  });
});

describe('a run of readings', () => {
  const steady = (tempC: number, hours: number): CureSample[] =>
    Array.from({ length: hours + 1 }, (_, hour) => ({ at: hour * HOUR, tempC }));

  it('at a steady 20 °C adds 15 °C·h an hour, so two days are 720', () => {
    const sum = integrateCure(steady(20, 48), LINEAR);
    expect(sum.degreeHours).toBeCloseTo(720, 9);
    expect(sum.equivalentHours).toBeCloseTo(48, 9);
    expect(sum.coveredHours).toBeCloseTo(48, 9);
    expect(sum.gapHours).toBe(0);
  });

  it('shows an Arrhenius sum as 15 °C·h per hour at the reference', () => {
    expect(integrateCure(steady(20, 48), ARRHENIUS).degreeHours).toBeCloseTo(720, 9);
    expect(integrateCure(steady(10, 24), ARRHENIUS).equivalentHours).toBeCloseTo(11.6298, 4);
  });

  it('with a gap longer than believed adds it to the high sum only', () => {
    const samples = [
      { at: 0, tempC: 20 },
      { at: 3 * HOUR, tempC: 20 },
      { at: 7 * HOUR, tempC: 25 },
    ];
    const sum = integrateCure(samples, LINEAR);
    expect(sum.degreeHoursLow).toBeCloseTo(45, 9);
    expect(sum.degreeHours).toBe(sum.degreeHoursLow);
    expect(sum.degreeHoursHigh).toBeCloseTo(45 + 4 * 17.5, 9);
    expect(sum.coveredHours).toBe(3);
    expect(sum.gapHours).toBe(4);
  });

  it('averages readings of equal time', () => {
    const samples = [
      { at: 0, tempC: 18 },
      { at: 0, tempC: 22 },
      { at: HOUR, tempC: 20 },
    ];
    expect(integrateCure(samples, LINEAR).degreeHours).toBeCloseTo(15, 12);
  });

  it('of fewer than two times is nothing', () => {
    expect(integrateCure([], LINEAR)).toEqual(EMPTY_CURE);
    expect(integrateCure([{ at: 5, tempC: 20 }], LINEAR)).toEqual(EMPTY_CURE);
  });

  const sample = fc.record({
    at: fc.integer({ min: 0, max: 200 }).map((step) => step * 20 * 60_000),
    tempC: fc.double({ min: -30, max: 60, noNaN: true }),
    rhPercent: fc.option(fc.double({ min: 0, max: 100, noNaN: true }), { nil: undefined }),
  });
  const samples = fc.array(sample, { maxLength: 60 });
  const models = fc.constantFrom<CureModel>(LINEAR, ARRHENIUS, {
    ...LINEAR,
    humidity: [
      { at: 60, factor: 1 },
      { at: 95, factor: 0.5 },
    ],
    film: 0.8,
  });

  it('gives the same sum in any order', () => {
    fc.assert(
      fc.property(samples, models, fc.integer(), (run, model, seed) => {
        const shuffled = run
          .map((value, index) => ({ value, key: Math.sin(seed + index * 12.9898) }))
          .sort((a, b) => a.key - b.key)
          .map(({ value }) => value);
        expect(integrateCure(shuffled, model)).toEqual(integrateCure(run, model));
      }),
    );
  });

  it('never has a low sum above the high sum, nor anything negative', () => {
    fc.assert(
      fc.property(samples, models, (run, model) => {
        const sum = integrateCure(run, model);
        expect(sum.degreeHoursLow).toBeLessThanOrEqual(sum.degreeHoursHigh);
        for (const value of Object.values(sum)) expect(value).toBeGreaterThanOrEqual(0);
        const times = run.map(({ at }) => at);
        const span = times.length > 0 ? (Math.max(...times) - Math.min(...times)) / HOUR : 0;
        expect(sum.coveredHours + sum.gapHours).toBeCloseTo(span, 9);
      }),
    );
  });

  it('streamed reading by reading is the same to the last bit', () => {
    fc.assert(
      fc.property(samples, models, (run, model) => {
        const ordered = [...new Map(run.map((one) => [one.at, one])).values()].sort(
          (a, b) => a.at - b.at,
        );
        let sum = EMPTY_CURE;
        for (let next = 1; next < ordered.length; next++) {
          sum = addCure(sum, model, ordered[next - 1] as CureSample, ordered[next] as CureSample);
        }
        expect(sum).toEqual(integrateCure(ordered, model));
      }),
    );
  });

  it('cut by a further reading on the straight line gives the same sum', () => {
    fc.assert(
      fc.property(
        models,
        fc.double({ min: -30, max: 60, noNaN: true }),
        fc.double({ min: -30, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.integer({ min: 1, max: 7_199_999 }),
        (model, fromC, toC, fromRh, toRh, cut) => {
          const share = cut / (2 * HOUR);
          const from = { at: 0, tempC: fromC, rhPercent: fromRh };
          const to = { at: 2 * HOUR, tempC: toC, rhPercent: toRh };
          const middle = {
            at: cut,
            tempC: fromC + share * (toC - fromC),
            rhPercent: fromRh + share * (toRh - fromRh),
          };
          const whole = integrateCure([from, to], model).degreeHours;
          const cutSum = integrateCure([from, middle, to], model).degreeHours;
          expect(Math.abs(cutSum - whole)).toBeLessThanOrEqual(1e-7 * whole + 1e-9);
        },
      ),
    );
  });
});

describe('optional factors', () => {
  const damp: CureModel = {
    ...LINEAR,
    humidity: [
      { at: 60, factor: 1 },
      { at: 100, factor: 0 },
    ],
  };

  it('scale the sum by the mean of the broken line along the stretch', () => {
    const run = (from: number, to: number) =>
      integrateCure(
        [
          { at: 0, tempC: 20, rhPercent: from },
          { at: HOUR, tempC: 20, rhPercent: to },
        ],
        damp,
      ).equivalentHours;
    expect(run(50, 50)).toBeCloseTo(1, 12);
    expect(run(80, 80)).toBeCloseTo(0.5, 12);
    expect(run(60, 100)).toBeCloseTo(0.5, 12);
    // 40 → 80 %: half of it free, the other half at a mean of 0.75
    expect(run(40, 80)).toBeCloseTo(0.875, 12);
  });

  it('change nothing where their quantity was not measured', () => {
    const run = [
      { at: 0, tempC: 20 },
      { at: HOUR, tempC: 25 },
    ];
    expect(integrateCure(run, damp)).toEqual(integrateCure(run, LINEAR));
  });

  it('of humidity and temperature together are integrated exactly, datum included', () => {
    const from = { at: 0, tempC: -5, rhPercent: 70 };
    const to = { at: HOUR, tempC: 25, rhPercent: 90 };
    const fine = fineSum(
      (share) => rateAt(LINEAR, -5 + 30 * share) * (1 - (10 + 20 * share) / 40),
      0,
      1,
      200_000,
    );
    expect(integrateCure([from, to], damp).equivalentHours).toBeCloseTo(fine, 8);
  });
});

describe('nonsense is refused by name, value and range', () => {
  it.each([
    ['tempC is NaN; allowed: -90 to 150', () => nurseSaulRate(Number.NaN, { datumC: 5 })],
    ['datumC is 20; allowed: -90 to 19.9', () => nurseSaulRate(20, { datumC: 20 })],
    ['activationEnergyJPerMol', () => rateAt({ ...ARRHENIUS, activationEnergyJPerMol: 50 }, 20)],
    ['tempC is -300; allowed', () => integrateCure([{ at: 0, tempC: -300 }], LINEAR)],
    ['at is NaN; allowed', () => integrateCure([{ at: Number.NaN, tempC: 20 }], LINEAR)],
    ['toAt is 0; allowed', () => segmentEquivalentHours(LINEAR, HOUR, 20, 0, 20)],
    [
      'maxGapHours is -1; allowed: 0 to',
      () =>
        integrateCure(
          [
            { at: 0, tempC: 20 },
            { at: 1, tempC: 20 },
          ],
          { ...LINEAR, maxGapHours: -1 },
        ),
    ],
  ])('%s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
