import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cureAhead } from '../../daemon/science/cure-ahead.ts';
import { rateAt } from '../../daemon/science/cure-rate.ts';
import { type ForecastOptions, forecastReady, readyFrom } from '../../daemon/science/forecast.ts';
import { chanceAt, needCurve } from '../../daemon/science/need-curve.ts';
import { normalCdf } from '../../daemon/science/normal-distribution.ts';
import {
  type TemperatureOutlook,
  temperatureOutlook,
} from '../../daemon/science/temperature-outlook.ts';
import { fitRequirement, probabilityReached } from '../../daemon/science/touch.ts';
import { expectedDegreeHoursPerHour, meanExcess } from '../../daemon/science/uncertain-rate.ts';
import { NORMAL_QUANTILES } from '../published/normal-table.ts';

const HOUR = 3_600_000;
const DAY_HOURS = 24;
const START = Date.UTC(2026, 3, 1);
const NURSE_SAUL = { rate: 'nurse-saul', datumC: 5, maxGapHours: 3 } as const;
const ARRHENIUS = {
  rate: 'arrhenius',
  activationEnergyJPerMol: 50_000,
  referenceC: 20,
  maxGapHours: 3,
} as const;
const NOTHING = { degreeHoursLow: 0, degreeHoursHigh: 0 };
/** Two to three days at 20 °C (common practice, no source). */
const REQUIREMENT = fitRequirement([], { p10: 720, p90: 1080 });

/** Steady air, one reading every ten minutes. */
const steady = (tempC: number, hours: number) =>
  Array.from({ length: 6 * hours + 1 }, (_, i) => ({ at: START + (i * HOUR) / 6, tempC }));

/** A day with a sine of ±`swingK`, warmest at noon UTC, one reading an hour. */
const daily = (meanC: number, swingK: number, days: number) =>
  Array.from({ length: DAY_HOURS * days + 1 }, (_, i) => ({
    at: START + i * HOUR,
    tempC: meanC - swingK * Math.cos((2 * Math.PI * i) / DAY_HOURS),
  }));

function hoursAfter(history: readonly { readonly at: number }[], at: number | null): number {
  return ((at ?? Number.NaN) - (history.at(-1)?.at ?? 0)) / HOUR;
}

describe('steady air', () => {
  it.each([1, 24, 14 * DAY_HOURS])(
    'at 20 °C a coat is likely ready for recoating in two to three days, after %d h of record',
    (hours) => {
      const history = steady(20, hours);
      const { early, likely, late } = forecastReady(history, NOTHING, REQUIREMENT, {
        model: NURSE_SAUL,
      });
      expect(hoursAfter(history, likely)).toBeGreaterThan(48);
      expect(hoursAfter(history, likely)).toBeLessThan(72);
      // 15 °C·h an hour: what a constant 20 °C gives above a datum of 5 °C
      expect(hoursAfter(history, likely) / (REQUIREMENT.p50 / 15)).toBeCloseTo(1, 3);
      expect(hoursAfter(history, early)).toBeLessThan(48.1);
      expect(hoursAfter(history, late)).toBeGreaterThan(71.9);
    },
  );

  it('after two weeks of it the band is that of the need alone: 48 and 72 h', () => {
    const history = steady(20, 14 * DAY_HOURS);
    const { early, late } = forecastReady(history, NOTHING, REQUIREMENT, { model: NURSE_SAUL });
    expect(hoursAfter(history, early)).toBeCloseTo(48, 0);
    expect(hoursAfter(history, late)).toBeCloseTo(72, 0);
  });

  it.each([NURSE_SAUL, ARRHENIUS])(
    'at 10 °C it takes longer by the rate ratio ($rate)',
    (model) => {
      const likely = (tempC: number) => {
        const history = steady(tempC, 14 * DAY_HOURS);
        return hoursAfter(history, forecastReady(history, NOTHING, REQUIREMENT, { model }).likely);
      };
      const ratio = rateAt(model, 20) / rateAt(model, 10);
      // what cold air may still turn out to be counts in: a hundredth at most
      expect(Math.abs(likely(10) / likely(20) / ratio - 1)).toBeLessThan(0.01);
    },
  );

  it('below the datum it is never said to be ready, by Arrhenius it is, late', () => {
    const history = steady(0, 14 * DAY_HOURS);
    const options = { horizonHours: 21 * DAY_HOURS };
    const cold = forecastReady(history, NOTHING, REQUIREMENT, { model: NURSE_SAUL, ...options });
    expect(cold).toEqual({ early: null, likely: null, late: null });
    const slow = forecastReady(history, NOTHING, REQUIREMENT, { model: ARRHENIUS, ...options });
    const ratio = rateAt(ARRHENIUS, 20) / rateAt(ARRHENIUS, 0);
    expect(hoursAfter(history, slow.likely) / (ratio * (REQUIREMENT.p50 / 15))).toBeCloseTo(1, 1);
  });

  it('without any reading nothing is said', () => {
    expect(forecastReady([], NOTHING, REQUIREMENT, { model: NURSE_SAUL })).toEqual({
      early: null,
      likely: null,
      late: null,
    });
  });
});

