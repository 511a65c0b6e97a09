import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import {
  absoluteHumidity,
  dewPoint,
  humidityRatio,
  relativeHumidity,
  saturationVapourPressure,
} from '../../daemon/science/air.ts';
import { MOIST_AIR } from '../published/moist-air.ts';
import {
  SATURATION_ASHRAE,
  SATURATION_CRC,
  SATURATION_ENGINEERING,
} from '../published/saturation-pressure.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

/** Every whole degree from −20 to 50 °C with every whole per cent from 1 to 100. */
const GRID = Array.from({ length: 71 }, (_, row) => row - 20).flatMap((tempC) =>
  Array.from({ length: 100 }, (_, column) => ({ tempC, rhPercent: column + 1 })),
);

const largest = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, Math.abs(b)), 0);

describe('saturation pressure of water vapour', () => {
  it('is within 0.1 % of an independent psychrometrics library from −20 to 50 °C', () => {
    const deviation = largest(
      GRID.map(
        ({ tempC }) => saturationVapourPressure(tempC) / psychrolib.GetSatVapPres(tempC) - 1,
      ),
    );
    // largest seen: 0.0097 %, at 0 °C, where the library still stands on ice
    expect(deviation).toBeLessThan(0.0002);
  });

  it.each(SATURATION_CRC)('is the printed CRC figure at %d °C: %d kPa', (tempC, kPa) => {
    // largest seen 0.05 % at 49 °C; 0.04 % up to 45 °C
    expect(saturationVapourPressure(tempC) / 1000 / kPa).toBeCloseTo(1, 3);
    expect(Math.abs(saturationVapourPressure(tempC) / 1000 / kPa - 1)).toBeLessThan(0.001);
  });

  it.each(SATURATION_ENGINEERING)('is the engineering table at %d °C: %d kPa', (tempC, kPa) => {
    expect(Math.abs(saturationVapourPressure(tempC) / 1000 / kPa - 1)).toBeLessThan(0.001);
  });

  it.each(SATURATION_ASHRAE)('is the ASHRAE table (from memory) at %d °C: %d kPa', (tempC, kPa) => {
    expect(Math.abs(saturationVapourPressure(tempC) / 1000 / kPa - 1)).toBeLessThan(0.0002);
  });

  it('over supercooled water follows the WMO Magnus form within 0.5 % from −30 to 0 °C', () => {
    // WMO Guide to Instruments, annex 4.B: 6.112·exp(17.62·t/(243.12+t)) hPa, read in a public copy
    for (let tempC = -30; tempC <= 0; tempC++) {
      const magnusPa = 611.2 * Math.exp((17.62 * tempC) / (243.12 + tempC));
      const ours = saturationVapourPressure(tempC, { over: 'water' });
      expect(Math.abs(ours / magnusPa - 1)).toBeLessThan(0.005);
    }
  });

  it('rises with temperature everywhere, also across 0 °C', () => {
    const temperature = fc.double({ min: -100, max: 199.9, noNaN: true });
    fc.assert(
      fc.property(temperature, (tempC) => {
        expect(saturationVapourPressure(tempC + 0.1)).toBeGreaterThan(
          saturationVapourPressure(tempC),
        );
      }),
    );
  });
});

