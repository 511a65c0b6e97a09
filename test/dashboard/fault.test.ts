import { describe, expect, it } from 'vitest';
import type { Problem } from '../../daemon/contract/problem.ts';
import { faultAt } from '../../dashboard/forms/fault.ts';

const problem: Problem = {
  type: 'urn:boardcure:problem:bc-request-invalid',
  title: 'The request has a field that does not fit',
  status: 400,
  detail: 'In the body: two fields do not fit.',
  code: 'BC_REQUEST_INVALID',
  doThis: 'Correct the fields.',
  pointer: '/name',
  errors: [
    { pointer: '/name', detail: 'too short' },
    { pointer: '/boards/count', detail: 'expected a number' },
  ],
};

describe('a fault found by the daemon', () => {
  it('is shown at its own field and at no other', () => {
    expect(faultAt(problem, '/boards/count')?.text).toBe('expected a number');
    expect(faultAt(problem, '/boards/lengthMm')).toBeNull();
    expect(faultAt(problem, '/boards/coun')).toBeNull();
    expect(faultAt(null, '/name')).toBeNull();
  });

  it('is shown at the field it lies within', () => {
    expect(
      faultAt({ ...problem, errors: [{ pointer: '/values/2', detail: 'no' }] }, '/values')?.text,
    ).toBe('no');
  });

  it('is found by the pointer alone when no list came with it', () => {
    const { errors: _, ...bare } = problem;
    expect(faultAt(bare, '/name')?.text).toBe(problem.detail);
  });
});
