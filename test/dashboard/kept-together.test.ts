import { describe, expect, it } from 'vitest';
import { keptTogether } from '../../dashboard/format/kept-together.ts';

const spaces = (text: string) => text.replaceAll('\u00a0', '_');

describe('a figure and its unit', () => {
  it.each([
    [
      '900 of about 397 °C·h that turning needs (227 %).',
      '900 of about 397_°C·h that turning needs (227_%).',
    ],
    ['4,200 × 145 × 22 mm', '4,200 × 145 × 22_mm'],
    ['1 gal 2 qt 5 fl oz', '1_gal 2_qt 5_fl_oz'],
    ['tiefsten etwa 20,0 °C (± 0,2 K).', 'tiefsten etwa 20,0_°C (±_0,2_K).'],
    ['8.0 m²/L', '8.0_m²/L'],
    ['wet to 1 7/8 in (1 qt)', 'wet to 1_7/8_in (1_qt)'],
  ])('stay on one line in “%s”', (text, kept) => {
    expect(spaces(keptTogether(text))).toBe(kept);
  });

  it.each([
    ['3 sensors', 'coat 1 of 3', '24 boards hang here', '2 happen at once', '4 m² or 5 min'],
  ])('are not taken for words that begin like a unit', (...texts) => {
    for (const text of texts.slice(0, 4)) expect(keptTogether(text)).toBe(text);
    expect(spaces(keptTogether(texts[4] ?? ''))).toBe('4_m² or 5_min');
  });
});
