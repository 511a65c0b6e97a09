import { describe, expect, it } from 'vitest';
import type { NoticeFact } from '../../daemon/rules/facts.ts';
import {
  noticeChanges,
  ragRepeats,
  ragsCaution,
  wantedNotices,
} from '../../daemon/rules/notice.ts';

const place = { id: 'p', name: 'Rack', hasSensor: true, stale: false, at: 1 };
const batch = {
  id: 'b',
  name: 'Spruce',
  placeId: 'p',
  placeName: 'Rack',
  curing: true,
  readyFor: null,
};
const kinds = (view: Parameters<typeof wantedNotices>[0]) =>
  wantedNotices(view).map((one) => `${one.kind} ${one.subject}`);

describe('what is worth a notice', () => {
  it('is a sensor without a place', () => {
    expect(kinds({ unplacedSensors: [{ id: 's' }], places: [], batches: [] })).toEqual([
      'sensor-unplaced s',
    ]);
  });
  it('is a silent place only while something cures there', () => {
    const silent = { ...place, stale: true };
    expect(kinds({ unplacedSensors: [], places: [silent], batches: [batch] })).toEqual([
      'place-silent p',
    ]);
    expect(kinds({ unplacedSensors: [], places: [silent], batches: [] })).toEqual([]);
  });
  it('is a batch that cures where no sensor reads the air', () => {
    const deaf = { ...place, hasSensor: false, stale: true, at: null };
    expect(kinds({ unplacedSensors: [], places: [deaf], batches: [batch] })).toEqual([
      'batch-without-air b',
    ]);
  });
  it('is a batch that is cured enough for its next job', () => {
    const ready = { ...batch, readyFor: 'recoat' as const };
    expect(kinds({ unplacedSensors: [], places: [place], batches: [ready] })).toEqual([
      'gate-ready b',
    ]);
  });
});

describe('the open notices', () => {
  const open: NoticeFact = {
    id: 'n',
    kind: 'place-silent',
    subject: 'p',
    text: '',
    raisedAt: 0,
    seenAt: null,
    clearedAt: null,
    repeats: 0,
    repeatedAt: null,
  };
  it('are raised once and cleared when it is over', () => {
    const wanted = { kind: 'place-silent' as const, subject: 'p', text: '' };
    expect(noticeChanges([open], [wanted])).toEqual({ raise: [], clear: [] });
    expect(noticeChanges([open], [])).toEqual({ raise: [], clear: [open] });
    expect(noticeChanges([], [wanted])).toEqual({ raise: [wanted], clear: [] });
  });
  it('keep the rags, also when somebody has seen them: only the lock-up list settles them', () => {
    const rags: NoticeFact = { ...open, kind: 'rags' };
    expect(noticeChanges([rags], []).clear).toEqual([]);
    expect(noticeChanges([{ ...rags, seenAt: 1 }], []).clear).toEqual([]);
  });
  it('neither come nor go between the limit that raises and the one that clears', () => {
    const wanted = { kind: 'place-silent' as const, subject: 'p', text: '', onlyIfOpen: true };
    expect(noticeChanges([open], [wanted])).toEqual({ raise: [], clear: [] });
    expect(noticeChanges([], [wanted])).toEqual({ raise: [], clear: [] });
  });
  it('say of rags what the usual cautions say, and never safe', () => {
    const { text } = ragsCaution();
    expect(text).toMatch(/single layer/);
    expect(text).toMatch(/Local rules/);
    expect(text).not.toMatch(/safe/i);
  });
});

const vapourAt = (nowPpm: number) => ({
  ...{ unplacedSensors: [], places: [], batches: [] },
  vapour: [{ roomId: 'r', roomName: 'Shed', nowPpm, limitPpm: 20 }],
});

describe('what can hurt', () => {
  it('is solvent above the limit, and open until it has fallen a fifth below it', () => {
    expect(wantedNotices(vapourAt(15))).toEqual([]);
    expect(wantedNotices(vapourAt(18))).toMatchObject([{ kind: 'vapour', onlyIfOpen: true }]);
    expect(wantedNotices(vapourAt(21))).toMatchObject([{ kind: 'vapour', onlyIfOpen: false }]);
  });
  it('says of the vapour that it is an estimate and no alarm', () => {
    const [vapour] = wantedNotices(vapourAt(300));
    expect(vapour?.text).toMatch(/about 300 ppm .* by estimate.*no gas alarm/);
  });
  it('is a room or rack that is too hot, and nothing outdoors or long silent', () => {
    const hot = (insideC: number | null, stale = false) =>
      wantedNotices({
        ...{ unplacedSensors: [], batches: [] },
        places: [{ ...place, insideC, stale }],
      });
    expect(hot(46)).toMatchObject([{ kind: 'overheating', subject: 'p', onlyIfOpen: false }]);
    expect(hot(42)).toMatchObject([{ kind: 'overheating', onlyIfOpen: true }]);
    expect(hot(39)).toEqual([]);
    expect(hot(null)).toEqual([]);
    expect(hot(60, true)).toEqual([]);
  });
});

describe('an unticked rag line', () => {
  const hour = 3_600_000;
  const rags: NoticeFact = {
    ...{ id: 'n', kind: 'rags', subject: 'b', text: '', raisedAt: 0, seenAt: null },
    ...{ clearedAt: null, repeats: 0, repeatedAt: null },
  };
  const repeated = (given: Partial<NoticeFact>, now: number, finishedAt: number | null = 0) =>
    ragRepeats([{ ...rags, ...given }], () => finishedAt, now, 2 * hour).length === 1;

  it('is told again every two hours on the first day, seen or not', () => {
    expect(repeated({}, 2 * hour - 1)).toBe(false);
    expect(repeated({}, 2 * hour)).toBe(true);
    expect(repeated({ seenAt: hour }, 2 * hour)).toBe(true);
    expect(repeated({ repeatedAt: 2 * hour, repeats: 1 }, 3 * hour)).toBe(false);
    expect(repeated({ repeatedAt: 2 * hour, repeats: 1 }, 4 * hour)).toBe(true);
  });
  it('is told once a day after that', () => {
    const last = { repeatedAt: 24 * hour, repeats: 12 };
    expect(repeated(last, 47 * hour)).toBe(false);
    expect(repeated(last, 48 * hour)).toBe(true);
  });
  it('is not told again of a coat that was taken back, or entered long after', () => {
    expect(repeated({}, 5 * hour, null)).toBe(false);
    expect(repeated({}, 5 * hour, -100 * hour)).toBe(false);
  });
});
