import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  airChangesForLimit,
  meanConcentration,
  mgPerM3FromPpm,
  peakConcentration,
  ppmFromMgPerM3,
  type SolventRelease,
  solventConcentration,
  TURPENTINE,
} from '../../daemon/science/vapour.ts';
import {
  BUILD_UP_EXAMPLE,
  DILUTION_EXAMPLES,
  LITRES_PER_PINT,
  M3_PER_CUBIC_FOOT,
  REPLACED_AFTER_ONE_CHANGE_PERCENT,
  TURPENTINE_CHECKS,
  WARMER_THAN_70F,
} from '../published/ventilation.ts';

const ROOM: SolventRelease = {
  litres: 0.5,
  densityKgPerL: 0.86,
  molarMassGPerMol: 136.23,
  volumeM3: 60,
  airChangesPerHour: 0.5,
  releaseHours: 4,
};

/** So long that the release is steady within the hours looked at. */
const STEADY_HOURS = 1e6;

describe('vapour units', () => {
  it('of turpentine exchange at the printed 5.56 mg/m³ per ppm', () => {
    // the guide rounds the molar mass to 136
    expect(mgPerM3FromPpm(1, 136)).toBeCloseTo(TURPENTINE_CHECKS.mgPerM3PerPpm, 2);
    expect(mgPerM3FromPpm(100, 136)).toBeCloseTo(556, 0);
    expect(ppmFromMgPerM3(mgPerM3FromPpm(20, 136.23), 136.23)).toBeCloseTo(20, 12);
  });

  it('of turpentine hang together: IDLH is a tenth of the explosive limit', () => {
    // NIOSH IDLH page: 10 % of the lower explosive limit
    expect(TURPENTINE.immediateDangerPpm).toBe(0.1 * TURPENTINE.lowerExplosiveLimitPpm);
    expect(TURPENTINE.lowestDayLimitPpm).toBeLessThan(TURPENTINE.officialDayLimitPpm);
  });
});

