import { describe, expect, it } from 'vitest';
import { cautions } from '../../dashboard/words/en/cautions.ts';
import { cautionsPage } from '../../dashboard/words/en/cautions-page.ts';
import { jobs, jobsInOrder } from '../../dashboard/words/job-words.ts';
import { facesWords, mixtureWords } from '../../dashboard/words/thing-words.ts';
import { signs } from '../../dashboard/words/verdict-words.ts';

describe('the words of the page', () => {
  it('never call anything safe', () => {
    expect(JSON.stringify([cautionsPage, cautions, jobs, signs])).not.toMatch(/\bsafe/i);
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
    expect(jobsInOrder.map((gate) => jobs[gate].test.length > 20)).toEqual(Array(5).fill(true));
  });

  it('read a mixture as a painter does', () => {
    expect(mixtureWords({ paint: 35, rawLinseedOil: 50, turpentine: 15 })).toBe(
      '35 paint : 50 raw linseed oil : 15 turpentine',
    );
    expect(mixtureWords({ paint: 100, rawLinseedOil: 0, turpentine: 0 })).toBe('undiluted paint');
    expect(facesWords(['face', 'edges', 'ends'])).toBe('face, edges and ends');
    expect(facesWords(['face'])).toBe('face');
  });
});
