import { describe, expect, it } from 'vitest';
import { type Gate, gates } from '../../daemon/contract/gate.ts';
import {
  type BoardAir,
  type CureState,
  cure,
  curePace,
  MIDDLING_PAINT,
  shareCured,
  slower,
  UNCURED,
} from '../../sensors/shed/physics/paint-truth.ts';

const PAINT = MIDDLING_PAINT;
/** A lit, aired room in the air that a label has in mind. */
const NORMAL: BoardAir = { tempC: 20, rhPercent: 55, light: 0, renewalsPerHour: 1000 };
const cured = (hours: number, air = NORMAL, paint = PAINT): CureState =>
  cure(UNCURED, paint, curePace(paint, air), hours);

function hoursToPass(gate: Gate, air = NORMAL, paint = PAINT): number {
  for (let hours = 0; hours < 2000; hours += 0.1) {
    if (shareCured(cured(hours, air, paint), paint) >= paint.passesAt[gate]) return hours;
  }
  return Number.POSITIVE_INFINITY;
}

describe('the hidden paint', () => {
  it('does nothing during its lag and then follows two first-order steps', () => {
    expect(shareCured(cured(PAINT.lagHours), PAINT)).toBe(0);
    // source: the rate equations of A → B → C, integrated here step by step
    const { firstPerHour, secondPerHour, lagHours } = PAINT;
    let [a, b, c] = [1, 0, 0];
    const dt = 0.001;
    for (let t = 0; t < 40 - dt / 2; t += dt) {
      const [first, second] = [firstPerHour * a * dt, secondPerHour * b * dt];
      [a, b, c] = [a - first, b + first - second, c + second];
    }
    expect(shareCured(cured(lagHours + 40), PAINT)).toBeCloseTo(c, 4);
  });

  it('takes two steps of equal rate for what they are', () => {
    // source: A → B → C with k1 = k2 = k: at kt = 1 it is 1 − 2/e
    const equal = { ...PAINT, firstPerHour: 0.1, secondPerHour: 0.1 };
    expect(shareCured({ lagHours: 0, stepHours: 10 }, equal)).toBeCloseTo(1 - 2 / Math.E, 12);
    const nearly = { ...equal, secondPerHour: 0.100001 };
    expect(shareCured({ lagHours: 0, stepHours: 10 }, nearly)).toBeCloseTo(1 - 2 / Math.E, 5);
  });

  it('allows recoating after two to three days at 20 °C', () => {
    // common practice, no source: a coat dries in two to three days under normal conditions
    expect(hoursToPass('recoat')).toBeGreaterThan(48);
    expect(hoursToPass('recoat')).toBeLessThan(72);
  });

  it('passes its gates in the order of what they need', () => {
    const order: Gate[] = ['turn', 'stack', 'mount', 'recoat', 'sand'];
    expect([...order].sort()).toEqual([...gates].sort());
    const hours = order.map((gate) => hoursToPass(gate));
    expect(hours).toEqual([...hours].sort((a, b) => a - b));
  });

  it('takes about twice as long at 10 °C', () => {
    // source: Arrhenius at 50 to 60 kJ/mol gives a factor of 2.06 to 2.39 from 10 to 20 °C
    const ratio = hoursToPass('recoat', { ...NORMAL, tempC: 10 }) / hoursToPass('recoat');
    expect(ratio).toBeGreaterThan(2.06);
    expect(ratio).toBeLessThan(2.39);
  });

  it('cures the same over a stretch of time however it is cut, across the end of its lag too', () => {
    const pace = curePace(PAINT, { ...NORMAL, tempC: 13, rhPercent: 70 });
    let pieces = UNCURED;
    for (let piece = 0; piece < 600; piece++) pieces = cure(pieces, PAINT, pace, 0.1);
    const whole = cure(UNCURED, PAINT, pace, 60);
    expect(pieces.stepHours).toBeCloseTo(whole.stepHours, 9);
    expect(shareCured(whole, PAINT)).toBeGreaterThan(0);
  });

  it('is slowed by damp, by dew most, and by still air, and quickened by light', () => {
    const steps = (change: Partial<BoardAir>) => curePace(PAINT, { ...NORMAL, ...change }).steps;
    expect(steps({ rhPercent: 75 })).toBeLessThan(steps({}));
    expect(steps({ rhPercent: 100 })).toBeLessThan(0.8 * steps({ rhPercent: 85 }));
    expect(steps({ renewalsPerHour: 0 })).toBeCloseTo((1 - PAINT.stillAirLoss) * steps({}), 12);
    expect(steps({ renewalsPerHour: 8 })).toBeGreaterThan(steps({ renewalsPerHour: 0 }));
    expect(steps({ light: 0.5 })).toBeGreaterThan(steps({}));
  });

  it('is slower by a factor in everything', () => {
    expect(hoursToPass('recoat', NORMAL, slower(PAINT, 1.5)) / hoursToPass('recoat')).toBeCloseTo(
      1.5,
      2,
    );
  });
});
