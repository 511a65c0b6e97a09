import { describe, expect, it } from 'vitest';
import { gates } from '../../daemon/contract/gate.ts';
import { facesLine, mixtureLine } from '../../dashboard/format/lists.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';

const { cautions, jobs } = first;
const { things } = rest;

/** Every string of a catalogue, also of functions that are given plain words. */
function said(words: unknown): string[] {
  if (typeof words === 'string') return [words];
  if (typeof words === 'function') return [String(words)];
  return typeof words === 'object' && words !== null ? Object.values(words).flatMap(said) : [];
}

describe('the words of the page', () => {
  it('never call anything safe', () => {
    expect(said({ ...first, ...rest }).filter((words) => /\bsafe/i.test(words))).toEqual([]);
  });

  it('send those with oily rags outdoors or to water, and to local rules', () => {
    const rags = cautions.rags.lines.join(' ');
    expect(rags).toMatch(/one layer, outdoors/);
    expect(rags).toMatch(/under water in a metal can with a lid/);
    expect(rags).toMatch(/local rules/);
  });

  it('put the maker’s sheet and local rules before every figure', () => {
    expect(cautions.short).toMatch(/estimates.*maker’s sheet and local rules come first/);
  });

  it('have a test for each job', () => {
    expect(gates.map((gate) => jobs[gate].test.length > 20)).toEqual(Array(5).fill(true));
  });

  it('read a mixture as a painter does', () => {
    expect(mixtureLine({ paint: 35, rawLinseedOil: 50, turpentine: 15 }, things)).toBe(
      '35 paint : 50 raw linseed oil : 15 turpentine',
    );
    expect(mixtureLine({ paint: 100, rawLinseedOil: 0, turpentine: 0 }, things)).toBe(
      'undiluted paint',
    );
    expect(facesLine(['face', 'edges', 'ends'], things, 'en-GB')).toBe('face, edges and ends');
    expect(facesLine(['face'], things, 'en-GB')).toBe('face');
  });
});