describe('what is known of the coat', () => {
  const history = steady(20, 7 * DAY_HOURS);
  const at = (sum: number, options: Partial<ForecastOptions> = {}, high = sum) => {
    const soFar = { degreeHoursLow: sum, degreeHoursHigh: high };
    const ready = forecastReady(history, soFar, REQUIREMENT, { model: NURSE_SAUL, ...options });
    return {
      early: hoursAfter(history, ready.early),
      likely: hoursAfter(history, ready.likely),
      late: hoursAfter(history, ready.late),
    };
  };

  it('a gate that needs half as much is there in half the time', () => {
    expect(at(0, { scale: 0.5 }).likely / at(0).likely).toBeCloseTo(0.5, 3);
  });

  it('what has passed is given as the last reading', () => {
    const { early, likely, late } = at(950);
    expect([early, likely]).toEqual([0, 0]);
    expect(late).toBeGreaterThan(0);
  });

  it('a failed test on this coat puts all three behind it', () => {
    // still short of 900 now: nothing can be there before that, 20 h on
    const failed = at(600, { failedAt: 900 });
    expect(failed.early).toBeGreaterThan(19.5);
    expect(failed.likely).toBeGreaterThan(at(600).likely);
  });

  it('a failed test counts in the coat’s own sum, also for a gate that needs less', () => {
    const failed = at(300, { failedAt: 450, scale: 0.5 });
    expect(failed.early).toBeGreaterThan(9.5);
  });

  it('a passed test ends it: no more than that is needed', () => {
    expect(at(600, { passedAt: 750 }).late).toBeCloseTo(10, 0);
  });

  it('a gap that may have given something makes it earlier at best and no earlier at worst', () => {
    const gap = at(300, {}, 600);
    expect(gap.early).toBeLessThan(at(300).early);
    expect(gap.early).toBeGreaterThan(at(600).early);
    expect(gap.likely).toBeCloseTo(at(450).likely, 1);
    expect(gap.late).toBeGreaterThan(at(600).late);
    expect(gap.late).toBeLessThanOrEqual(at(300).late);
  });

  it('warmth above the cap does not count', () => {
    const hot = steady(34, 7 * DAY_HOURS);
    const ready = (capC?: number) =>
      hoursAfter(hot, forecastReady(hot, NOTHING, REQUIREMENT, { model: NURSE_SAUL, capC }).likely);
    expect(ready()).toBeCloseTo(REQUIREMENT.p50 / 29, 1);
    expect(ready(28)).toBeCloseTo(REQUIREMENT.p50 / 23, 1);
  });
});

