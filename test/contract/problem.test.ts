import { describe, expect, it } from 'vitest';
import {
  BoardcureError,
  type ProblemCode,
  problems,
  retiredCodes,
} from '../../daemon/contract/problem.ts';
import { sentence } from '../../daemon/wording/english.ts';

const table = (Object.keys(problems) as ProblemCode[]).map((code) => ({
  code,
  status: problems[code].status,
  title: sentence(`problem-title/${code}`, {}).text,
  doThis: sentence(`problem-to-do/${code}`, {}).text,
}));

describe('the table of problems', () => {
  it.each(table)(
    '$code has a status, a title and what to do',
    ({ code, status, title, doThis }) => {
      expect(code).toMatch(/^BC(_[A-Z]+)+$/);
      expect(Number.isInteger(status) && status >= 400 && status < 600).toBe(true);
      expect(title).toMatch(/^[A-Z].*[^.]$/);
      // What to do begins with what to do, and is a sentence.
      expect(doThis).toMatch(
        /^(Check|Correct|Create|Free|Look|Open|Send|See|Try|Wait|Install|Choose|Record|Use|Log|Set|Keep|Give) .*\.$/,
      );
      expect(doThis).not.toBe(title);
    },
  );

  it('gives no two codes the same title', () => {
    expect(new Set(table.map(({ title }) => title)).size).toBe(table.length);
  });

  it('never uses a retired code again', () => {
    expect(table.map(({ code }) => code).filter((code) => retiredCodes.includes(code))).toEqual([]);
    expect(new Set(retiredCodes).size).toBe(retiredCodes.length);
  });

  it('calls only its own faults the daemon’s: 5xx are the disk and the inside', () => {
    const own = table.filter(({ status }) => status >= 500).map(({ code }) => code);
    expect(own.sort()).toEqual(['BC_INTERNAL', 'BC_STORE_FULL']);
  });
});

describe('an error of this program', () => {
  it('carries its code, what was wrong, where, and what caused it', () => {
    const cause = new Error('inner');
    const code: ProblemCode = 'BC_ID_TAKEN';
    const error = new BoardcureError(code, 'The id is taken.', { pointer: '/id', cause });
    expect(error).toMatchObject({ code, message: 'The id is taken.', pointer: '/id', cause });
    expect(error).toBeInstanceOf(Error);
    expect(new BoardcureError(code, 'x').pointer).toBeNull();
    expect('cause' in new BoardcureError(code, 'x')).toBe(false);
  });
});
