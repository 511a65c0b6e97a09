import { describe, expect, it } from 'vitest';
import { mustSkip } from './needs.ts';

describe('a suite whose part is missing', () => {
  it('runs when the part is there', () => {
    expect(mustSkip('chromium', null, true)).toBe(false);
  });

  it('is skipped on a person’s machine', () => {
    expect(mustSkip('mosquitto', 'shown only to test this line', false)).toBe(true);
  });

  it('fails in CI, where nobody reads that it was skipped', () => {
    expect(() => mustSkip('chromium', 'not found', true)).toThrow('chromium: not found');
  });

  it('is skipped in CI too when only the recordings are absent: they may not be passed on', () => {
    expect(mustSkip('recorded-air', 'shown only to test this line', true)).toBe(true);
  });
});
