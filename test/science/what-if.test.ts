import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { absoluteHumidity } from '../../daemon/science/air.ts';
import { estimatedBoardMoisture } from '../../daemon/science/board-moisture.ts';
import { estimatedWarmingHours, laggingBoards } from '../../daemon/science/board-warming.ts';
import { airedRoom, driedAir, heatedAir } from '../../daemon/science/changed-air.ts';
import { cureAhead } from '../../daemon/science/cure-ahead.ts';
import { dewMargin, LEAST_DEW_MARGIN_K } from '../../daemon/science/dew-margin.ts';
import { readyFrom } from '../../daemon/science/forecast.ts';
import { needCurve } from '../../daemon/science/need-curve.ts';
import type { TemperatureOutlook } from '../../daemon/science/temperature-outlook.ts';
import {
  estimatedDryEnoughAt,
  timberBeforeCoating,
} from '../../daemon/science/timber-before-coating.ts';
import { fitRequirement } from '../../daemon/science/touch.ts';
import { type AirChoice, whatIf } from '../../daemon/science/what-if.ts';
import { equilibriumMoistureContent } from '../../daemon/science/wood.ts';

const HOUR = 3_600_000;
const HOURS = 600;
const MODEL = { rate: 'nurse-saul', datumC: 5, maxGapHours: 3 } as const;
const REQUIREMENT = fitRequirement([], { p10: 720, p90: 1080 });
const QUESTION = {
  cureSoFar: { degreeHoursLow: 0, degreeHoursHigh: 0 },
  need: needCurve(REQUIREMENT),
  model: MODEL,
};

/** Air that stays as it is and is known for sure. */
function still(tempC: number, rhPercent: number | null, errorK = 0): TemperatureOutlook {
  const all = (value: number) => Array.from({ length: HOURS }, () => value);
  return {
    fromAt: 0,
    tempC: all(tempC),
    errorK: all(errorK),
    sumErrorKh: all(errorK).map((error, hour) => error * (hour + 1)),
    rhPercent: rhPercent === null ? null : all(rhPercent),
    rhErrorPercent: rhPercent === null ? null : all(5),
  };
}

const likelyHours = (outlook: TemperatureOutlook, choice: AirChoice) =>
  (whatIf(outlook, choice, QUESTION).ready.likely ?? Number.NaN) / HOUR;

describe('heating', () => {
  it('10 °C and 80 % warmed to 20 °C is 43.5 % by the printed saturation pressures', () => {
    // 1.2276 and 2.3388 kPa: CRC Handbook 1992-93; vapour density unchanged, so × 293.15/283.15
    const printed = ((80 * 1.2276) / 2.3388) * (293.15 / 283.15);
    const warm = heatedAir(still(10, 80), 20);
    expect(warm.tempC[5]).toBe(20);
    expect(Math.abs((warm.rhPercent?.[5] ?? 0) - printed)).toBeLessThan(0.05);
  });

  it('from 10 to 20 °C a coat is ready three times as soon, but for the boards’ lag', () => {
    const cold = likelyHours(still(10, 80), { kind: 'leave' });
    expect(cold).toBeCloseTo(REQUIREMENT.p50 / 5, 1);
    const quick = likelyHours(still(10, 80), { kind: 'heat', toTempC: 20, boardLagHours: 1e-6 });
    expect(quick).toBeCloseTo(REQUIREMENT.p50 / 15, 1);
    // a first-order lag of 6 h loses 6 h × 10 K of the 15 an hour gives: own algebra
    const slow = likelyHours(still(10, 80), { kind: 'heat', toTempC: 20, boardLagHours: 6 });
    expect(Math.abs(slow - quick - (6 * 10) / 15)).toBeLessThan(0.3);
  });

  it('a heater takes away the doubt about cold, not that about warmth', () => {
    const warm = heatedAir(still(12, 70, 3), 20);
    expect(warm.errorK[10]).toBeLessThan(0.05);
    const idle = heatedAir(still(30, 70, 3), 20);
    expect(idle.errorK[10]).toBeCloseTo(3, 2);
    expect(idle.tempC[10]).toBeCloseTo(30, 2);
  });

  it('an unvented gas burner makes the air wetter than the best case', () => {
    const burner = { kilowatts: 5, volumeM3: 100, airChangesPerHour: 1 };
    const dry = heatedAir(still(10, 80), 20);
    const gas = heatedAir(still(10, 80), 20, burner);
    const added =
      absoluteHumidity(20, gas.rhPercent?.[50] ?? 0) -
      absoluteHumidity(20, dry.rhPercent?.[50] ?? 0);
    // propane: 4 × 18.015 g of water from 44.10 g, 12.9 kWh/kg (from memory): 5 kW into 100 m³/h
    expect(added).toBeCloseTo((5 * ((4 * 18.015) / 44.1 / 12.9) * 1000) / 100, 1);
  });

  it('says what it rests on, and what may burn', () => {
    const choice = { kind: 'heat', toTempC: 20, boardLagHours: 0.5 } as const;
    const { grounds } = whatIf(still(10, 80), choice, QUESTION);
    const marked = new Map(grounds.map(({ code, mark }) => [code, mark]));
    expect(marked.get('vapour-unchanged')).toBe('assumption');
    expect(marked.get('boards-lag')).toBe('assumption');
    expect(marked.get('fire-and-fumes')).toBe('practice');
    for (const { says } of grounds) expect(says).not.toMatch(/\bsafe/i);
  });
});

