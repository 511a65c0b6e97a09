import { describe, expect, it } from 'vitest';
import { CART_SHED } from '../../sensors/shed/cart-shed.ts';
import { faultNames, type SensorFault } from '../../sensors/shed/physics/sensor-faults.ts';
import { createShed } from '../../sensors/shed/shed.ts';
import type { ShedReading } from '../../sensors/shed/shed-sensors.ts';

const HOUR_MS = 3_600_000;
const START = Date.UTC(2026, 4, 8);
const FAULT = { fromAt: START + 24 * HOUR_MS, toAt: START + 48 * HOUR_MS };

/** Three days of a shed with something wrong on the second, and the same shed without. */
function threeDays(name: SensorFault['name'], sensor: string, other?: string) {
  const run = (faults: SensorFault[]) =>
    createShed({ seed: 3, startAt: START, plan: { ...CART_SHED, faults } }).advanceTo(
      START + 72 * HOUR_MS,
    );
  const fault = { name, sensor, ...FAULT, ...(other === undefined ? {} : { other }) };
  return { wrong: run([fault]), right: run([]) };
}

const of = (readings: readonly ShedReading[], sensor: string, quantity = 'air-temperature') =>
  readings.filter((one) => one.sensor === sensor && one.quantity === quantity);
const during = (readings: readonly ShedReading[]) =>
  readings.filter(({ sentAt }) => sentAt >= FAULT.fromAt && sentAt < FAULT.toAt);
const values = (readings: readonly ShedReading[]) => readings.map(({ value }) => value);
const mean = (list: readonly number[]) => list.reduce((a, b) => a + b, 0) / list.length;

describe('a fault of a simulated sensor', () => {
  it.each(faultNames)('%s begins and ends when it is told to', (name) => {
    const { wrong, right } = threeDays(name, 'back-shelf', 'yard');
    const apart = (readings: readonly ShedReading[]) =>
      JSON.stringify(readings.filter(({ sentAt }) => sentAt < FAULT.fromAt));
    expect(apart(wrong)).toBe(apart(right));
    expect(JSON.stringify(during(wrong))).not.toBe(JSON.stringify(during(right)));
    // sent again as it should be; its noise is another, as other numbers were drawn
    const after = wrong.filter(
      ({ sentAt, sensor }) => sentAt >= FAULT.toAt && sensor === 'back-shelf',
    );
    const asIt = right.filter(
      ({ sentAt, sensor }) => sentAt >= FAULT.toAt && sensor === 'back-shelf',
    );
    expect(after).toHaveLength(asIt.length);
    for (const [index, { value, at, sentAt }] of after.entries()) {
      expect(Math.abs(value - (asIt[index]?.value ?? 0))).toBeLessThan(4);
      expect(at).toBe(sentAt);
    }
  });

  it('silent sends nothing, stuck the same value again and again', () => {
    expect(during(of(threeDays('silent', 'yard').wrong, 'yard'))).toEqual([]);
    const stuck = during(of(threeDays('stuck', 'yard').wrong, 'yard'));
    expect(new Set(values(stuck)).size).toBe(1);
  });

  it('jumps now and then, and out of physics sends what no air can be', () => {
    const { wrong, right } = threeDays('jumps', 'bench');
    const steps = values(during(of(wrong, 'bench'))).map((value, index) =>
      Math.abs(value - (values(during(of(right, 'bench')))[index] ?? 0)),
    );
    const jumped = steps.filter((step) => step > 4).length / steps.length;
    expect(jumped).toBeGreaterThan(0.02);
    expect(jumped).toBeLessThan(0.2);
    expect(values(during(of(threeDays('out-of-physics', 'bench').wrong, 'bench')))).toContain(-127);
  });

  it('drift leads it slowly away, pinned holds humidity alone at 100', () => {
    const { wrong, right } = threeDays('drift', 'bench');
    const off = (readings: readonly ShedReading[]) => mean(values(readings.slice(-12)));
    const gone = off(during(of(wrong, 'bench'))) - off(during(of(right, 'bench')));
    expect(gone).toBeGreaterThan(0.3);
    expect(gone).toBeLessThan(0.5);
    const pinned = threeDays('pinned', 'bench').wrong;
    expect(new Set(values(during(of(pinned, 'bench', 'relative-humidity'))))).toEqual(
      new Set([100]),
    );
    expect(new Set(values(during(of(pinned, 'bench')))).size).toBeGreaterThan(3);
  });

  it('swapped reads the place of another sensor', () => {
    const { wrong, right } = threeDays('swapped', 'bench', 'yard');
    const shown = mean(values(during(of(wrong, 'bench'))));
    expect(Math.abs(shown - mean(values(during(of(right, 'yard')))))).toBeLessThan(0.3);
    expect(Math.abs(shown - mean(values(during(of(right, 'bench')))))).toBeGreaterThan(2);
  });

  it('low battery loses readings, time wrong dates them otherwise', () => {
    const weak = threeDays('low-battery', 'bench');
    const share = during(of(weak.wrong, 'bench')).length / during(of(weak.right, 'bench')).length;
    expect(share).toBeGreaterThan(0.5);
    expect(share).toBeLessThan(0.7);
    for (const { at, sentAt } of during(of(threeDays('time-wrong', 'bench').wrong, 'bench'))) {
      expect(at).toBe(sentAt - 2 * HOUR_MS);
    }
  });
});
