import { describe, expect, it } from 'vitest';
import { setup } from './small-project.ts';

const { countTests } = await setup('vitest-run');

const report = {
  numPassedTests: 5,
  numFailedTests: 1,
  numPendingTests: 2,
  numTodoTests: 1,
  testResults: [{ status: 'failed', assertionResults: [{}] }],
};

describe('the closing line’s numbers', () => {
  it('are those of the report', () => {
    expect(countTests(report, true)).toEqual({ passed: 5, failed: 1, skipped: 3 });
  });

  it('count a file that could not be loaded as a failure', () => {
    const testResults = [...report.testResults, { status: 'failed', assertionResults: [] }];
    expect(countTests({ ...report, testResults }, true).failed).toBe(2);
  });

  it('never hide a run that failed without a failed test, or that left no report', () => {
    expect(countTests({ ...report, numFailedTests: 0, testResults: [] }, true).failed).toBe(1);
    expect(countTests(null, true)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });
});
