import { describe, expect, it } from 'vitest';
import type { NoticeFact } from '../../daemon/rules/facts.ts';
import { noticeChanges, ragsText, wantedNotices } from '../../daemon/rules/notice.ts';

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
    const ready = { ...batch, readyFor: 'recoating' };
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
  };
  it('are raised once and cleared when it is over', () => {
    const wanted = { kind: 'place-silent' as const, subject: 'p', text: '' };
    expect(noticeChanges([open], [wanted])).toEqual({ raise: [], clear: [] });
    expect(noticeChanges([open], [])).toEqual({ raise: [], clear: [open] });
    expect(noticeChanges([], [wanted])).toEqual({ raise: [wanted], clear: [] });
  });
  it('keep the rags until somebody has seen them', () => {
    const rags: NoticeFact = { ...open, kind: 'rags' };
    expect(noticeChanges([rags], []).clear).toEqual([]);
    expect(noticeChanges([{ ...rags, seenAt: 1 }], []).clear).toHaveLength(1);
  });
  it('say of rags what the usual cautions say, and never safe', () => {
    expect(ragsText).toMatch(/single layer/);
    expect(ragsText).toMatch(/Local rules/);
    expect(ragsText).not.toMatch(/safe/i);
  });
});
