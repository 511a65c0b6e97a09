import { describe, expect, it } from 'vitest';
import { cureAhead } from '../../daemon/science/cure-ahead.ts';
import { readyFrom } from '../../daemon/science/forecast.ts';
import { needCurve } from '../../daemon/science/need-curve.ts';
import { sumsAhead } from '../../daemon/science/sums-ahead.ts';
import { temperatureOutlook } from '../../daemon/science/temperature-outlook.ts';
import { fitRequirement } from '../../daemon/science/touch.ts';

const HOUR = 3_600_000;
const START = Date.UTC(2026, 3, 1);
const MODEL = { rate: 'nurse-saul', datumC: 5, maxGapHours: 3 } as const;
const HOURS = Array.from({ length: 24 * 20 }, (_, hour) => hour);

const history = Array.from({ length: 24 * 8 + 1 }, (_, i) => ({
  at: START + i * HOUR,
  tempC: 14 + 4 * Math.sin((2 * Math.PI * i) / 24) + 2 * Math.sin(i / 31),
}));
const outlook = temperatureOutlook(history, {});
if (outlook === null) throw new Error('no outlook');
const ahead = cureAhead(outlook, MODEL);

const reaches = (sums: readonly number[], needed: number) => sums.findIndex((sum) => sum >= needed);
const hoursOf = (at: number | null) => ((at ?? Number.NaN) - ahead.fromAt) / HOUR;

describe('sums to come', () => {
  it.each([200, 600, 1000])(
    'reach what is needed for certain, %d °C·h, when the forecast says it is there: early, likely and late',
    (needed) => {
      // As good as certain: a tenth of a per cent between 10 and 90 %.
      const need = needCurve(fitRequirement([], { p10: needed, p90: needed * 1.001 }), {
        boardSpread: 0,
      });
      const soFar = { degreeHoursLow: 40, degreeHoursHigh: 40 };
      const times = readyFrom(ahead, soFar, need);
      const sums = sumsAhead(ahead, soFar, HOURS);
      // By the hour, and the forecast tells 64 futures apart: the tenth lies between two of them.
      const slackHours = (at: number) => 1.5 + at * 0.01;
      for (const way of ['early', 'likely', 'late'] as const) {
        const at = hoursOf(times[way]);
        expect(Math.abs(reaches(sums[way], needed) - at), way).toBeLessThan(slackHours(at));
      }
    },
  );

  it('begin at what there is, and are straight on the expected path', () => {
    const sums = sumsAhead(ahead, { degreeHoursLow: 40, degreeHoursHigh: 40 }, [0, 10]);
    expect([sums.early[0], sums.likely[0], sums.late[0]]).toEqual([40, 40, 40]);
    const middle = ahead.paths[ahead.deviations.indexOf(0)];
    expect(sums.likely[1]).toBe(40 + (middle?.[10] ?? 0));
    expect(sums.at).toEqual([ahead.fromAt, ahead.fromAt + 10 * HOUR]);
  });

  it('are as wide from the start as gaps leave open', () => {
    const sums = sumsAhead(ahead, { degreeHoursLow: 40, degreeHoursHigh: 80 }, [0, 200]);
    expect(sums.late[0]).toBeGreaterThanOrEqual(40);
    expect(sums.early[0]).toBeLessThanOrEqual(80);
    expect((sums.early[0] ?? 0) - (sums.late[0] ?? 0)).toBeGreaterThan(25);
    const certain = sumsAhead(ahead, { degreeHoursLow: 60, degreeHoursHigh: 60 }, [200]);
    expect((sums.early[1] ?? 0) - (sums.late[1] ?? 0)).toBeGreaterThan(
      (certain.early[0] ?? 0) - (certain.late[0] ?? 0),
    );
  });

  it('leave out hours beyond the outlook', () => {
    const { at } = sumsAhead(ahead, { degreeHoursLow: 0, degreeHoursHigh: 0 }, [0, 1e6]);
    expect(at).toHaveLength(1);
  });
});