describe('solvent in a room', () => {
  it('that is closed ends at all of it: 100 g in 60 m³ are 1,667 mg/m³ and 299 ppm', () => {
    const { grams, volumeM3, mgPerM3, ppm } = TURPENTINE_CHECKS.closedRoom;
    const closed = { ...ROOM, litres: grams / 860, volumeM3, airChangesPerHour: 0 };
    const late = solventConcentration(closed, 200);
    expect(late.mgPerM3).toBeCloseTo(mgPerM3, 0);
    expect(late.ppm).toBeCloseTo(ppm, 0);
    expect(peakConcentration(closed).ppm).toBeCloseTo(late.ppm, 9);
  });

  it.each(DILUTION_EXAMPLES)(
    '$id: $solvent is held at its limit by the printed air flow',
    (row) => {
      // one room of 100 m³; the flow does not depend on it once the release is steady
      const volumeM3 = 100;
      const perHour = airChangesForLimit({
        litres: row.pintsPerHour * LITRES_PER_PINT * STEADY_HOURS,
        densityKgPerL: row.specificGravity,
        molarMassGPerMol: row.molarMass,
        volumeM3,
        releaseHours: STEADY_HOURS,
        limitPpm: row.limitPpm,
      });
      const cubicFeetPerMinute = (perHour * volumeM3) / M3_PER_CUBIC_FOOT / 60 / WARMER_THAN_70F;
      // printed figures and the constant 403 are rounded to three digits
      expect(Math.abs(cubicFeetPerMinute / row.cubicFeetPerMinute - 1)).toBeLessThan(0.005);
    },
  );

  it('V3: 1.2 ft³/min of vapour into 100,000 ft³ with 2,000 ft³/min of air passes 200 ppm after 20.3 min', () => {
    const {
      roomCubicFeet,
      freshAirCubicFeetPerMinute,
      vapourCubicFeetPerMinute,
      limitPpm,
      minutes,
    } = BUILD_UP_EXAMPLE;
    const gramsPerHour =
      (mgPerM3FromPpm(1e6, 100) / 1000) * vapourCubicFeetPerMinute * 60 * M3_PER_CUBIC_FOOT;
    const room = {
      litres: (gramsPerHour / 1000) * STEADY_HOURS,
      densityKgPerL: 1,
      molarMassGPerMol: 100,
      volumeM3: roomCubicFeet * M3_PER_CUBIC_FOOT,
      airChangesPerHour: (freshAirCubicFeetPerMinute * 60) / roomCubicFeet,
      releaseHours: STEADY_HOURS,
    };
    expect(solventConcentration(room, minutes / 60).ppm / limitPpm).toBeCloseTo(1, 2);
  });

  it('after a sudden release has lost 63.2 % with one air change', () => {
    const sudden = { ...ROOM, releaseHours: 1e-9, airChangesPerHour: 2 };
    const start = solventConcentration(sudden, 1e-6).ppm;
    const left = solventConcentration(sudden, 0.5).ppm / start;
    expect(100 * (1 - left)).toBeCloseTo(REPLACED_AFTER_ONE_CHANGE_PERCENT, 1);
  });

  const rooms = fc.record({
    litres: fc.double({ min: 0.01, max: 20, noNaN: true }),
    densityKgPerL: fc.constant(0.86),
    molarMassGPerMol: fc.constant(136.23),
    volumeM3: fc.double({ min: 10, max: 2000, noNaN: true }),
    airChangesPerHour: fc.double({ min: 0.01, max: 30, noNaN: true }),
    releaseHours: fc.double({ min: 0.1, max: 100, noNaN: true }),
  });

  it('follows its own balance: the slope is the source less what the air carries off', () => {
    fc.assert(
      fc.property(rooms, fc.double({ min: 0.1, max: 50, noNaN: true }), (room, hours) => {
        const step = 1e-4 * Math.min(1, room.releaseHours, 1 / room.airChangesPerHour);
        const at = (time: number) => solventConcentration(room, time).mgPerM3;
        const slope = (at(hours + step) - at(hours - step)) / (2 * step);
        const massMg = room.litres * room.densityKgPerL * 1e6;
        const source =
          (massMg / room.releaseHours / room.volumeM3) * Math.exp(-hours / room.releaseHours);
        const loss = room.airChangesPerHour * at(hours);
        expect(Math.abs(slope - (source - loss))).toBeLessThan(1e-5 * (source + loss) + 1e-9);
      }),
    );
  });

  it('does not jump where release and air change are equally fast', () => {
    const equal = { ...ROOM, airChangesPerHour: 1 / ROOM.releaseHours };
    for (const nudge of [1e-15, 1e-12, 1e-9, 1e-6]) {
      const near = { ...equal, airChangesPerHour: equal.airChangesPerHour * (1 + nudge) };
      const ratio = solventConcentration(near, 5).ppm / solventConcentration(equal, 5).ppm;
      expect(Math.abs(ratio - 1)).toBeLessThan(10 * nudge + 1e-12);
      expect(peakConcentration(near).afterHours).toBeCloseTo(4, 4);
    }
  });

  it('is highest at its peak', () => {
    fc.assert(
      fc.property(rooms, fc.double({ min: 0, max: 200, noNaN: true }), (room, hours) => {
        const peak = peakConcentration(room);
        expect(solventConcentration(room, hours).ppm).toBeLessThanOrEqual(peak.ppm * (1 + 1e-9));
        expect(solventConcentration(room, peak.afterHours).ppm).toBeCloseTo(peak.ppm, 9);
      }),
    );
  });

  it('has the mean of its own course', () => {
    fc.assert(
      fc.property(rooms, fc.double({ min: 0.5, max: 24, noNaN: true }), (room, hours) => {
        const steps = 4000;
        let sum = 0;
        for (let k = 0; k < steps; k++) {
          sum += solventConcentration(room, (hours * (k + 0.5)) / steps).ppm;
        }
        expect(meanConcentration(room, hours).ppm / (sum / steps)).toBeCloseTo(1, 3);
      }),
      { numRuns: 30 },
    );
    const sealed = meanConcentration({ ...ROOM, airChangesPerHour: 0 }, 8).ppm;
    const almost = meanConcentration({ ...ROOM, airChangesPerHour: 1e-3 }, 8).ppm;
    expect(almost / sealed).toBeCloseTo(1, 2);
  });

  it('finds the air change also where only the largest one looked at would do', () => {
    const room = {
      litres: 16.97664477295772,
      densityKgPerL: 0.86,
      molarMassGPerMol: 136.23,
      volumeM3: 10,
      releaseHours: 0.1,
    };
    const perHour = airChangesForLimit({ ...room, limitPpm: 5 });
    expect(peakConcentration({ ...room, airChangesPerHour: perHour }).ppm).toBeCloseTo(5, 5);
  });

  it('stays at the limit with the air change that was asked for', () => {
    fc.assert(
      fc.property(rooms, fc.double({ min: 5, max: 8000, noNaN: true }), (room, limitPpm) => {
        const perHour = airChangesForLimit({ ...room, limitPpm });
        const peak = peakConcentration({ ...room, airChangesPerHour: perHour }).ppm;
        if (perHour === 0) expect(peak).toBeLessThanOrEqual(limitPpm);
        else expect(Math.abs(peak / limitPpm - 1)).toBeLessThan(1e-6);
      }),
    );
  });
});

describe('nonsense is refused by name, value and range', () => {
  it.each([
    ['volumeM3 is 0; allowed: above 0', () => solventConcentration({ ...ROOM, volumeM3: 0 }, 1)],
    ['litres is -1; allowed: 0', () => solventConcentration({ ...ROOM, litres: -1 }, 1)],
    [
      'airChangesPerHour is NaN',
      () => solventConcentration({ ...ROOM, airChangesPerHour: Number.NaN }, 1),
    ],
    ['hours is -1; allowed: 0', () => solventConcentration(ROOM, -1)],
    ['limitPpm is 0; allowed: above 0', () => airChangesForLimit({ ...ROOM, limitPpm: 0 })],
    ['limitPpm is 1e-9; allowed: at least', () => airChangesForLimit({ ...ROOM, limitPpm: 1e-9 })],
    ['mgPerM3 is -1', () => ppmFromMgPerM3(-1, 136)],
  ])('%s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
