import { describe, expect, it } from 'vitest';
import { themeAt } from '../../dashboard/theme.ts';

describe('the light of the page', () => {
  it('is night by the clock, whatever the device prefers: light over wet boards draws insects', () => {
    expect(themeAt(21, false)).toBe('night');
    expect(themeAt(3, false)).toBe('night');
    expect(themeAt(6, false)).toBe('day');
    expect(themeAt(20, false)).toBe('day');
  });

  it('is night by day too where the device asks for it', () => {
    expect(themeAt(12, true)).toBe('night');
  });
});
