import { describe, expect, it } from 'vitest';
import { type HelpQuestion, whatHelps } from '../../daemon/rules/what-helps.ts';

// What helps, and in which order, is common practice, no source; so are the limits.

const hour = 3_600_000;
const question = (change: Partial<HelpQuestion> = {}): HelpQuestion => ({
  verdict: 'wait',
  holds: [],
  isIndoors: true,
  airflow: 'cannot-tell',
  tempC: 18,
  rhPercent: 60,
  isDrierOutside: null,
  solventHours: null,
  isStandingStill: false,
  failedTest: false,
  likelyAt: 100 * hour,
  warmer: null,
  leastDewMarginK: 8,
  ...change,
});
const kinds = (change: Partial<HelpQuestion>) =>
  whatHelps(question(change)).helps.map((help) => help.kind);
const codes = (change: Partial<HelpQuestion>) =>
  whatHelps(question(change)).holdsBack.map((reason) => reason.code);

describe('what holds a coat back', () => {
  it('is only time in good air', () => {
    expect(codes({})).toEqual(['time']);
    expect(kinds({})).toEqual(['only-time']);
  });

  it('is nothing when it is ready', () => {
    expect(whatHelps(question({ verdict: 'ready' }))).toEqual({ holdsBack: [], helps: [] });
  });

  it('is cold, damp and still air, each named', () => {
    expect(codes({ tempC: 8, rhPercent: 88, airflow: 'poor' })).toEqual([
      'cold',
      'damp',
      'still-air',
    ]);
    expect(codes({ tempC: 4, isStandingStill: true })).toEqual(['stands-still']);
    expect(codes({ tempC: null })).toEqual(['air-unknown']);
  });
});

describe('what would help most', () => {
  const warmer = { toTempC: 15, likelyAt: 50 * hour };

  it('is changed air before warmth where the air stands still', () => {
    expect(kinds({ airflow: 'poor', tempC: 10, warmer })).toEqual(['changed-air', 'warmer']);
  });

  it('is not air from outside while that is wetter', () => {
    const [air] = whatHelps(question({ airflow: 'poor', isDrierOutside: false })).helps;
    expect(air?.text).toMatch(/now it is wetter/);
  });

  it('is warmth, with what it saves and how not to get it', () => {
    const [warm] = whatHelps(question({ tempC: 10, warmer })).helps;
    expect(warm).toMatchObject({ kind: 'warmer', gainHours: 50 });
    expect(warm?.text).toMatch(/Never an open flame, a glowing or an unvented heater/);
  });

  it('is never heat within the first day of a coat with turpentine', () => {
    expect(kinds({ tempC: 10, warmer, solventHours: 23 })).toEqual(['warmer-later']);
    expect(kinds({ tempC: 10, warmer, solventHours: 24 })).toEqual(['warmer']);
    for (const help of whatHelps(question({ tempC: 10, warmer, solventHours: 3 })).helps) {
      expect(help.text).not.toMatch(/Kept at/);
    }
  });

  it('is no heater for a few hours’ gain', () => {
    expect(kinds({ warmer: { toTempC: 20, likelyAt: 92 * hour } })).toEqual(['only-time']);
  });

  it('is drier air where the boards come near the dew point', () => {
    expect(kinds({ leastDewMarginK: 1.2 })).toEqual(['drier']);
  });

  it('is to feel it when a test is due', () => {
    expect(kinds({ verdict: 'test' })).toEqual(['touch']);
  });

  it('is only time and weather outdoors', () => {
    expect(kinds({ isIndoors: false, airflow: 'poor', rhPercent: 95, warmer })).toEqual([
      'only-time',
    ]);
  });
});
