import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hourlyMeans } from '../../daemon/science/hourly-means.ts';
import { hourlyFilter, hoursAhead } from '../../daemon/science/hourly-state.ts';
import { outdoorResponse } from '../../daemon/science/outdoor-response.ts';
import { temperatureOutlook } from '../../daemon/science/temperature-outlook.ts';
import { normalFrom, seededRandom } from './seeded-random.ts';

const HOUR = 3_600_000;
const DAY_HOURS = 24;
const START = Date.UTC(2026, 3, 1);
const at = (hour: number) => START + hour * HOUR;

/** Only the level moves: the local level model of the textbooks. */
const LEVEL_ONLY = {
  spellHours: 10,
  trendHours: 2,
  spellNoise: 0,
  trendNoise: 0,
  levelNoise: 1,
  cycleNoise: 0,
  hourNoise: 2,
  cyclePrior: 0,
  levelPrior: 1e6,
};

describe('hourly means', () => {
  const byValue = ({ value }: { readonly value: number | null }) => value;

  it('an hour of a straight line is its middle', () => {
    const line = Array.from({ length: 25 }, (_, i) => ({ at: at(i / 2), value: i / 2 }));
    expect(hourlyMeans(line, byValue, at(12), 12)).toEqual(
      Array.from({ length: 12 }, (_, hour) => expect.closeTo(hour + 0.5, 10)),
    );
  });

  it('a gap of more than three hours stays a gap; a lone reading on the hour ends the hour before', () => {
    const gappy = [0, 1, 2, 8, 9].map((hour) => ({ at: at(hour), value: 10 }));
    const means = hourlyMeans(gappy, byValue, at(9), 24);
    expect(means).toEqual([10, 10, 10, null, null, null, null, null, 10, 10]);
  });

  it('one reading is an hour, none is none', () => {
    expect(hourlyMeans([{ at: at(0), value: 7 }], byValue, at(0), 24)).toEqual([7]);
    expect(hourlyMeans([{ at: at(0), value: null }], byValue, at(0), 24)).toEqual([]);
  });

  it('lie between the least and the greatest reading, in any order of them', () => {
    const reading = fc.record({
      at: fc.integer({ min: 0, max: 72 * HOUR }).map((ms) => START + ms),
      value: fc.double({ min: -20, max: 40, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 40 }), (readings) => {
        const means = hourlyMeans(readings, byValue, at(72), 100);
        const values = readings.map(({ value }) => value);
        for (const mean of means) {
          if (mean === null) continue;
          expect(mean).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
          expect(mean).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        }
        expect(hourlyMeans([...readings].reverse(), byValue, at(72), 100)).toEqual(means);
      }),
    );
  });
});

describe('the hourly filter', () => {
  it('with a level alone settles at the textbook gain (local level model, Harvey 1989, from memory)', () => {
    const filter = hourlyFilter(LEVEL_ONLY, 0, 0);
    for (let hour = 0; hour < 200; hour++) filter.take(0);
    // steady state of P = P⁻r/(P⁻ + r), P⁻ = P + q, with q = 1 and r = 2: P = 1
    expect(filter.state().covariance[0]).toBeCloseTo(1, 9);
  });

  it('its sum of hours ahead is as uncertain as the closed form of a random walk says', () => {
    const filter = hourlyFilter(LEVEL_ONLY, 0, 0);
    for (let hour = 0; hour < 200; hour++) filter.take(0);
    const { sumVariance } = hoursAhead(LEVEL_ONLY, filter.state(), 200, 48);
    for (const h of [1, 12, 48]) {
      const walk = (h * (h + 1) * (2 * h + 1)) / 6;
      expect(sumVariance[h - 1]).toBeCloseTo(h * h * 1 + walk + 2 * h, 6);
    }
  });
});