describe('for any record', () => {
  const record = fc
    .record({
      meanC: fc.double({ min: -5, max: 30, noNaN: true }),
      swingK: fc.double({ min: 0, max: 10, noNaN: true }),
      days: fc.integer({ min: 1, max: 10 }),
    })
    .map(({ meanC, swingK, days }) => daily(meanC, swingK, days));
  const order = (value: number | null) => value ?? Number.POSITIVE_INFINITY;

  it('early is not after likely, nor likely after late; more cure is never later', () => {
    fc.assert(
      fc.property(record, fc.integer({ min: 0, max: 900 }), (history, sum) => {
        const outlook = temperatureOutlook(history, { horizonHours: 480 });
        if (outlook === null) throw new Error('there are readings');
        const ahead = cureAhead(outlook, NURSE_SAUL);
        const need = needCurve(REQUIREMENT);
        const ready = readyFrom(ahead, { degreeHoursLow: sum, degreeHoursHigh: sum }, need);
        const more = { degreeHoursLow: sum + 50, degreeHoursHigh: sum + 50 };
        const sooner = readyFrom(ahead, more, need);
        expect(order(ready.early)).toBeLessThanOrEqual(order(ready.likely));
        expect(order(ready.likely)).toBeLessThanOrEqual(order(ready.late));
        expect(order(sooner.likely)).toBeLessThanOrEqual(order(ready.likely));
        expect(order(sooner.late)).toBeLessThanOrEqual(order(ready.late));
      }),
      { numRuns: 40 },
    );
  });

  it('however scattered, gives times not before the last reading, or none', () => {
    const reading = fc.record({
      at: fc.integer({ min: 0, max: 40 * DAY_HOURS }).map((hour) => START + hour * HOUR),
      tempC: fc.double({ min: -90, max: 150, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 30 }), (history) => {
        const options = { model: ARRHENIUS, horizonHours: 240 };
        const ready = forecastReady(history, NOTHING, REQUIREMENT, options);
        const last = Math.max(...history.map((one) => one.at));
        for (const time of [ready.early, ready.likely, ready.late]) {
          if (time === null) continue;
          expect(time).toBeGreaterThanOrEqual(last);
          expect(time).toBeLessThanOrEqual(last + 240 * HOUR);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('the order of the readings does not matter, and a second call says the same', () => {
    fc.assert(
      fc.property(record, (history) => {
        const options = { model: NURSE_SAUL, horizonHours: 480 };
        const once = forecastReady(history, NOTHING, REQUIREMENT, options);
        expect(forecastReady([...history].reverse(), NOTHING, REQUIREMENT, options)).toEqual(once);
      }),
      { numRuns: 20 },
    );
  });
});

describe('what a stage needs, tabulated', () => {
  it('reads off the fitted probability within 0.002', () => {
    const learned = fitRequirement([{ failedAt: 600, passedAt: 700 }, { passedAt: 640 }], {
      p10: 720,
      p90: 1080,
    });
    for (const requirement of [REQUIREMENT, learned]) {
      const need = needCurve(requirement);
      for (let sum = 100; sum < 4000; sum += 37) {
        const error = chanceAt(need, Math.log(sum)) - probabilityReached(requirement, sum);
        expect(Math.abs(error)).toBeLessThan(0.002);
      }
    }
  });
});

describe('a rate that is not known for sure', () => {
  it('mean of the rectified normal at 0 is the density there, 0.3989 (Abramowitz and Stegun 1964, table 26.1, from memory)', () => {
    expect(meanExcess(0, 1)).toBeCloseTo(0.398942, 6);
  });

  it('agrees with a fine sum over the normal, capped or not', () => {
    const fine = (mean: number, spread: number, value: (x: number) => number) => {
      let sum = 0;
      const steps = 4000;
      for (let i = 0; i < steps; i++) {
        const low = -8 + (16 * i) / steps;
        const weight = normalCdf(low + 16 / steps) - normalCdf(low);
        sum += weight * value(mean + spread * (low + 8 / steps));
      }
      return sum;
    };
    for (const tempC of [-5, 3, 5, 8, 20, 30]) {
      for (const spreadK of [0.5, 3]) {
        const line = (x: number) => Math.min(28, Math.max(5, x)) - 5;
        const ours = expectedDegreeHoursPerHour(NURSE_SAUL, tempC, spreadK, 28);
        expect(ours).toBeCloseTo(fine(tempC, spreadK, line), 4);
        const curve = (x: number) => 15 * rateAt(ARRHENIUS, x);
        const warm = expectedDegreeHoursPerHour(
          ARRHENIUS,
          tempC,
          spreadK,
          Number.POSITIVE_INFINITY,
        );
        expect(warm / fine(tempC, spreadK, curve)).toBeCloseTo(1, 3);
      }
    }
  });

  it('a band comes out where the normal table puts it: ±1.2816 standard deviations of the sum', () => {
    const tenth = NORMAL_QUANTILES.find(([p]) => p === 0.9)?.[1] ?? Number.NaN;
    // 15 °C·h an hour, all hours wrong together by 1 K: the sum's error is known by hand
    const hours = 200;
    const outlook: TemperatureOutlook = {
      fromAt: 0,
      tempC: Array.from({ length: hours }, () => 20),
      errorK: Array.from({ length: hours }, () => 1),
      sumErrorKh: Array.from({ length: hours }, (_, hour) => hour + 1),
      rhPercent: null,
      rhErrorPercent: null,
    };
    const exact = { ln: [Math.log(900) - 1e-9, Math.log(900) + 1e-9], probability: [0, 1] };
    const { early, late } = readyFrom(cureAhead(outlook, NURSE_SAUL), NOTHING, exact);
    // futures are told apart in 64 equal shares: the band is good to about a share
    expect(Math.abs((early ?? 0) / HOUR - 900 / (15 + tenth))).toBeLessThan(0.25);
    expect(Math.abs((late ?? 0) / HOUR - 900 / (15 - tenth))).toBeLessThan(0.25);
  });
});
