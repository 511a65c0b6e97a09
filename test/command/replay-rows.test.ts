import { describe, expect, it } from 'vitest';
import { replayOptions } from '../../daemon/command/replay-options.ts';
import { ReplayRefusal } from '../../daemon/command/replay-refusal.ts';
import { rowReader } from '../../daemon/command/replay-rows.ts';

function reader(header: string[], args: string[] = [], delimiter = ',') {
  const options = replayOptions(['a.csv', ...args], '/');
  if (options === null) throw new Error('help was not asked for');
  return rowReader(header, options, delimiter);
}

const LONG = ['time', 'sensor', 'quantity', 'value'];
const NOON = '2024-06-01T12:00:00Z';

describe('a recording with one reading a row', () => {
  it('reads its columns in any order', () => {
    const row = reader(['value', 'quantity', 'sensor', 'time'])([
      '21.5',
      'air-temperature',
      'a',
      NOON,
    ]);
    expect(row).toEqual({
      readings: [{ sensor: 'a', quantity: 'air-temperature', value: 21.5, at: Date.parse(NOON) }],
      faults: [],
      missing: 0,
    });
  });

  it('takes other names of the columns', () => {
    const read = reader(
      ['when', 'who', 'what', 'how much'],
      [
        ...['--time-column', 'when', '--sensor-column', 'who'],
        ...['--quantity-column', 'what', '--value-column', 'how much'],
      ],
    );
    expect(read([NOON, 'a', 'relative-humidity', '55']).readings).toHaveLength(1);
  });

  it.each([
    [['noon', 'a', 'air-temperature', '21'], 'noon'],
    [[NOON, 'a b', 'air-temperature', '21'], 'a b'],
    [[NOON, 'a', 'warmth', '21'], 'warmth'],
    [[NOON, 'a', 'air-temperature', 'warm'], 'warm'],
    [[NOON, 'a', 'air-temperature', '0x15'], '0x15'],
    [[NOON, 'a', 'air-temperature', '1e999'], '1e999'],
    [[NOON, 'a', 'air-temperature', 'Infinity'], 'Infinity'],
    [[NOON, 'a', 'air-temperature'], 'value'],
  ])('names what is wrong in %j', (cells, named) => {
    const row = reader(LONG)(cells);
    expect(row.readings).toEqual([]);
    expect(row.faults).toHaveLength(1);
    expect(row.faults[0]).toContain(named);
  });

  it.each(['', 'NA', 'NaN', 'null'])('takes %j for a missing reading, never for 0', (cell) => {
    expect(reader(LONG)([NOON, 'a', 'air-temperature', cell])).toEqual({
      readings: [],
      faults: [],
      missing: 1,
    });
  });

  it('keeps the repeated autumn hour apart for each sensor', () => {
    const read = reader(LONG, ['--zone', 'Europe/Oslo']);
    const at = (sensor: string, minute: string) =>
      read([`2024-10-27T02:${minute}`, sensor, 'air-temperature', '9']).readings[0]?.at;
    // source: IANA rule EU, clocks go back at 01:00 UTC on 27 October 2024
    expect(at('a', '50')).toBe(Date.UTC(2024, 9, 27, 0, 50));
    expect(at('a', '10')).toBe(Date.UTC(2024, 9, 27, 1, 10));
    expect(at('b', '10')).toBe(Date.UTC(2024, 9, 27, 0, 10));
  });
});

describe('a table with a column per sensor', () => {
  const MAP = ['--map', 't=a/air-temperature', '--map', 'rh=a/relative-humidity'];

  it('makes a reading of each mapped cell and leaves the others alone', () => {
    const row = reader(['time_utc', 't', 'other', 'rh'], MAP)([NOON, '21.5', 'x', '55']);
    expect(row.readings.map(({ quantity, value }) => [quantity, value])).toEqual([
      ['air-temperature', 21.5],
      ['relative-humidity', 55],
    ]);
  });

  it('keeps the good cell of a row with a bad one', () => {
    const row = reader(['time_utc', 't', 'rh'], MAP)([NOON, 'warm', '55']);
    expect(row.readings).toHaveLength(1);
    expect(row.faults[0]).toContain('warm');
  });

  it('reads decimal commas where columns are not separated by commas', () => {
    const row = reader(['time', 't', 'rh'], MAP, ';')([NOON, '21,5', '55,25']);
    expect(row.readings.map(({ value }) => value)).toEqual([21.5, 55.25]);
  });

  it.each(['time', 'time_utc', 'time_local', 'timestamp'])('finds the time under %s', (name) => {
    expect(reader(['t', 'rh', name], MAP)(['21', '55', NOON]).readings).toHaveLength(2);
  });

  it('names the columns that are there when one is missing', () => {
    expect(() => reader(['time', 't'], MAP)).toThrow(/no column "rh"; it has "time", "t"/);
  });
});

describe('the command line of replay', () => {
  it.each([
    [['a.csv', 'b.csv'], 'one file'],
    [[], 'one file'],
    [['a.csv', '--speed', 'fast'], '--speed fast'],
    [['a.csv', '--speed', '0'], '--speed 0'],
    [['a.csv', '--zone', 'Nowhere'], '--zone Nowhere'],
    [['a.csv', '--map', 't'], '--map t'],
    [['a.csv', '--map', 't=a/warmth'], 'air-temperature'],
    [['a.csv', '--map', 't=a b/air-temperature'], '--map t=a b'],
    [['a.csv', '--site', 'a/b'], '--site a/b'],
    [['a.csv', '--mqtt', 'http://here'], '--mqtt http://here'],
    [['a.csv', '--delimiter', 'ab'], '--delimiter ab'],
    [['a.csv', '--nonsense'], '--nonsense'],
    [['a.csv', '--map', 't=a/air-temperature', '--value-column', 'v'], '--value-column'],
  ])('%j is refused, naming %s', (args, named) => {
    expect(() => replayOptions(args, '/')).toThrow(ReplayRefusal);
    expect(() => replayOptions(args, '/')).toThrow(named);
  });

  it.each([
    ['1884', 'mqtt://127.0.0.1:1884'],
    ['pi:1883', 'mqtt://pi:1883'],
    ['mqtts://pi', 'mqtts://pi'],
  ])('--mqtt %s is %s', (given, url) => {
    expect(replayOptions(['a.csv', '--mqtt', given], '/')?.url).toBe(url);
  });
});
