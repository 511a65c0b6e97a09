import { describe, expect, it } from 'vitest';
import { createDeviceChoice, usualChoice } from '../../dashboard/device-choice.ts';
import { themeAt } from '../../dashboard/theme.ts';

describe('the light of the page', () => {
  const at = (hour: number, prefersDark = false) => themeAt(hour, prefersDark, usualChoice);

  it('is night by the clock, whatever the device prefers: light over wet boards draws insects', () => {
    expect([21, 23, 0, 5].map((hour) => at(hour))).toEqual(['night', 'night', 'night', 'night']);
  });

  it('is warm and dim for two hours before and after the night, and else day', () => {
    expect([18, 19, 20].map((hour) => at(hour))).toEqual(['day', 'dusk', 'dusk']);
    expect([6, 7, 8].map((hour) => at(hour))).toEqual(['dusk', 'dusk', 'day']);
  });

  it('is night by day too where the device asks for it', () => {
    expect(at(12, true)).toBe('night');
  });

  it('is what this device was told, whatever the clock says', () => {
    expect(themeAt(3, true, { ...usualChoice, light: 'day' })).toBe('day');
    expect(themeAt(12, false, { ...usualChoice, light: 'dusk' })).toBe('dusk');
  });

  it('keeps to other hours of the night, across midnight or not', () => {
    const short = { ...usualChoice, nightFrom: 1, nightUntil: 4 };
    const lights = [22, 23, 0, 1, 3, 4, 5, 6].map((hour) => themeAt(hour, false, short));
    expect(lights.join(' ')).toBe('day dusk dusk night night dusk dusk day');
    const none = { ...usualChoice, nightFrom: 6, nightUntil: 6 };
    expect([0, 6, 12].map((hour) => themeAt(hour, false, none))).toEqual(['day', 'day', 'day']);
  });
});

describe('what a device was told', () => {
  it('is kept on it, and what is no choice is left out', () => {
    const kept = new Map<string, string>();
    const storage = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
    };
    createDeviceChoice(storage).choose({ light: 'dusk', turnSeconds: 30 });
    expect(createDeviceChoice(storage).choice.value).toEqual({
      ...usualChoice,
      light: 'dusk',
      turnSeconds: 30,
    });
    for (const [key] of kept) kept.set(key, '{"light":"blue","nightFrom":99,"turnSeconds":7}');
    expect(createDeviceChoice(storage).choice.value).toEqual(usualChoice);
    for (const [key] of kept) kept.set(key, 'not JSON');
    expect(createDeviceChoice(storage).choice.value).toEqual(usualChoice);
  });

  it('holds until the page is closed where the browser keeps nothing', () => {
    const keeper = createDeviceChoice(null);
    keeper.choose({ light: 'night' });
    expect(keeper.choice.value.light).toBe('night');
  });
});