describe('drying and airing', () => {
  it('dehumidified to 55 % the air is no damper than that and as warm as before', () => {
    const dry = driedAir(still(18, 75), 55);
    expect(dry.rhPercent?.[0]).toBe(55);
    expect(dry.tempC[0]).toBe(18);
    expect(driedAir(still(18, 40), 55).rhPercent?.[0]).toBe(40);
  });

  it('drier air alone does not cure faster; with a humidity factor it does as that says', () => {
    const damp = still(18, 80);
    const dry: AirChoice = { kind: 'dehumidify', toRhPercent: 55 };
    expect(likelyHours(damp, dry)).toBe(likelyHours(damp, { kind: 'leave' }));
    const humidity = [
      { at: 60, factor: 1 },
      { at: 80, factor: 0.5 },
    ];
    const question = { ...QUESTION, model: { ...MODEL, humidity } };
    const [wet, dried] = [{ kind: 'leave' } as const, dry].map((choice) =>
      Number(whatIf(damp, choice, question).ready.likely),
    );
    expect((wet ?? 0) / (dried ?? 1)).toBeCloseTo(2, 4);
  });

  it('three times the air changes leave a third of the difference to outdoors', () => {
    const aired = airedRoom(still(20, 60), still(8, 80), { nowPerHour: 0.5, thenPerHour: 1.5 });
    expect(aired.tempC[0]).toBeCloseTo(8 + 12 / 3, 9);
    const outside = absoluteHumidity(8, 80);
    const vapour = outside + (absoluteHumidity(20, 60) - outside) / 3;
    expect(absoluteHumidity(12, aired.rhPercent?.[0] ?? 0)).toBeCloseTo(vapour, 9);
  });

  it('an open door changes nothing where it is as warm and damp outside', () => {
    const room = still(15, 70);
    const air = { nowPerHour: 1, thenPerHour: 8 };
    const open: AirChoice = { kind: 'open-door', outdoors: room, air, boardLagHours: 1 };
    expect(likelyHours(room, open)).toBe(likelyHours(room, { kind: 'leave' }));
  });

  it('left alone it is the plain forecast', () => {
    const outlook = still(14, 70, 2);
    const plain = readyFrom(cureAhead(outlook, MODEL), QUESTION.cureSoFar, QUESTION.need);
    expect(whatIf(outlook, { kind: 'leave' }, QUESTION).ready).toEqual(plain);
  });
});