describe('moist air', () => {
  it('has the dew point of an independent library within 0.05 K over −20…50 °C and 1…100 %', () => {
    const deviation = largest(
      GRID.map(
        ({ tempC, rhPercent }) =>
          dewPoint(tempC, rhPercent) - psychrolib.GetTDewPointFromRelHum(tempC, rhPercent / 100),
      ),
    );
    // largest seen: 0.0012 K
    expect(deviation).toBeLessThan(0.005);
  });

  it('has the humidity ratio of an independent library within 0.1 %', () => {
    const deviation = largest(
      GRID.map(({ tempC, rhPercent }) => {
        const theirs = psychrolib.GetHumRatioFromRelHum(tempC, rhPercent / 100, 101325);
        return humidityRatio(tempC, rhPercent) / theirs - 1;
      }),
    );
    // largest seen: 0.0098 %
    expect(deviation).toBeLessThan(0.0002);
  });

  it.each(MOIST_AIR)('is the recorded state at $tempC °C and $rhPercent %', (state) => {
    const { tempC, rhPercent } = state;
    expect(Math.abs(saturationVapourPressure(tempC) / state.saturationPa - 1)).toBeLessThan(0.001);
    expect(Math.abs(dewPoint(tempC, rhPercent) - state.dewPointC)).toBeLessThan(0.05);
    expect(Math.abs(humidityRatio(tempC, rhPercent) / state.humidityRatio - 1)).toBeLessThan(0.001);
    const absolute = absoluteHumidity(tempC, rhPercent);
    expect(Math.abs(absolute / state.absoluteHumidityGM3 - 1)).toBeLessThan(0.001);
  });

  it('has a dew point of −9.2 °C over water, not a frost point of −8.2 °C, for a sensor at 0 °C and 50 %', () => {
    // both figures from the reference calculation beside the library's states
    expect(dewPoint(0, 50, { over: 'water' })).toBeCloseTo(-9.2, 1);
    expect(dewPoint(0, 50)).toBeCloseTo(-8.16, 2);
  });

  const air = fc.record({
    tempC: fc.double({ min: -40, max: 60, noNaN: true }),
    rhPercent: fc.double({ min: 0.5, max: 100, noNaN: true }),
    over: fc.constantFrom('phase' as const, 'water' as const),
  });

  it('saturates exactly at its dew point', () => {
    fc.assert(
      fc.property(air, ({ tempC, rhPercent, over }) => {
        const dewC = dewPoint(tempC, rhPercent, { over });
        const vapourPa = (rhPercent / 100) * saturationVapourPressure(tempC, { over });
        // the two published curves leave a step of 0.01 % at 0 °C, where the dew point is 0
        if (dewC !== 0) {
          const ratio = saturationVapourPressure(dewC, { over }) / vapourPa;
          expect(Math.abs(ratio - 1)).toBeLessThan(1e-9);
        }
        expect(dewC).toBeLessThanOrEqual(tempC + 1e-9);
      }),
    );
  });

  it('at 100 % has its own temperature as dew point', () => {
    fc.assert(
      fc.property(air, ({ tempC, over }) => {
        expect(Math.abs(dewPoint(tempC, 100, { over }) - tempC)).toBeLessThan(1e-9);
      }),
    );
  });

  it('keeps its humidity on the way through grams per cubic metre and back', () => {
    fc.assert(
      fc.property(air, ({ tempC, rhPercent, over }) => {
        const grams = absoluteHumidity(tempC, rhPercent, { over });
        const back = relativeHumidity(tempC, grams, { over });
        expect(Math.abs(back / rhPercent - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it('says more than 100 % when cooled below its dew point at the same vapour content', () => {
    expect(relativeHumidity(5, absoluteHumidity(20, 65))).toBeGreaterThan(100);
  });
});

describe('nonsense is refused by name, value and range', () => {
  it.each([
    ['tempC is NaN; allowed: -100 to 200', () => saturationVapourPressure(Number.NaN)],
    ['tempC is -300; allowed: -100 to 200', () => saturationVapourPressure(-300)],
    ['rhPercent is 101; allowed: 0 to 100', () => dewPoint(20, 101)],
    ['rhPercent is 0 at tempC 20; allowed: ', () => dewPoint(20, 0)],
    ['rhPercent is -1; allowed: 0 to 100', () => absoluteHumidity(20, -1)],
    ['pressurePa is 100; allowed: above', () => humidityRatio(20, 50, 100)],
    ['absoluteHumidityGM3 is -1; allowed: 0 to', () => relativeHumidity(20, -1)],
    ['absoluteHumidityGM3 is Infinity', () => relativeHumidity(20, Number.POSITIVE_INFINITY)],
  ])('%s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
