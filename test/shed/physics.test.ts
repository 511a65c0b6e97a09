import { describe, expect, it } from 'vitest';
import { equilibriumMoistureContent } from '../../daemon/science/wood.ts';
import {
  exchangeMoisture,
  restedLoad,
  waterInLoad,
} from '../../sensors/shed/physics/board-moisture.ts';
import { daylight } from '../../sensors/shed/physics/daylight.ts';
import { openings } from '../../sensors/shed/physics/openings.ts';
import { RELEASE_HOURS, releaseSolvent, solventAfter } from '../../sensors/shed/physics/solvent.ts';

const HOUR_S = 3600;

describe('daylight at the shed', () => {
  it('lasts 17.5 hours at midsummer and 7 at midwinter, as almanacs say of 56° north', () => {
    // source: day length by the sunrise equation, cos ω = −tan φ · tan δ: 17.3 h and 6.7 h, without
    // refraction; from memory
    const hours = (day: number) =>
      Array.from({ length: 1440 }, (_, minute) => daylight(day + minute * 60_000)).filter(
        (light) => light > 0,
      ).length / 60;
    expect(hours(Date.UTC(2026, 5, 21))).toBeCloseTo(17.3, 0);
    expect(hours(Date.UTC(2026, 11, 21))).toBeCloseTo(6.7, 0);
    expect(hours(Date.UTC(2026, 2, 21))).toBeCloseTo(12, 0);
  });

  it('is brightest at noon: the sun stands 57.4° high in June', () => {
    // source: 90° − latitude + declination
    const noon = daylight(Date.UTC(2026, 5, 21, 12));
    expect(noon).toBeCloseTo(Math.sin(((90 - 56 + 23.44) * Math.PI) / 180), 3);
    expect(daylight(Date.UTC(2026, 5, 21, 8))).toBeLessThan(noon);
    expect(daylight(Date.UTC(2026, 5, 21, 0))).toBe(0);
  });
});

describe('boards that take up and release moisture', () => {
  it('lose what the air gains', () => {
    let load = restedLoad(200, 18);
    let gave = 0;
    for (let step = 0; step < 24 * 60; step++) {
      const exchanged = exchangeMoisture(load, { tempC: 20, rhPercent: 40 }, 60);
      load = exchanged.load;
      gave += exchanged.gaveG;
    }
    expect(gave).toBeGreaterThan(100);
    expect(waterInLoad(restedLoad(200, 18)) - waterInLoad(load)).toBeCloseTo(gave, 6);
    expect(load.surfacePercent).toBeLessThan(load.moisturePercent);
  });

  it('come to rest with the air, their surface long before their core', () => {
    const air = { tempC: 15, rhPercent: 70 };
    const rest = equilibriumMoistureContent(air.tempC, air.rhPercent);
    let load = restedLoad(200, 18);
    for (let step = 0; step < 48 * 12; step++) load = exchangeMoisture(load, air, 300).load;
    expect(Math.abs(load.surfacePercent - rest)).toBeLessThan(1);
    expect(load.moisturePercent - rest).toBeGreaterThan(2);
    for (let step = 0; step < 400 * 24 * 12; step++) load = exchangeMoisture(load, air, 300).load;
    expect(load.moisturePercent).toBeCloseTo(rest, 3);
  });

  it('take up moisture from damp air', () => {
    const { gaveG } = exchangeMoisture(restedLoad(200, 10), { tempC: 15, rhPercent: 90 }, 60);
    expect(gaveG).toBeLessThan(0);
  });
});

describe('solvent of a fresh coat', () => {
  it('leaves by two thirds within its time, and none is lost', () => {
    const { coat, gaveG } = releaseSolvent({ solventG: 500 }, RELEASE_HOURS * HOUR_S);
    expect(coat.solventG).toBeCloseTo(500 / Math.E, 9);
    expect(gaveG + coat.solventG).toBeCloseTo(500, 9);
  });

  it('in the room follows the well-mixed balance', () => {
    // source: closed form of V·dC/dt = (M/τ)·e^(−t/τ) − n·V·C, C(t) = M/(V·(nτ − 1))·(e^(−t/τ) − e^(−nt))
    const room = { volumeM3: 60, airChangesPerHour: 0.8 };
    let [gM3, coat] = [0, { solventG: 500 }];
    for (let second = 0; second < 5 * HOUR_S; second += 60) {
      const released = releaseSolvent(coat, 60);
      coat = released.coat;
      gM3 = solventAfter(gM3, released.gaveG, room, 60);
    }
    const nTau = room.airChangesPerHour * RELEASE_HOURS;
    const exact =
      (500 / (room.volumeM3 * (nTau - 1))) * (Math.exp(-5 / RELEASE_HOURS) - Math.exp(-0.8 * 5));
    expect(gM3 / exact).toBeCloseTo(1, 3);
  });

  it('stays in a room without any fresh air', () => {
    const shut = { volumeM3: 60, airChangesPerHour: 0 };
    expect(solventAfter(1, 30, shut, HOUR_S)).toBeCloseTo(1.5, 12);
  });
});

describe('door and wind', () => {
  const habits = { doorPerHour: 5, doorMinutesAnHour: 6, airingShare: 0.5, windPerHour: 0 };
  const day = Date.UTC(2026, 4, 4);
  it('let air in while people work, and not at night', () => {
    const more = openings(1, { ...habits, airingShare: 0 });
    const minutes = Array.from({ length: 1440 }, (_, minute) => more(day + minute * 60_000));
    // eleven working hours of six minutes
    expect(minutes.filter((each) => each === 5)).toHaveLength(66);
    expect(minutes.slice(0, 420).every((each) => each === 0)).toBe(true);
  });
  it('are the same for a seed at any time, in any order', () => {
    const at = Array.from({ length: 200 }, (_, index) => day + index * 7_777_777);
    const forward = at.map(openings(3, { ...habits, windPerHour: 1 }));
    const more = openings(3, { ...habits, windPerHour: 1 });
    const backward = [...at].reverse().map((moment) => more(moment));
    expect(backward.reverse()).toEqual(forward);
    expect(Math.min(...forward)).toBeGreaterThanOrEqual(0);
    expect(new Set(at.map(openings(4, habits)))).not.toEqual(new Set([0]));
  });
});
