import { describe, expect, it } from 'vitest';
import { clockIsBelieved, dated } from '../../sensors/attached/dating.ts';

const noon = Date.UTC(2026, 4, 4, 12);

describe('a sample of a wired sensor', () => {
  it('keeps the time it was taken at, whatever the clock says later', () => {
    const taken = { boot: 'a', monotonicMs: 1000, at: noon };
    expect(dated(taken, { boot: 'b', monotonicMs: 5, wallMs: null })).toEqual({
      kind: 'at',
      at: noon,
    });
  });

  it('taken before the clock was set is dated by how long ago that was', () => {
    const taken = { boot: 'a', monotonicMs: 60_000, at: null };
    expect(dated(taken, { boot: 'a', monotonicMs: 90_000, wallMs: null }).kind).toBe('not-yet');
    expect(dated(taken, { boot: 'a', monotonicMs: 660_000, wallMs: noon })).toEqual({
      kind: 'at',
      at: noon - 600_000,
    });
  });

  it('of an earlier running of the computer that never had the time is never dated', () => {
    const taken = { boot: 'a', monotonicMs: 60_000, at: null };
    expect(dated(taken, { boot: 'b', monotonicMs: 90_000, wallMs: noon }).kind).toBe('never');
  });
});

describe('a clock', () => {
  const signs = {
    wallMs: noon,
    upMs: 60_000,
    synchronised: false,
    hasBatteryClock: false,
    setForward: false,
    newestAt: null,
  };
  it('is believed when a time service, a battery or somebody vouches for it', () => {
    expect(clockIsBelieved(signs)).toBe(false);
    expect(clockIsBelieved({ ...signs, synchronised: true })).toBe(true);
    expect(clockIsBelieved({ ...signs, hasBatteryClock: true })).toBe(true);
    expect(clockIsBelieved({ ...signs, setForward: true })).toBe(true);
    expect(clockIsBelieved({ ...signs, upMs: 31 * 60_000 })).toBe(true);
  });
  it('is not believed in 1970, nor behind what is in the queue already', () => {
    const all = { ...signs, hasBatteryClock: true, setForward: true, upMs: 1e9 };
    expect(clockIsBelieved({ ...all, synchronised: true, wallMs: 90_000 })).toBe(false);
    expect(clockIsBelieved({ ...all, newestAt: noon + 1000 })).toBe(false);
  });
});
