import { describe, expect, it } from 'vitest';
import type { LockUpLine } from '../../daemon/contract/lock-up.ts';
import type { CoatFact, LockUpTickFact, NoticeFact } from '../../daemon/rules/facts.ts';
import {
  coatingDayReasons,
  lineState,
  lockUpLines,
  lockUpWords,
} from '../../daemon/rules/lock-up.ts';

const zone = 'Europe/Stockholm';
const utc = (text: string) => Date.parse(`${text}Z`);
const coat = (finished: string, begun: string | null = null) => ({
  ...{ id: 'c', batchId: 'b', coat: 0, usedL: null, colour: null, tin: null, faces: [] },
  mixture: { paint: 1, rawLinseedOil: 0, turpentine: 0 },
  finishedAt: utc(finished),
  begunAt: begun === null ? null : utc(begun),
  batchName: 'South gable',
});
const said = (coats: (CoatFact & { batchName: string })[], day = '2026-05-20') =>
  coatingDayReasons(day, zone, { coats, remarks: [] }).map(({ text }) => text);

describe('a coating day', () => {
  it('is one on which a coat was begun or finished, by the clock of the site, until four at night', () => {
    expect(said([coat('2026-05-20T21:59')])).toEqual(['Coated: South gable.']);
    // 03:59 and 04:00 of the night after; 03:59 and 04:00 of the night before.
    expect(said([coat('2026-05-21T01:59')])).toEqual(['Coated: South gable.']);
    expect(said([coat('2026-05-21T02:00')])).toEqual([]);
    expect(said([coat('2026-05-20T01:59')])).toEqual([]);
    expect(said([coat('2026-05-20T02:00')])).toEqual(['Coated: South gable.']);
    expect(said([coat('2026-05-21T08:00', '2026-05-20T12:00')])).toEqual([
      'Coat begun: South gable.',
    ]);
  });
  it('is one on which boards were sanded', () => {
    const clogged = { id: 'r', batchId: 'b', at: utc('2026-05-20T10:00'), text: null };
    const remarks = [{ ...clogged, kind: 'clogged' as const, batchName: 'B' }];
    const [sanded] = coatingDayReasons('2026-05-20', zone, { coats: [], remarks });
    expect(sanded?.text).toBe('Sanded: B.');
  });
});

describe('the lock-up list', () => {
  const words = (line: LockUpLine) => lockUpWords(line).text;

  // NFPA tip sheet on oily rags, as quoted in the reference table; the rest common practice.
  it('puts rags first, into water under a lid, or flat outdoors until stiff', () => {
    expect(lockUpLines[0]).toBe('rags');
    expect(words('rags')).toMatch(/lidded metal can filled with water/);
    expect(words('rags')).toMatch(
      /single layer outdoors, away from buildings, until they are stiff/,
    );
    expect(words('rags')).toMatch(/Never balled, in a bag, in a car or indoors/);
  });
  it('names what else can hurt', () => {
    expect(words('vacuum-bag')).toMatch(/outdoors/);
    expect(words('waste')).toMatch(/hazardous waste/);
    expect(words('children')).toMatch(/locked up, never in drink bottles/);
    expect(words('brushes')).toMatch(/raw linseed oil.*Wipe the oil out again/);
    expect(words('left-over-paint')).toMatch(/skin is lifted off/);
  });
  it('never says safe', () => {
    expect(JSON.stringify(lockUpLines.map(lockUpWords))).not.toMatch(/\bsafe/i);
  });
});

describe('a tick', () => {
  const tick = (at: number, given: Partial<LockUpTickFact> = {}): LockUpTickFact => ({
    ...{ id: `${at}`, day: '2026-05-20', line: 'rags', done: true, at, by: 'K.' },
    ...given,
  });
  const rags = (raisedAt: number, clearedAt: number | null = null): NoticeFact => ({
    ...{ id: 'n', kind: 'rags', subject: 'b', text: '', raisedAt, seenAt: null, clearedAt },
    ...{ repeats: 0, repeatedAt: null },
  });
  const state = (ticks: LockUpTickFact[], notices: NoticeFact[] = []) =>
    lineState('rags', '2026-05-20', ticks, notices);

  it('holds for its day and line, with who and when', () => {
    expect(state([tick(5)])).toEqual({ done: true, at: 5, by: 'K.' });
    expect(lineState('rags', '2026-05-21', [tick(5)], []).done).toBe(false);
    expect(lineState('doors', '2026-05-20', [tick(5)], []).done).toBe(false);
  });
  it('can be taken back', () => {
    expect(state([tick(5), tick(6, { done: false })]).done).toBe(false);
  });
  it('of the rags no longer counts once another coat is recorded', () => {
    expect(state([tick(5)], [rags(4)]).done).toBe(true);
    expect(state([tick(5)], [rags(6)]).done).toBe(false);
    expect(state([tick(5)], [rags(6, 7)]).done).toBe(true);
  });
});
