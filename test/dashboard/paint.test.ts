import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

// Relative luminance and contrast ratio as in WCAG 2.2 (2023), definitions of both terms;
// 4.5 : 1 for text from success criterion 1.4.3 (AA), 3 : 1 for shapes from 1.4.11.
const TEXT = 4.5;
const SHAPE = 3;

function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

const sheet = readFileSync(new URL('../../dashboard/styles/paint.css', import.meta.url), 'utf8');
const [day = '', dusk = '', night = ''] = [...sheet.matchAll(/:root[^{]*\{([^}]*)\}/g)].map(
  ([, body]) => body,
);
const pigments = (body: string) =>
  new Map([...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, hex]) => [name, hex]));

/** What is written or drawn on what. */
const pairs: readonly (readonly [on: string, ground: string, least: number])[] = [
  ['ink', 'linen', TEXT],
  ['ink-soft', 'linen', TEXT],
  ['ink', 'linen-high', TEXT],
  ['ink-soft', 'linen-high', TEXT],
  ['faulty', 'linen', TEXT],
  ['faulty', 'linen-high', TEXT],
  ['ink', 'pine', TEXT],
  ['ink-soft', 'pine', TEXT],
  ['ochre-on', 'ochre', TEXT],
  ['ochre-on-soft', 'ochre', TEXT],
  ['green-on', 'green', TEXT],
  ['green-on-soft', 'green', TEXT],
  ['slate-on', 'slate', TEXT],
  ['slate-on-soft', 'slate', TEXT],
  ['iron-red-on', 'iron-red', TEXT],
  ['linen-high', 'ink', TEXT],
  ['chart-temp', 'linen', SHAPE],
  ['chart-damp', 'linen', SHAPE],
  ['chart-sum', 'linen', SHAPE],
  ['chart-need', 'linen', SHAPE],
];

describe.each([
  ['by day', day],
  ['at dusk', dusk],
  ['by night', night],
])('the pigments %s', (_light, body) => {
  const paint = pigments(body);
  it.each(pairs)('let %s be read on %s', (on, ground, least) => {
    const ratio = contrast(paint.get(on) ?? '', paint.get(ground) ?? '');
    expect(ratio, `${on} on ${ground}`).toBeGreaterThanOrEqual(least);
  });
});

describe('the contrast reckoned here', () => {
  it('is 21 for black on white and 1 for a colour on itself', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
    expect(contrast('#7d2c20', '#7d2c20')).toBe(1);
  });
});
