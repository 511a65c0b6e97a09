import { describe, expect, it } from 'vitest';
import { type AirSample, estimateAirChange } from '../../daemon/science/airflow.ts';
import { normalFrom, seededRandom } from './seeded-random.ts';
import { simulatedRoom } from './simulated-room.ts';

const MINUTE = 60_000;

/** What comes out of so many simulated rooms. */
function trial(airChangesPerHour: number, hours: number, rooms: number) {
  const ratios: number[] = [];
  let covered = 0;
  for (let room = 0; room < rooms; room++) {
    const seed = 7919 * room + Math.round(1000 * airChangesPerHour) + hours;
    const found = estimateAirChange(simulatedRoom({ airChangesPerHour, hours, seed }));
    if (!found.identifiable) continue;
    const { perHour = 0, low = 0, high = 0 } = found;
    ratios.push(perHour / airChangesPerHour);
    if (low <= airChangesPerHour && airChangesPerHour <= high) covered++;
  }
  ratios.sort((a, b) => a - b);
  return {
    identified: ratios.length / rooms,
    median: ratios[Math.floor(ratios.length / 2)] ?? 0,
    near: ratios.filter((ratio) => Math.abs(ratio - 1) < 0.35).length / ratios.length,
    coverage: covered / ratios.length,
  };
}

describe('air change from the vapour balance of simulated rooms, ±2 % RH bias and noise, a day long', () => {
  const TRIALS = [0.3, 0.5, 1, 2, 3].map((airChangesPerHour) => ({
    airChangesPerHour,
    ...trial(airChangesPerHour, 24, 60),
  }));

  it.each(TRIALS)(
    'at $airChangesPerHour per hour: median within 10 %, nine of ten within 35 %',
    (seen) => {
      expect(seen.identified).toBeGreaterThan(0.75);
      expect(Math.abs(seen.median - 1)).toBeLessThan(0.1);
      expect(seen.near).toBeGreaterThanOrEqual(0.9);
      // 60 rooms: a true 90 % scatters by ±8 %
      expect(seen.coverage).toBeGreaterThan(0.78);
    },
  );

  it('over all of them the 90 % interval holds the truth 80 to 97 % of the time', () => {
    const coverage = TRIALS.reduce((sum, seen) => sum + seen.coverage, 0) / TRIALS.length;
    expect(coverage).toBeGreaterThan(0.8);
    expect(coverage).toBeLessThan(0.97);
  });

  it('is never told from weather that does not change', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const flat = simulatedRoom({ airChangesPerHour: 1, hours: 24, seed, flat: true });
      const found = estimateAirChange(flat);
      expect(found.identifiable).toBe(false);
      expect(['flat', 'does-not-fit']).toContain(found.reason);
    }
  });
});

describe('a tracer that dies away, outside steady', () => {
  const decay = (perHour: number, hours: number, noise = 0): AirSample[] => {
    const normal = normalFrom(seededRandom(3));
    return Array.from({ length: hours * 12 + 1 }, (_, k) => ({
      at: k * 5 * MINUTE,
      insideGM3: 420 + 1000 * Math.exp((-perHour * k) / 12) + noise * normal(),
    }));
  };

  it.each([0.3, 1, 3])('gives back %d air changes per hour', (perHour) => {
    const found = estimateAirChange(decay(perHour, 6));
    expect(found.identifiable).toBe(true);
    expect((found.perHour ?? 0) / perHour).toBeCloseTo(1, 3);
  });

  it('as carbon dioxide with a noise of 15 ppm is still within 10 %', () => {
    const found = estimateAirChange(decay(1, 6, 15));
    expect(Math.abs((found.perHour ?? 0) - 1)).toBeLessThan(0.1);
    expect(found.low).toBeLessThan(1);
    expect(found.high).toBeGreaterThan(1);
  });

  it('watched too briefly cannot be told from a steady fall', () => {
    expect(estimateAirChange(decay(0.1, 2, 15)).identifiable).toBe(false);
  });
});

describe('samples as they come', () => {
  const room = simulatedRoom({ airChangesPerHour: 1, hours: 24, seed: 4 });

  it('give the same answer in any order', () => {
    expect(estimateAirChange([...room].reverse())).toEqual(estimateAirChange(room));
  });

  it('give nearly the same answer with an hour and a half missing', () => {
    const holed = room.filter((_, index) => index < 100 || index >= 118);
    const [whole, part] = [estimateAirChange(room), estimateAirChange(holed)];
    expect(part.identifiable).toBe(true);
    expect(Math.abs((part.perHour ?? 0) / (whole.perHour ?? 1) - 1)).toBeLessThan(0.15);
  });

  it('that are few say so', () => {
    expect(estimateAirChange([])).toEqual({ identifiable: false, reason: 'too-few-samples' });
    expect(estimateAirChange(room.slice(0, 11)).reason).toBe('too-few-samples');
  });

  it('that are all alike say so', () => {
    const still = Array.from({ length: 50 }, (_, k) => ({
      at: k * MINUTE,
      insideGM3: 9,
      outsideGM3: 7,
    }));
    expect(estimateAirChange(still)).toEqual({ identifiable: false, reason: 'flat' });
  });

  it.each([
    ['at is NaN', () => estimateAirChange([{ at: Number.NaN, insideGM3: 1 }])],
    ['insideGM3 is -1; allowed: 0', () => estimateAirChange([{ at: 0, insideGM3: -1 }])],
    [
      'outsideGM3 is given in 1 of 2 samples; allowed: all or none',
      () =>
        estimateAirChange([
          { at: 0, insideGM3: 1 },
          { at: 1, insideGM3: 1, outsideGM3: 1 },
        ]),
    ],
    ['maxGapHours is 0; allowed: above 0', () => estimateAirChange([], { maxGapHours: 0 })],
  ])('refuses nonsense: %s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
