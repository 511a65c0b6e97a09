import { describe, expect, it } from 'vitest';
import { quantityFacts } from '../../daemon/contract/quantity.ts';
import { SIMULATED_SENSORS } from '../../sensors/shed/cart-shed.ts';
import { restedLoad } from '../../sensors/shed/physics/board-moisture.ts';
import { MIDDLING_PAINT } from '../../sensors/shed/physics/paint-truth.ts';
import { createShed, READING_PERIOD_MS, type Shed } from '../../sensors/shed/shed.ts';

const HOUR_MS = 3_600_000;
const START = Date.UTC(2026, 4, 8, 15);

function loaded(seed: number): Shed {
  const shed = createShed({ seed, startAt: START });
  shed.lay('door', restedLoad(190, 15));
  shed.lay('back', restedLoad(220, 17));
  shed.coat('door', MIDDLING_PAINT, 400);
  shed.coat('back', MIDDLING_PAINT, 400);
  return shed;
}

describe('the simulated shed', () => {
  it('sends the same readings for a seed however it is carried on', () => {
    const atOnce = loaded(7).advanceTo(START + 48 * HOUR_MS);
    const shed = loaded(7);
    const pieces = [];
    for (let at = START; at <= START + 48 * HOUR_MS; at += 777_777)
      pieces.push(...shed.advanceTo(at));
    pieces.push(...shed.advanceTo(START + 48 * HOUR_MS));
    expect(pieces).toEqual(atOnce);
  });

  it('sends other readings for another seed', () => {
    const until = START + 6 * HOUR_MS;
    expect(loaded(7).advanceTo(until)).not.toEqual(loaded(8).advanceTo(until));
  });

  it('sends each quantity of each sensor every five minutes, in order of time', () => {
    const readings = loaded(1).advanceTo(START + 24 * HOUR_MS);
    const series = SIMULATED_SENSORS.flatMap(({ measures }) => measures).length;
    expect(readings).toHaveLength((series * 24 * HOUR_MS) / READING_PERIOD_MS);
    const times = readings.map(({ at }) => at);
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });

  it.each([1, 2, 3])('stays within what its sensors can mean for a month (seed %i)', (seed) => {
    for (const { quantity, value } of loaded(seed).advanceTo(START + 30 * 24 * HOUR_MS)) {
      const { low, high } = quantityFacts[quantity];
      if (!(value >= low && value <= high)) expect.fail(`${quantity} of ${value}`);
    }
  });

  it.each([1, 2, 3])(
    'has a back rack that is colder and damper than the one by the door (seed %i)',
    (seed) => {
      const readings = loaded(seed).advanceTo(START + 72 * HOUR_MS);
      const mean = (id: string, wanted: string) => {
        const values = readings
          .filter(({ sensor, quantity }) => sensor === id && quantity === wanted)
          .map(({ value }) => value);
        return values.reduce((sum, each) => sum + each, 0) / values.length;
      };
      expect(mean('back-floor', 'air-temperature')).toBeLessThan(
        mean('door-shelf', 'air-temperature'),
      );
      expect(mean('back-shelf', 'relative-humidity')).toBeGreaterThan(
        mean('door-shelf', 'relative-humidity'),
      );
    },
  );

  it('lets a coat pass the hand tests one after another, and a fresh one none', () => {
    const shed = loaded(1);
    expect(shed.touch('door', 'turn')).toBe(false);
    shed.advanceTo(START + 40 * HOUR_MS);
    expect(shed.touch('door', 'turn')).toBe(true);
    expect(shed.touch('door', 'recoat')).toBe(false);
    shed.advanceTo(START + 90 * HOUR_MS);
    expect(shed.touch('door', 'recoat')).toBe(true);
    shed.coat('door', MIDDLING_PAINT, 400);
    expect(shed.touch('door', 'turn')).toBe(false);
    shed.lay('door', null);
    shed.advanceTo(START + 300 * HOUR_MS);
    expect(shed.touch('door', 'turn')).toBe(false);
  });
});
