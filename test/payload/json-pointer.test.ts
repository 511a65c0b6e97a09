import { describe, expect, it } from 'vitest';
import {
  atPointer,
  parsedPointer,
  pointerFault,
  pointerText,
} from '../../sensors/payload/json-pointer.ts';

/** RFC 6901 (2013), section 5: the document, and what each pointer evaluates to. */
const document = JSON.parse(`{
  "foo": ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4,
  "i\\\\j": 5, "k\\"l": 6, " ": 7, "m~n": 8
}`);
const printed: [string, unknown][] = [
  ['', document],
  ['/foo', ['bar', 'baz']],
  ['/foo/0', 'bar'],
  ['/', 0],
  ['/a~1b', 1],
  ['/c%d', 2],
  ['/e^f', 3],
  ['/g|h', 4],
  ['/i\\j', 5],
  ['/k"l', 6],
  ['/ ', 7],
  ['/m~0n', 8],
];

const at = (json: unknown, text: string) => {
  const pointer = parsedPointer(text);
  if (typeof pointer === 'string') throw new Error(pointer);
  return atPointer(json, pointer);
};

describe('a JSON pointer', () => {
  it.each(printed)('%j finds what RFC 6901 says', (text, value) => {
    expect(at(document, text)).toEqual(value);
  });

  it.each(printed)('%j is written as it was read', (text) => {
    expect(pointerText(parsedPointer(text) as string[])).toBe(text);
  });

  it('reads ~01 as ~1 and not as a slash (section 4)', () => {
    expect(at({ '~1': 'tilde' }, '/~01')).toBe('tilde');
  });

  it.each([
    '/foo/00',
    '/foo/01',
    '/foo/-',
    '/foo/2',
    '/foo/1e0',
    '/foo/ 1',
    '/foo/length',
    '/nope/x',
  ])('%s finds nothing (section 4: no leading zeros, and - is past the end)', (text) => {
    expect(at(document, text)).toBeUndefined();
  });

  it('finds only what the document itself holds', () => {
    for (const name of ['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'length']) {
      expect(at({}, `/${name}`)).toBeUndefined();
      expect(at([], `/${name}`)).toBeUndefined();
      expect(at('text', `/${name}`)).toBeUndefined();
    }
    expect(at(JSON.parse('{"__proto__":{"v":5}}'), '/__proto__/v')).toBe(5);
  });

  it.each([
    ['temp', 'begin with /'],
    ['/a~', 'not followed by 0 or 1'],
    ['/a~2', 'not followed by 0 or 1'],
    ['/a'.repeat(33), 'deeper than 32'],
  ])('%s is refused', (text, why) => {
    const slip = parsedPointer(text);
    if (typeof slip !== 'string') throw new Error('it was taken');
    expect(pointerFault(slip, text).text).toContain(why);
  });
});
