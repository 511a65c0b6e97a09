import { describe, expect, it } from 'vitest';
import { gates } from '../../daemon/contract/gate.ts';
import {
  type CoatState,
  cureCoat,
  FRESH_COAT,
  passesTouch,
  SHED_PAINT,
  shareCured,
} from '../../sensors/shed/physics/paint-truth.ts';

const DRY = { tempC: 20, rhPercent: 50 };
const coatAfter = (hours: number, air = DRY): CoatState =>
  cureCoat(FRESH_COAT, SHED_PAINT, air, hours);

function hoursToPass(gate: (typeof gates)[number], air = DRY): number {
  for (let hours = 0; hours < 1000; hours += 0.1) {
    if (passesTouch(coatAfter(hours, air), SHED_PAINT, gate)) return hours;
  }
  return Number.POSITIVE_INFINITY;
}

describe('the hidden paint', () => {
  it('does nothing during its lag and then follows two equal first-order steps', () => {
    expect(shareCured(coatAfter(SHED_PAINT.lagHours), SHED_PAINT)).toBe(0);
    // source: A → B → C with k1 = k2 = k: C = 1 − (1 + kt)·e^(−kt); at kt = 1 it is 1 − 2/e
    const atOne = coatAfter(SHED_PAINT.lagHours + 1 / SHED_PAINT.ratePerHour);
    expect(shareCured(atOne, SHED_PAINT)).toBeCloseTo(1 - 2 / Math.E, 12);
    // and it solves the two rate equations, integrated here step by step
    const { ratePerHour, lagHours } = SHED_PAINT;
    let [a, b, c] = [1, 0, 0];
    const dt = 0.001;
    for (let t = 0; t < 40 - dt / 2; t += dt) {
      const [first, second] = [ratePerHour * a * dt, ratePerHour * b * dt];
      [a, b, c] = [a - first, b + first - second, c + second];
    }
    expect(shareCured(coatAfter(lagHours + 40), SHED_PAINT)).toBeCloseTo(c, 4);
  });

  it('allows recoating after two to three days at 20 °C', () => {
    // common practice, no source: a coat dries in two to three days under normal conditions
    expect(hoursToPass('recoat')).toBeGreaterThan(48);
    expect(hoursToPass('recoat')).toBeLessThan(72);
  });

  it('passes its gates in the order of what they need', () => {
    const hours = gates.map((gate) => hoursToPass(gate));
    expect(hours).toEqual([...hours].sort((a, b) => a - b));
  });

  it('takes about twice as long at 10 °C', () => {
    // source: Arrhenius at 50 to 60 kJ/mol gives a factor of 2.06 to 2.39 from 10 to 20 °C
    const ratio = hoursToPass('recoat', { ...DRY, tempC: 10 }) / hoursToPass('recoat');
    expect(ratio).toBeGreaterThan(2.06);
    expect(ratio).toBeLessThan(2.39);
  });

  it('cures the same over a stretch of time however it is cut', () => {
    let pieces = FRESH_COAT;
    for (let piece = 0; piece < 600; piece++) pieces = cureCoat(pieces, SHED_PAINT, DRY, 0.1);
    expect(pieces.effectiveHours).toBeCloseTo(coatAfter(60).effectiveHours, 9);
  });

  it('is slowed near saturation only', () => {
    expect(coatAfter(10, { ...DRY, rhPercent: 84 })).toEqual(coatAfter(10));
    const saturated = coatAfter(10, { ...DRY, rhPercent: 100 }).effectiveHours;
    expect(saturated).toBeLessThan(coatAfter(10).effectiveHours);
  });
});
