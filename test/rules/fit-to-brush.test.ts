import { describe, expect, it } from 'vitest';
import { usualApplicationLimits as limits } from '../../daemon/rules/application-limits.ts';
import { latestStop } from '../../daemon/rules/brush-hours.ts';
import { type BrushQuestion, brushReasons, brushWord } from '../../daemon/rules/fit-to-brush.ts';
import { type HourAhead, nightAhead } from '../../daemon/rules/hour-ahead.ts';

const hour = 3_600_000;
/** 20 May 2026, 10:00 in Stockholm. */
const now = Date.UTC(2026, 4, 20, 8);
const timeZone = 'Europe/Stockholm';

const question = (given: Partial<BrushQuestion> = {}): BrushQuestion => ({
  ...{ kind: 'room', facing: null, exposure: null },
  air: { tempC: 18, rhPercent: 60, stale: false },
  night: null,
  moisture: { values: [12.1, 13, 14.2, 12.8, 15.9], at: now - hour },
  ...{ isBare: true, shelf: null, solvent: [] },
  ...{ now, timeZone, hemisphere: 'north', ...given },
});
const reasons = (given: Partial<BrushQuestion> = {}) => brushReasons(question(given), limits);
const word = (given: Partial<BrushQuestion> = {}) => brushWord(reasons(given));
const one = (code: string, given: Partial<BrushQuestion> = {}) =>
  reasons(given).find((reason) => reason.code === code);
const air = (tempC: number | null, rhPercent: number | null = 60, stale = false) => ({
  air: { tempC, rhPercent, stale },
});

describe('fit to brush', () => {
  it('is good in dry, mild air over dry timber', () => {
    expect(word()).toBe('good');
  });

  // 5 °C and 32 °C: common practice and a US forest products note on house paint; slow below 15 °C,
  // warm above 25 °C: common practice, no source.
  it.each([
    [4.9, 'no'],
    [5, 'poor'],
    [9.9, 'poor'],
    [14.9, 'poor'],
    [15, 'good'],
    [25, 'good'],
    [25.1, 'poor'],
    [32, 'poor'],
    [32.1, 'no'],
  ] as const)('at %s °C is %s', (tempC, expected) => {
    expect(word(air(tempC))).toBe(expected);
  });

  it('is not at more than 85 % or less than 3 K above the dew point (ISO 8502-4 practice)', () => {
    expect(word(air(18, 86))).toBe('no');
    // At 18 °C and 82.5 % the dew point is 15.0 °C: 3.0 K (psychrometric table, rounded).
    expect(one('dew-margin', air(18, 84))).toMatchObject({ weight: 'no', limit: 3, unit: 'K' });
    expect(one('dew-margin', air(18, 81))).toMatchObject({ weight: 'fine' });
  });

  it('cannot be told without a fresh reading, or without humidity', () => {
    expect(word(air(null))).toBe('cannot-tell');
    expect(word(air(18, 60, true))).toBe('cannot-tell');
    expect(word(air(18, null))).toBe('cannot-tell');
    expect(word(air(3, null))).toBe('no');
  });

  // 16 % at the surface: a public wood guide.
  it('goes by the worst board of five', () => {
    const wet = { values: [12, 12, 12, 12, 16.1], at: now };
    expect(one('moisture', { moisture: wet })).toMatchObject({ weight: 'no', figure: 16.1 });
    expect(word({ moisture: { values: [12, 13], at: now } })).toBe('poor');
    expect(word({ moisture: { values: [12, 12, 12, 12, 12], at: now - 96 * hour } })).toBe('poor');
    expect(one('moisture-old', { moisture: { values: [12], at: now - 96 * hour } })?.text).toMatch(
      /4 days ago/,
    );
  });

  it('cannot be told of bare timber that nobody measured; a coated one is only asked about', () => {
    expect(word({ moisture: null })).toBe('cannot-tell');
    expect(word({ moisture: null, isBare: false })).toBe('poor');
  });

  it('asks for shelf that is free, where it is known', () => {
    const shelf = { freeM: 80, usedM: 120, neededM: 100 };
    expect(one('shelf', { shelf })).toMatchObject({ weight: 'poor', figure: 80, limit: 100 });
    expect(one('shelf', { shelf: { ...shelf, neededM: 60 } })?.weight).toBe('fine');
    expect(word({ shelf: { ...shelf, freeM: null } })).toBe('good');
  });

  it('takes the solvent of the coat to come into account, indoors', () => {
    const solvent = [{ code: 'solvent-explosive', text: 'That is 12 % of …' }];
    expect(word({ solvent })).toBe('no');
    expect(word({ solvent, kind: 'wall' })).toBe('good');
  });

  it('speaks of the sun on an open wall while it may stand on it', () => {
    const wall = { kind: 'wall', facing: 'south', exposure: 'open' } as const;
    expect(one('sun', wall)?.text).toMatch(/direct sun/);
    expect(one('sun', { ...wall, facing: 'north' })).toBeUndefined();
    expect(one('sun', { ...wall, exposure: 'shade' })).toBeUndefined();
    expect(one('sun', { ...wall, facing: 'west' })).toBeUndefined();
  });

  it('asks for the floor the day before, indoors only', () => {
    expect(one('floor')?.text).toMatch(/Sweep .* damp it the day before/);
    expect(one('floor', { kind: 'wall' })).toBeUndefined();
  });

  it('never says safe', () => {
    const all = [...reasons(), ...reasons({ ...air(2, 95), moisture: null })];
    expect(all.map(({ text }) => text).join(' ')).not.toMatch(/\bsafe/i);
  });
});

