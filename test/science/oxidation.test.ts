import { describe, expect, it } from 'vitest';
import { oxygenUptakePercent } from '../../daemon/science/oxidation.ts';
import { OXYGEN_UPTAKE, OXYGEN_UPTAKE_WITHOUT_DRIER } from '../published/oxygen-uptake.ts';

type Points = (typeof OXYGEN_UPTAKE)[number]['points'];

/** Best plateau and its root mean square error at a lag and a rate, in % of the oil's mass. */
function fitPlateau(points: Points, lagHours: number, ratePerHour: number) {
  const shape = points.map(
    ([day]) => oxygenUptakePercent({ lagHours, ratePerHour }, 24 * day) / 100,
  );
  const square = shape.reduce((sum, share) => sum + share * share, 0);
  const product = points.reduce((sum, [, gain], k) => sum + gain * (shape[k] ?? 0), 0);
  const plateau = square > 0 ? product / square : 0;
  const errors = points.map(([, gain], k) => (gain - plateau * (shape[k] ?? 0)) ** 2);
  return { plateau, rms: Math.sqrt(errors.reduce((a, b) => a + b, 0) / points.length) };
}

/** Lag in tenths of a day and rate in steps of 3 %, by trying all. */
function bestCurve(points: Points) {
  let best = { lagDays: 0, perDay: 0, plateau: 0, rms: Number.POSITIVE_INFINITY };
  for (let lagDays = 0; lagDays <= 8; lagDays += 0.1) {
    for (let perDay = 0.3; perDay < 8; perDay *= 1.03) {
      const { plateau, rms } = fitPlateau(points, 24 * lagDays, perDay / 24);
      if (rms < best.rms) best = { lagDays, perDay, plateau, rms };
    }
  }
  return best;
}

describe('oxygen uptake of linseed oil with driers', () => {
  it.each(OXYGEN_UPTAKE)('of table $table, $drier, is a lag and two equal steps', ({ points }) => {
    const { rms, plateau, lagDays } = bestCurve(points);
    // root mean square errors seen: 0.07 to 0.22 % of the oil's mass, of a gain of 9 to 11 %
    expect(rms).toBeLessThan(0.25);
    expect(rms / plateau).toBeLessThan(0.03);
    // the gain on glass: about 16 % at the very most, by the same author
    expect(plateau).toBeGreaterThan(8.5);
    expect(plateau).toBeLessThan(12);
    expect(lagDays).toBeGreaterThan(0.5);
  });

  it('starts days sooner with more drier: the lag is what the drier changes', () => {
    const lags = ['PbO 0.50 %', 'PbO 0.70 %', 'PbO 1.30 %'].map((drier) => {
      const curve = OXYGEN_UPTAKE.find((one) => one.drier === drier);
      return bestCurve(curve?.points ?? []).lagDays;
    });
    // seen: 6.4, 2.8 and 0.9 days
    expect(lags[0]).toBeCloseTo(6.4, 0);
    expect(lags[1]).toBeCloseTo(2.8, 0);
    expect(lags[2]).toBeCloseTo(0.9, 0);
  });

  it('hardly starts in 20 days without a drier', () => {
    const last = OXYGEN_UPTAKE_WITHOUT_DRIER.points.at(-1);
    expect(last?.[1]).toBeLessThan(0.06 * 10);
  });
});

describe('the share taken up', () => {
  it('is nothing in the lag, 26.4 % after one and 59.4 % after two time constants beyond it', () => {
    const uptake = { lagHours: 10, ratePerHour: 0.05 };
    expect(oxygenUptakePercent(uptake, 10)).toBe(0);
    // 1 − 2/e and 1 − 3/e²
    expect(oxygenUptakePercent(uptake, 30)).toBeCloseTo(26.424, 3);
    expect(oxygenUptakePercent(uptake, 50)).toBeCloseTo(59.399, 3);
    expect(oxygenUptakePercent(uptake, 1e6)).toBe(100);
  });

  it.each([
    ['lagHours is -1; allowed: 0', () => oxygenUptakePercent({ lagHours: -1, ratePerHour: 1 }, 1)],
    ['ratePerHour is 0', () => oxygenUptakePercent({ lagHours: 0, ratePerHour: 0 }, 1)],
    ['hours is NaN', () => oxygenUptakePercent({ lagHours: 0, ratePerHour: 1 }, Number.NaN)],
  ])('refuses nonsense: %s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
