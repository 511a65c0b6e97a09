import type { Page } from 'playwright-core';

/** A catalogue of the pages, or a part of one: strings, and functions that return them. */
type Words = unknown;

/**
 * The words of a catalogue half as long again, with letters that reach higher and lower than
 * English ones: what German, Finnish and Swedish ask of a layout. Figures, names and what else a
 * sentence is given stay as they are. Sent to the browser as text, so it stands on its own feet.
 */
export function longer(words: Words): Words {
  const accents: Readonly<Record<string, string>> = {
    ...{ a: 'ä', e: 'é', i: 'í', o: 'ö', u: 'ü', y: 'ý' },
    ...{ A: 'Å', E: 'É', I: 'Í', O: 'Ö', U: 'Ü', Y: 'Ý' },
  };
  const tail = 'enstundheit';
  const stretchWord = (word: string) =>
    word.replace(/[aeiouy]/gi, (letter) => accents[letter] ?? letter) +
    tail.slice(0, Math.ceil(word.length / 2));
  // What has a digit in it, as probe-7, is a name or a figure.
  const stretch = (text: string) =>
    text.replace(/\S*\d\S*|\p{L}{2,}/gu, (word) => (/\d/.test(word) ? word : stretchWord(word)));

  /** Strings that a sentence was given, the longest first: they are no words of the catalogue. */
  const givenIn = (value: unknown): string[] => {
    if (typeof value === 'string') return value === '' ? [] : [value];
    if (Array.isArray(value)) return value.flatMap(givenIn);
    // A link or bold part is drawn by the page, and is none of the words.
    if (typeof value !== 'object' || value === null || 'props' in value) return [];
    return Object.values(value).flatMap(givenIn);
  };
  const stretchAround = (text: string, given: readonly string[]): string => {
    const [first, ...others] = given;
    if (first === undefined) return stretch(text);
    return text
      .split(first)
      .map((part) => stretchAround(part, others))
      .join(first);
  };
  const said = (result: unknown, given: readonly string[]): unknown => {
    if (typeof result === 'string') return stretchAround(result, given);
    if (Array.isArray(result)) return result.map((part) => said(part, given));
    return result;
  };
  const change = (value: unknown, key: string): unknown => {
    // Laid from planks, of which there are capitals alone.
    if (typeof value === 'string' && key === 'laid') {
      return value + value.slice(0, Math.ceil(value.length / 2)).trim();
    }
    if (typeof value === 'string') return stretch(value);
    if (typeof value === 'function') {
      return (...given: unknown[]) => {
        const known = givenIn(given);
        // A sentence that stands within another one is long enough by itself.
        const handed = given.map((one) =>
          typeof one !== 'function'
            ? one
            : (...asked: unknown[]) => {
                const inner: unknown = one(...asked);
                known.push(...givenIn(inner));
                return inner;
              },
        );
        const result: unknown = value(...handed);
        return said(
          result,
          known.sort((a, b) => b.length - a.length),
        );
      };
    }
    if (Array.isArray(value)) return value.map((one) => change(one, ''));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([name, inner]) => [name, change(inner, name)]),
    );
  };
  return change(words, '');
}

/** Has the page fetch longer words, and sentences of the daemon, before it is opened. */
export async function speakLonger(page: Page): Promise<void> {
  await page.route(/\/assets\/(first|rest|en)-[\w-]{8}\.js$/, async (route) => {
    const { pathname } = new URL(route.request().url());
    const part = /\/(first|rest|en)-/.exec(pathname)?.[1] ?? '';
    const english = JSON.stringify(`${pathname}?english`);
    await route.fulfill({
      contentType: 'text/javascript',
      body: `export * from ${english};
import { ${part} as english } from ${english};
const longer = ${longer.toString()};
export const ${part} = longer(english);
`,
    });
  });
}