/** A day by the hour: from `now` on, the same air but where given. */
const hours = (given: Record<number, Partial<HourAhead>> = {}): HourAhead[] =>
  Array.from({ length: 36 }, (_, i) => ({
    ...{ at: now + i * hour, tempC: 18, errorK: 1, rhPercent: 60, rainMm: 0 },
    ...given[i],
  }));
const stop = (given: Record<number, Partial<HourAhead>>) => {
  const found = latestStop(hours(given), now, limits, timeZone);
  return found && { inHours: (found.at - now) / hour, because: found.because.text };
};

describe('the latest hour to stop', () => {
  // Two hours before dew: a US forest products note on house paint.
  it('is two hours before dew', () => {
    expect(stop({ 9: { rhPercent: 84 } })).toEqual({
      inHours: 7,
      because: 'From 19:00 on the boards come too near the dew point (stop 2 h before).',
    });
  });
  it('is two hours before it gets too cold', () => {
    expect(stop({ 11: { tempC: 4 } })?.inHours).toBe(9);
  });
  it('is a day before rain (common practice, no source)', () => {
    expect(stop({ 30: { rainMm: 0.8 } })).toEqual({
      inHours: 6,
      because: 'From tomorrow 16:00 on rain is forecast (stop 24 h before).',
    });
    expect(stop({ 5: { rainMm: 0.8 } })?.inHours).toBe(0);
    expect(stop({ 5: { rainMm: 0.05 } })).toBeNull();
  });
  it('is the first of several', () => {
    expect(stop({ 9: { rhPercent: 84 }, 34: { rainMm: 2 } })?.inHours).toBe(7);
  });
  it('is none where nothing asks for it', () => {
    expect(stop({})).toBeNull();
  });
});

describe('the coming night', () => {
  it('goes from eight to eight by the clock of the site', () => {
    const night = nightAhead(
      hours({
        9: { tempC: -9 },
        10: { tempC: 9 },
        16: { tempC: 6, rhPercent: 80, rainMm: 1 },
        22: { tempC: -9 },
      }),
      now,
      timeZone,
    );
    expect(night).toMatchObject({
      lowC: 6,
      lowAt: now + 16 * hour,
      highestRhPercent: 80,
      rainMm: 1,
    });
    expect(night?.leastMarginK).toBeCloseTo(3.2, 0);
  });
  it('is the rest of this one in the small hours', () => {
    const early = now - 5 * hour;
    const night = nightAhead(
      hours({ 0: { tempC: 3 }, 12: { tempC: -4 } }).map((one) => ({
        ...one,
        at: one.at - 5 * hour,
      })),
      early,
      timeZone,
    );
    expect(night).toMatchObject({ lowC: 3, lowAt: early, toAt: Date.UTC(2026, 4, 20, 6) });
  });
  it('is not known without hours', () => {
    expect(nightAhead([], now, timeZone)).toBeNull();
    expect(one('night-unknown')?.weight).toBe('note');
  });
  it('weighs on the word', () => {
    const night = nightAhead(hours({ 16: { tempC: 3, rhPercent: 97 } }), now, timeZone);
    const said = reasons({ night }).filter(({ code }) => code.startsWith('night'));
    expect(said.map(({ code }) => code)).toEqual(['night-cold', 'night-dew']);
    expect(brushWord(reasons({ night }))).toBe('poor');
  });
});
