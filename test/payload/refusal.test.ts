import { describe, expect, it } from 'vitest';
import { shown } from '../../sensors/payload/refusal.ts';

describe('a foreign value in a sentence', () => {
  it('is quoted and cut', () => {
    expect(shown('warm')).toBe('"warm"');
    expect(shown('x'.repeat(40))).toBe(`"${'x'.repeat(40)}"`);
    expect(shown('x'.repeat(41))).toBe(`"${'x'.repeat(40)}…"`);
  });

  it('shows what cannot be seen, so that no sentence is broken or turned around by it', () => {
    expect(shown('a\nb\u0000')).toBe('"a\\nb\\u0000"');
    expect(shown('\u202e\u2028\ufeff\u007f')).toBe('"\\u{202e}\\u{2028}\\u{feff}\\u{7f}"');
    expect(shown('\ud83d')).toBe('"\\ud83d"');
  });

  it('names objects and arrays without printing them', () => {
    expect([shown({}), shown([]), shown(null), shown(1), shown(false)]).toEqual([
      'an object',
      'an array',
      'null',
      '1',
      'false',
    ]);
  });
});
