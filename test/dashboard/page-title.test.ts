import { expect, it } from 'vitest';
import { pageTitle } from '../../dashboard/page-title.ts';
import { frame } from '../../dashboard/words/en/frame.ts';

const overview = {
  site: 'Old barn',
  places: [{ batches: [{ id: 'b1', name: 'South wall' }] }],
} as never;

it('a page is titled by what it shows, then the site, then the program', () => {
  expect(pageTitle({ kind: 'wall' }, overview, frame)).toBe('Old barn · Boardcure');
  expect(pageTitle({ kind: 'pot' }, overview, frame)).toBe('The pot · Old barn · Boardcure');
  expect(pageTitle({ kind: 'batch', id: 'b1' }, overview, frame)).toBe(
    'Boards · South wall · Old barn · Boardcure',
  );
  expect(pageTitle({ kind: 'more' }, null, frame)).toBe('More · Boardcure');
});