describe('the outlook', () => {
  it('carries a daily cycle on: after a week within a tenth of its swing a day ahead', () => {
    const warm = (hour: number) => 12 + 6 * Math.sin((2 * Math.PI * hour) / DAY_HOURS);
    const history = Array.from({ length: 7 * DAY_HOURS + 1 }, (_, i) => ({
      at: at(i),
      tempC: warm(i),
    }));
    const outlook = temperatureOutlook(history);
    for (let ahead = 0; ahead < DAY_HOURS; ahead++) {
      const truth = warm(7 * DAY_HOURS + ahead + 0.5);
      expect(Math.abs((outlook?.tempC[ahead] ?? 0) - truth)).toBeLessThan(0.6);
    }
  });

  it('an hour of readings is enough, but it says how little it knows', () => {
    const hour = Array.from({ length: 61 }, (_, i) => ({ at: START + i * 60_000, tempC: 20 }));
    const weeks = Array.from({ length: 14 * DAY_HOURS }, (_, i) => ({ at: at(i), tempC: 20 }));
    const little = temperatureOutlook(hour);
    const much = temperatureOutlook(weeks);
    expect(little?.tempC[47]).toBeCloseTo(20, 6);
    expect(much?.tempC[47]).toBeCloseTo(20, 6);
    expect(little?.errorK[47]).toBeGreaterThan(1.5);
    expect(much?.errorK[47]).toBeLessThan(0.6);
  });

  it('the error of the sum grows, and no faster than every hour’s own error', () => {
    const noise = normalFrom(seededRandom(11));
    let level = 12;
    const history = Array.from({ length: 10 * DAY_HOURS }, (_, i) => {
      level += 0.5 * noise();
      return { at: at(i), tempC: level };
    });
    const outlook = temperatureOutlook(history);
    let before = 0;
    outlook?.sumErrorKh.forEach((sum, hour) => {
      expect(sum).toBeGreaterThan(before);
      expect(sum - before).toBeLessThanOrEqual((outlook.errorK[hour] ?? 0) + 1e-9);
      before = sum;
    });
  });

  it('humidity stays within 0 to 100 %, and is null where it was never read', () => {
    const history = Array.from({ length: 3 * DAY_HOURS }, (_, i) => ({
      at: at(i),
      tempC: 5,
      rhPercent: Math.min(100, 60 + i),
    }));
    const damp = temperatureOutlook(history)?.rhPercent ?? [];
    expect(Math.max(...damp)).toBeLessThanOrEqual(100);
    expect(damp[0]).toBeGreaterThan(90);
    const dry = temperatureOutlook(history.map(({ at: time, tempC }) => ({ at: time, tempC })));
    expect(dry?.rhPercent).toBeNull();
  });

  it('refuses nonsense by name', () => {
    expect(() => temperatureOutlook([{ at: START, tempC: Number.NaN }])).toThrow(/tempC is NaN/);
    expect(() => temperatureOutlook([{ at: START, tempC: 20, rhPercent: 101 }])).toThrow(
      /rhPercent/,
    );
    expect(() => temperatureOutlook([{ at: START, tempC: 20 }], { horizonHours: 0 })).toThrow(
      /horizonHours/,
    );
    expect(temperatureOutlook([])).toBeNull();
  });
});

describe('a weather forecast from outside', () => {
  const noise = normalFrom(seededRandom(5));
  const WEEKS = 14 * DAY_HOURS;
  const outdoors: number[] = [];
  let spell = 0;
  for (let hour = 0; hour < WEEKS + 120; hour++) {
    spell = 0.98 * spell + noise();
    outdoors.push(8 + spell + (hour >= WEEKS ? 8 : 0));
  }
  // a shed that follows by 0.7, 8 h behind: exact for input held over each hour
  let follows = outdoors[0] ?? 0;
  const shed = outdoors.map((value) => {
    follows += (value - follows) * -Math.expm1(-1 / 8);
    return 4 + 0.7 * follows;
  });

  it('gain and lag of a shed that follows come back', () => {
    const found = outdoorResponse(shed.slice(0, WEEKS), outdoors.slice(0, WEEKS));
    expect(found?.gain).toBeCloseTo(0.7, 1);
    expect(found?.lagHours).toBe(8);
  });

  it('a coming thaw warms the shed as far as it follows, and later than outdoors', () => {
    const readings = (from: number, to: number, values: readonly number[]) =>
      values.slice(from, to).map((tempC, i) => ({ at: at(from + i), tempC }));
    const history = readings(0, WEEKS, shed);
    const told = temperatureOutlook(history, {
      horizonHours: 96,
      outdoors: {
        history: readings(0, WEEKS, outdoors),
        forecast: readings(WEEKS, WEEKS + 97, outdoors),
      },
    });
    const untold = temperatureOutlook(history, { horizonHours: 96 });
    const miss = (outlook: typeof told) =>
      Math.abs((outlook?.tempC[71] ?? 0) - (shed[WEEKS + 71] ?? 0));
    expect(miss(told)).toBeLessThan(1);
    expect(miss(told)).toBeLessThan(miss(untold) / 3);
    expect(told?.errorK[71]).toBeLessThan(untold?.errorK[71] ?? 0);
  });

  it('a forecast that ends sooner is carried on, and none at all changes nothing', () => {
    const history = shed.slice(0, WEEKS).map((tempC, i) => ({ at: at(i), tempC }));
    const past = outdoors.slice(0, WEEKS).map((tempC, i) => ({ at: at(i), tempC }));
    const short = [{ at: at(WEEKS + 6), tempC: 20 }];
    const outlook = temperatureOutlook(history, { outdoors: { history: past, forecast: short } });
    expect(outlook?.tempC).toHaveLength(1440);
    expect(outlook?.tempC.every(Number.isFinite)).toBe(true);
    const none = temperatureOutlook(history, { outdoors: { history: past, forecast: [] } });
    expect(none).toEqual(temperatureOutlook(history));
  });

  it('a place outdoors takes the forecast itself', () => {
    const history = Array.from({ length: 5 }, (_, i) => ({ at: at(i), tempC: 6 }));
    const forecast = Array.from({ length: 72 }, (_, i) => ({ at: at(5 + i), tempC: 14 }));
    const outlook = temperatureOutlook(history, {
      horizonHours: 72,
      outdoors: { history, forecast, isThePlace: true },
    });
    expect(outlook?.tempC[48]).toBeCloseTo(14, 1);
  });
});
