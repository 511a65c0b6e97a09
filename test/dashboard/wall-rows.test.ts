import { describe, expect, it } from 'vitest';
import type { Overview } from '../../daemon/contract/overview.ts';
import { en } from '../../daemon/wording/en.ts';
import { createReader } from '../../dashboard/reader.ts';
import {
  footNotices,
  isFresh,
  wallRows,
  wrongAt,
  wrongLine,
} from '../../dashboard/wall/wall-rows.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';

type Place = Overview['places'][number];
type Batch = Place['batches'][number];

const now = Date.parse('2026-05-12T06:00:00Z');
const reader = createReader('en', 'metric', { ...first, ...rest }, en, ['en-GB']);

/** What is wrong at the one board of a wall, as an English reader is told. */
const wrongsOf = (given: Overview) =>
  wrongAt(onlyRow(given), given).map((wrong) => wrongLine(wrong, reader, now));

const batch: Batch = {
  id: 'batch',
  name: 'South gable',
  boards: 24,
  coat: 0,
  coatName: 'Primer',
  coatCount: 3,
  finishedAt: '2026-05-10T06:00:00Z',
  stage: 'tack-free',
  degreeHours: 700,
  equivalentHours: 46.7,
  share: 0.8,
  nextGate: 'recoat',
  verdict: {
    verdict: 'wait',
    probability: 0.1,
    early: null,
    likely: '2026-05-12T20:00:00Z',
    late: '2026-05-13T09:00:00Z',
    requiredDegreeHours: { early: 720, likely: 880, late: 1080 },
    reasons: [{ code: 'cured-so-far', text: '700 of about 880 °C·h.' }],
  },
};

const place = (changes: Partial<Place> = {}): Place => ({
  id: 'rack',
  name: 'North rack',
  kind: 'rack',
  within: null,
  volumeM3: null,
  facing: null,
  exposure: null,
  capacityM: null,
  capacityBoards: null,
  createdAt: '2026-05-01T00:00:00Z',
  air: {
    at: '2026-05-12T05:58:00Z',
    tempC: 14,
    rhPercent: 70,
    dewPointC: 8.6,
    absoluteHumidityGM3: 8.4,
    stale: false,
    apartK: null,
    apartRhPercent: null,
    from: null,
  },
  airflow: 'cannot-tell',
  airReasons: [],
  airChange: null,
  batches: [batch],
  ...changes,
});

const overview = (places: Place[], notices: Overview['notices'] = []): Overview => ({
  site: 'shed',
  siteName: null,
  now: '2026-05-12T06:00:00Z',
  speed: 1,
  intake: {
    accepted: 1,
    duplicates: 0,
    refused: 0,
    broker: 'embedded',
    connected: true,
    refusing: false,
  },
  doubts: [],
  doubtsSaid: [],
  unplacedSensors: 0,
  mayWrite: true,
  writing: 'granted',
  places,
  notices,
});

const notice = (changes: Partial<Overview['notices'][number]>): Overview['notices'][number] => ({
  id: 'notice',
  kind: 'sensor-unplaced',
  code: 'sensor-unplaced',
  subject: 'probe',
  text: 'Sensor probe has no place yet.',
  raisedAt: '2026-05-12T05:00:00Z',
  seenAt: null,
  clearedAt: null,
  repeats: 0,
  repeatedAt: null,
  ...changes,
});

const onlyRow = (given: Overview) => {
  const [row, ...others] = wallRows(given);
  expect(others).toEqual([]);
  if (row === undefined) throw new Error('no board on the wall');
  return row;
};

describe('the boards of the wall', () => {
  it('are the batches where they lie, and the empty racks; an empty room is no board', () => {
    const places = [
      place(),
      place({ id: 'spare', batches: [] }),
      place({ id: 'room', kind: 'room', batches: [] }),
    ];
    expect(wallRows(overview(places)).map(({ key, sign }) => [key, sign])).toEqual([
      ['batch', 'wait'],
      ['spare', 'empty'],
    ]);
  });

  it('keep two batches of one rack apart', () => {
    const two = place({ batches: [batch, { ...batch, id: 'other' }] });
    expect(wallRows(overview([two])).map(({ key }) => key)).toEqual(['batch', 'other']);
  });

  it('say bare before the first coat and done after the last job', () => {
    const bare = { ...batch, coat: null, stage: null, nextGate: null, verdict: null };
    const done = { ...batch, nextGate: null, verdict: null };
    expect(onlyRow(overview([place({ batches: [bare] })])).sign).toBe('bare');
    expect(onlyRow(overview([place({ batches: [done] })])).sign).toBe('done');
  });

  it('give no verdict word where no sensor has ever told the air', () => {
    const air = { ...place().air, at: null, tempC: null, rhPercent: null };
    const blind = place({ air, batches: [{ ...batch, degreeHours: 0 }] });
    const row = onlyRow(overview([blind]));
    expect(row.sign).toBe('no-data');
    expect(wrongsOf(overview([blind]))[0]).toMatch(/No sensor/);
  });

  it('are not to be trusted when the air is old or the daemon is lost', () => {
    const old = place({ air: { ...place().air, at: '2026-05-12T01:00:00Z', stale: true } });
    const row = onlyRow(overview([old]));
    expect(isFresh(row, false)).toBe(false);
    expect(isFresh(onlyRow(overview([place()])), true)).toBe(false);
    expect(isFresh(onlyRow(overview([place()])), false)).toBe(true);
    expect(wrongsOf(overview([old]))[0]).toBe('Old figures: the last reading came 5 hours ago.');
  });

  it('name what someone can do something about', () => {
    const airReasons = [{ code: 'air-stagnant', text: 'Still air between the boards, at length.' }];
    const poor = place({ airflow: 'poor', airReasons });
    expect(wrongsOf(overview([poor]))).toEqual(['Still air between the boards: let air through.']);
    expect(wrongsOf(overview([place()]))).toEqual([]);
  });
});

describe('the foot of the wall', () => {
  it('shows what belongs to no board, and rags until someone has seen to them', () => {
    const notices = [
      notice({}),
      notice({ id: 'cleared', clearedAt: '2026-05-12T05:30:00Z' }),
      notice({ id: 'ready', kind: 'gate-ready', subject: 'batch' }),
      notice({ id: 'silent', kind: 'place-silent', subject: 'rack' }),
      notice({ id: 'rags', kind: 'rags', subject: 'batch' }),
      notice({ id: 'seen', kind: 'rags', subject: 'batch', seenAt: '2026-05-12T05:30:00Z' }),
    ];
    expect(footNotices(overview([place()], notices)).map(({ id }) => id)).toEqual([
      'notice',
      'rags',
    ]);
  });
});