describe('boards that lag', () => {
  it('a 20 mm board in stick takes about half an hour, a closed or thicker one longer', () => {
    const open = estimatedWarmingHours({ thicknessMm: 20, openFaces: 2 });
    // 500 kg/m³ × 1600 J/(kg·K) × 10 mm over 1/(0.13 + 0.028) W/(m²·K): own arithmetic
    expect(open).toBeCloseTo((8000 * (0.13 + 0.01 / 0.36)) / 3600, 6);
    expect(estimatedWarmingHours({ thicknessMm: 20, openFaces: 1 })).toBeGreaterThan(2 * open);
    expect(() => estimatedWarmingHours({ thicknessMm: 0, openFaces: 2 })).toThrow(/thicknessMm/);
  });

  it('go 63 % of a step in their lag, and never leave the two temperatures', () => {
    const cold = Array.from({ length: 48 }, () => 5);
    const warm = Array.from({ length: 48 }, () => 20);
    const boards = laggingBoards(cold, warm, 12);
    // the step is taken as a ramp over the first hour, half an hour late
    expect(Math.abs((boards[12] ?? 0) - (5 + 15 * (1 - Math.exp(-12.5 / 12))))).toBeLessThan(0.05);
    const temperatures = fc.array(fc.double({ min: -10, max: 30, noNaN: true }), {
      minLength: 30,
      maxLength: 30,
    });
    const lag = fc.double({ min: 0.01, max: 50, noNaN: true });
    fc.assert(
      fc.property(temperatures, temperatures, lag, (before, after, hours) => {
        laggingBoards(before, after, hours).forEach((board, hour) => {
          const ends = [before[hour] ?? 0, after[hour] ?? 0];
          expect(board).toBeGreaterThanOrEqual(Math.min(...ends));
          expect(board).toBeLessThanOrEqual(Math.max(...ends));
        });
      }),
    );
  });
});

describe('dew', () => {
  it('20 °C and 50 % has its dew point at 9.27 °C (psychrolib, ASHRAE 2017)', () => {
    expect(dewMargin(20, { tempC: 20, rhPercent: 50 })).toBeCloseTo(20 - 9.27, 2);
  });

  it('at 3 K above the dew point is where coating begins (practice with ISO 8502-4)', () => {
    expect(LEAST_DEW_MARGIN_K).toBe(3);
    // 20 °C, 83 %: dew point 17.0 °C by the Magnus form (WMO guide, annex 4.B)
    const ln = Math.log(0.83) + (17.62 * 20) / (243.12 + 20);
    expect(dewMargin(20, { tempC: 20, rhPercent: 83 })).toBeCloseTo(
      20 - (243.12 * ln) / (17.62 - ln),
      1,
    );
  });

  it('cold boards in air that a gas burner wets come near it', () => {
    const burner = { kilowatts: 5, volumeM3: 40, airChangesPerHour: 0.5 };
    const heat = { kind: 'heat', toTempC: 20, boardLagHours: 6 } as const;
    const dry = whatIf(still(5, 85), heat, QUESTION).leastDewMarginK;
    const gas = whatIf(still(5, 85), { ...heat, burner }, QUESTION).leastDewMarginK;
    expect(gas).toBeLessThan(dry ?? 0);
    expect(gas).toBeLessThan(LEAST_DEW_MARGIN_K);
    expect(whatIf(still(5, null), heat, QUESTION).leastDewMarginK).toBeNull();
  });
});

describe('timber before coating', () => {
  it('at most 16 % at the surface, by the dampest figure (Swedish Wood, TräGuiden)', () => {
    expect(timberBeforeCoating([12, 16, 14])).toEqual({
      kind: 'dry-enough',
      worstPercent: 16,
      limitPercent: 16,
    });
    expect(timberBeforeCoating([12, 16.1]).kind).toBe('too-damp');
    expect(timberBeforeCoating([15.5], 15).kind).toBe('too-damp');
  });

  it('is never dry enough on no figures', () => {
    expect(timberBeforeCoating([])).toEqual({ kind: 'unknown', because: 'no-figures' });
    expect(() => timberBeforeCoating([Number.NaN])).toThrow(/figuresPercent/);
  });

  it('dries to the limit when the lag says so', () => {
    const outlook = still(20, 65);
    const rest = equilibriumMoistureContent(20, 65);
    const at = estimatedDryEnoughAt(20, outlook, 48);
    // 12.0 % at 20 °C and 65 % (Wood Handbook, table 4-2): 8 % over it halves to 4 in 48·ln 2 h
    expect(rest).toBeCloseTo(12, 1);
    expect(Math.abs((at ?? 0) / HOUR - 48 * Math.LN2)).toBeLessThan(1.1);
    const air = [0, at ?? 0].map((time) => ({ at: time, tempC: 20, rhPercent: 65 }));
    expect(estimatedBoardMoisture(20, air, 48)).toBeLessThanOrEqual(16);
  });

  it('is not promised in air that is too damp, or unknown', () => {
    expect(estimatedDryEnoughAt(20, still(10, 90), 48)).toBeNull();
    expect(estimatedDryEnoughAt(20, still(10, null), 48)).toBeNull();
    expect(estimatedDryEnoughAt(14, still(10, null), 48)).toBe(0);
  });
});
