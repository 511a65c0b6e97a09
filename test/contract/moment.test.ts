import { describe, expect, it } from 'vitest';
import { Id, Moment, toMoment } from '../../daemon/contract/moment.ts';

describe('a moment', () => {
  // ISO 8601 forms as RFC 3339 section 5.8 prints them as examples.
  it.each(['1985-04-12T23:20:50.52Z', '1996-12-19T16:39:57-08:00', '1937-01-01T12:00:27.87+00:20'])(
    'may be written %s',
    (text) => {
      expect(Moment.parse(text)).toBe(text);
      expect(Number.isFinite(Date.parse(text))).toBe(true);
    },
  );

  it.each([
    '2026-05-04',
    '2026-05-04T07:30',
    '2026-05-04 07:30:00Z',
    '04.05.2026',
    '2026-02-30T00:00:00Z',
    '',
  ])('is not %s', (text) => {
    expect(Moment.safeParse(text).success).toBe(false);
  });

  it('without a time zone is none: a shed’s summer time would be lost', () => {
    expect(Moment.safeParse('2026-05-04T07:30:00').success).toBe(false);
  });

  it('comes back from epoch milliseconds in UTC', () => {
    expect(toMoment(0)).toBe('1970-01-01T00:00:00.000Z');
    expect(toMoment(null)).toBeNull();
  });
});

describe('an id', () => {
  // RFC 9562, appendix A.6: the example of version 7.
  it('is a UUID', () => {
    expect(Id.safeParse('017f22e2-79b0-7cc3-98c4-dc0c0c07398f').success).toBe(true);
    for (const not of ['', '1', '017f22e2-79b0-7cc3-98c4', "'; drop table place; --"]) {
      expect(Id.safeParse(not).success).toBe(false);
    }
  });
});
