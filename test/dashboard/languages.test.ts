import { describe, expect, it } from 'vitest';
import { canBeLaid, LONGEST_WORD, layWord } from '../../dashboard/lettering/planks.ts';
import { firstWords, restWords } from '../../dashboard/words/catalogue.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';
import { languages } from '../../dashboard/words/language.ts';
import type { FirstWords } from '../../dashboard/words/words.ts';
import { callsItSafe } from './unsafe-words.ts';

type Leaf = string | ((...given: never[]) => unknown);

/** Every leaf of a catalogue by its path. */
function leavesOf(words: object, path = ''): Map<string, Leaf> {
  const found = new Map<string, Leaf>();
  for (const [key, value] of Object.entries(words)) {
    const here = path === '' ? key : `${path}.${key}`;
    if (typeof value === 'object' && value !== null) {
      for (const [inner, leaf] of leavesOf(value, here)) found.set(inner, leaf);
    } else found.set(here, value);
  }
  return found;
}

const english = leavesOf({ ...first, ...rest });
/** Long, and yet the same everywhere: units. */
const sameEverywhere = new Set(['season.days.areaEach.us']);
const others = languages.filter((language) => language !== 'en');

// A language that is not written yet speaks English and is found out here.
describe.each(others)('the pages in %s', (language) => {
  const catalogue = async () =>
    leavesOf({ ...(await firstWords(language)), ...(await restWords(language)) });

  it('have every word that the English ones have, and no other', async () => {
    expect([...(await catalogue()).keys()].sort()).toEqual([...english.keys()].sort());
  });

  it('are written in it: long texts are not the English ones', async () => {
    const same = [...(await catalogue())].filter(
      ([key, leaf]) =>
        typeof leaf === 'string' && leaf === english.get(key) && / \p{L}+ /u.test(leaf),
    );
    expect(same.map(([key]) => key).filter((key) => !sameEverywhere.has(key))).toEqual([]);
  });

  it('never call anything safe', async () => {
    const texts = [...(await catalogue()).values()].map(String).join('\n');
    expect(texts).not.toMatch(callsItSafe[language]);
  });

  it('have words for the wall that can be laid from planks and read at three metres', async () => {
    const { signs }: FirstWords = await firstWords(language);
    for (const { laid } of Object.values(signs)) {
      expect(canBeLaid(laid), laid).toBe(true);
      expect(layWord(laid).width, laid).toBeLessThanOrEqual(LONGEST_WORD);
    }
  });
});
