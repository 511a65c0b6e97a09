import { describe, expect, it } from 'vitest';
import { readTime, type ZoneOffset, zoneOffset } from '../../daemon/command/replay-time.ts';

function zoneOf(name: string): ZoneOffset {
  const zone = zoneOffset(name);
  if (zone === null) throw new Error(`the runtime has no zone ${name}`);
  return zone;
}

const UTC = zoneOf('UTC');

function iso(text: string, zone: ZoneOffset = UTC, notBefore: string | null = null): string | null {
  const time = readTime(text, zone, notBefore === null ? null : Date.parse(notBefore));
  return time.kind === 'at' ? new Date(time.at).toISOString() : null;
}

describe('times as recorders write them', () => {
  it.each([
    // ISO 8601, and the space that many tables write for its T
    ['2024-06-01T12:00:00Z', '2024-06-01T12:00:00.000Z'],
    ['2024-06-01T12:00:00+02:00', '2024-06-01T10:00:00.000Z'],
    ['2024-06-01T12:00:00-0330', '2024-06-01T15:30:00.000Z'],
    ['2024-06-01 12:00', '2024-06-01T12:00:00.000Z'],
    ['2024-06-01T12:00:00.250', '2024-06-01T12:00:00.250Z'],
    ['2024-06-01', '2024-06-01T00:00:00.000Z'],
    // POSIX.1 epoch seconds: 1 700 000 000 is 2023-11-14 22:13:20 UTC
    ['1700000000', '2023-11-14T22:13:20.000Z'],
    ['1700000000.5', '2023-11-14T22:13:20.500Z'],
    ['1700000000250', '2023-11-14T22:13:20.250Z'],
  ])('%s is %s', (text, expected) => {
    expect(iso(text)).toBe(expected);
  });

  it.each([
    '',
    'yesterday',
    '12:00',
    '2024-02-30T10:00',
    '2023-02-29',
    '2024-06-01T25:00',
    '2024-06-01T10:61',
    '01/06/2024 10:00',
    // a day written without dashes must not pass as seconds of the year 1970
    '20240601',
    '0',
    '1970-01-01T00:00:00Z',
  ])('%j is refused with the text in the reason', (text) => {
    const time = readTime(text, UTC, null);
    expect(time.kind).toBe('unreadable');
    expect(time.kind === 'unreadable' && time.because).toContain(text);
  });
});

// Dates of change: IANA time zone database. European Union (rule EU): last Sunday of March and
// October at 01:00 UTC. United States (rule US): second Sunday of March, first of November, 02:00 local.
describe('local times through a change of clocks', () => {
  it.each([
    ['Europe/Oslo', '2024-01-15T12:00', '2024-01-15T11:00:00.000Z'],
    ['Europe/Oslo', '2024-07-15T12:00', '2024-07-15T10:00:00.000Z'],
    ['Europe/Oslo', '2024-03-31T01:59:59', '2024-03-31T00:59:59.000Z'],
    ['Europe/Oslo', '2024-03-31T03:00:00', '2024-03-31T01:00:00.000Z'],
    ['America/New_York', '2024-03-10T01:59', '2024-03-10T06:59:00.000Z'],
    ['America/New_York', '2024-03-10T03:00', '2024-03-10T07:00:00.000Z'],
    ['America/New_York', '2024-12-01T00:00', '2024-12-01T05:00:00.000Z'],
    // half and quarter hours: India +05:30, Nepal +05:45, no change of clocks
    ['Asia/Kolkata', '2024-06-01T12:00', '2024-06-01T06:30:00.000Z'],
    ['Asia/Kathmandu', '2024-06-01T12:00', '2024-06-01T06:15:00.000Z'],
    // Lord Howe changes by half an hour: 7 April 2024 02:00 becomes 01:30 (+11 to +10:30)
    ['Australia/Lord_Howe', '2024-04-07T02:00', '2024-04-06T15:30:00.000Z'],
    ['+01:00', '2024-03-31T02:30', '2024-03-31T01:30:00.000Z'],
  ])('%s %s is %s', (zone, local, expected) => {
    expect(iso(local, zoneOf(zone))).toBe(expected);
  });

  it('refuses an hour that the clocks skipped, and says how to keep winter time', () => {
    const time = readTime('2024-03-31T02:30', zoneOf('Europe/Oslo'), null);
    expect(time).toMatchObject({
      kind: 'unreadable',
      because: expect.stringContaining('--zone +01:00'),
    });
  });

  it('takes the repeated hour in its order: first summer time, then winter time', () => {
    const oslo = zoneOf('Europe/Oslo');
    expect(iso('2024-10-27T02:30', oslo)).toBe('2024-10-27T00:30:00.000Z');
    expect(iso('2024-10-27T02:30', oslo, '2024-10-27T00:20:00Z')).toBe('2024-10-27T00:30:00.000Z');
    expect(iso('2024-10-27T02:10', oslo, '2024-10-27T00:50:00Z')).toBe('2024-10-27T01:10:00.000Z');
    expect(iso('2024-10-27T02:40', oslo, '2024-10-27T01:30:00Z')).toBe('2024-10-27T01:40:00.000Z');
  });

  it('walks a whole autumn night minute by minute without a jump', () => {
    const oslo = zoneOf('Europe/Oslo');
    const from = Date.UTC(2024, 9, 26, 22);
    let last: number | null = null;
    for (let minute = 0; minute < 6 * 60; minute++) {
      const at = from + minute * 60_000;
      const local = new Date(at + (at < Date.UTC(2024, 9, 27, 1) ? 2 : 1) * 3_600_000);
      const time = readTime(local.toISOString().slice(0, 16), oslo, last);
      expect(time).toEqual({ kind: 'at', at });
      last = at;
    }
  });

  it('knows no zone of a made-up name', () => {
    expect(zoneOffset('Europe/Nowhere')).toBeNull();
  });
});
