import { describe, expect, it } from 'vitest';
import {
  elsewhere,
  isTurnDue,
  pagesOf,
  STILL_AFTER_HAND_MS,
  turned,
  urgencyOf,
} from '../../dashboard/wall/wall-pages.ts';

const board = (name: string, urgency: 0 | 1 | 2 | 3) => ({ name, urgency });
const names = (pages: readonly (readonly { name: string }[])[]) =>
  pages.map((boards) => boards.map(({ name }) => name).join(''));

describe('the pages of the wall', () => {
  const boards = [board('a', 2), board('b', 3), board('c', 1), board('d', 2), board('e', 0)];

  it('keep the order of the shed while everything fits on one', () => {
    expect(names(pagesOf(boards, 5))).toEqual(['abcde']);
  });

  it('begin with trouble, then what wants something, and end with what is finished', () => {
    expect(names(pagesOf(boards, 2))).toEqual(['ec', 'ad', 'b']);
  });

  it('hold every board once, however many there are', () => {
    const many = Array.from({ length: 20 }, (_, i) => board(`${i} `, i % 2 === 0 ? 2 : 1));
    for (const perPage of [1, 3, 4, 7, 19]) {
      const pages = pagesOf(many, perPage);
      expect(pages.flat()).toHaveLength(20);
      expect(new Set(pages.flat()).size).toBe(20);
      expect(Math.max(...pages.map(({ length }) => length))).toBe(perPage);
    }
  });

  it('name on each page what wants something on another', () => {
    const pages = pagesOf(boards, 2);
    expect(elsewhere(pages, 0)).toEqual([]);
    expect(elsewhere(pages, 2).map(({ board: { name }, page }) => `${name}${page}`)).toEqual([
      'e0',
      'c0',
    ]);
  });

  it('follow one another in a ring, both ways', () => {
    expect([turned(0, 1, 3), turned(2, 1, 3), turned(0, -1, 3)]).toEqual([1, 0, 2]);
  });

  it('take a held board, one without air and any trouble for urgent', () => {
    expect(urgencyOf('hold', false)).toBe(0);
    expect(urgencyOf('no-data', false)).toBe(0);
    expect(urgencyOf('wait', true)).toBe(0);
    expect([urgencyOf('test', false), urgencyOf('ready', false)]).toEqual([1, 1]);
    expect([urgencyOf('wait', false), urgencyOf('empty', false)]).toEqual([2, 3]);
  });
});

describe('the turning of the pages', () => {
  const usual = { now: 20_000, turnedAt: 0, handAt: null, isFocused: false, seconds: 15 };

  it('comes when a page has stood as long as was chosen', () => {
    expect(isTurnDue(usual)).toBe(true);
    expect(isTurnDue({ ...usual, turnedAt: 6_000 })).toBe(false);
    expect(isTurnDue({ ...usual, seconds: 30 })).toBe(false);
  });

  it('never comes where it was told to be turned by hand', () => {
    expect(isTurnDue({ ...usual, now: 1e9, seconds: 0 })).toBe(false);
  });

  it('waits for whoever touched, pointed or typed, and for the keyboard’s focus', () => {
    expect(isTurnDue({ ...usual, handAt: 19_000 })).toBe(false);
    expect(isTurnDue({ ...usual, handAt: 20_000 - STILL_AFTER_HAND_MS })).toBe(true);
    expect(isTurnDue({ ...usual, now: 1e9, isFocused: true })).toBe(false);
  });
});
