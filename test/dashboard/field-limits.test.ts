import { describe, expect, it } from 'vitest';
import type { Problem } from '../../daemon/contract/problem.ts';
import { fieldSentence } from '../../daemon/wording/field-sentence.ts';
import type { Measure } from '../../dashboard/format/units.ts';
import { inReadersUnits } from '../../dashboard/forms/problem-units.ts';

/** The limit that a field names which was sent a figure beyond it. */
function limitOf(
  kind: 'too_small' | 'too_big',
  limit: number,
  measure: Measure,
  units: 'metric' | 'us',
): unknown {
  const params = { origin: 'number', minimum: limit, maximum: limit, inclusive: true };
  const detailSaid = { ...fieldSentence(kind, '', params), text: '' };
  const problem: Problem = {
    ...{ type: '', title: '', status: 400, code: 'BC_REQUEST_INVALID', doThis: '', detail: '' },
    errors: [{ pointer: '/figure', detail: '', detailSaid }],
  };
  const values = inReadersUnits(problem, measure, units)?.errors?.[0]?.detailSaid?.values;
  return values?.[kind === 'too_big' ? 'maximum' : 'minimum'];
}

/* **Source:** inch 25.4 mm and foot 0.3048 m, NIST Special Publication 811 (2008), appendix B.8, from memory. */
describe('limits that a field of the reader’s units names', () => {
  it('are metric to who types metric', () => {
    expect(limitOf('too_big', 12_000, 'lengthMm', 'metric')).toBe(12_000);
  });

  it('are those of the units that are typed', () => {
    expect(limitOf('too_big', 15, 'tempC', 'us')).toBe(59);
    expect(limitOf('too_small', -40, 'tempC', 'us')).toBe(-40);
    expect(limitOf('too_small', 0, 'lengthM', 'us')).toBe(0);
    expect(limitOf('too_big', 5, 'differenceK', 'us')).toBe(9);
  });

  it('are rounded to the side that is taken', () => {
    // 12,000 mm are 472.4409 in, and 100 m are 328.0840 ft.
    expect(limitOf('too_big', 12_000, 'lengthMm', 'us')).toBe(472.44);
    expect(limitOf('too_small', 100, 'lengthM', 'us')).toBe(328.09);
  });
});
