import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Language } from '../../daemon/contract/language.ts';
import { de } from '../../daemon/wording/de.ts';
import { en } from '../../daemon/wording/en.ts';
import { fi } from '../../daemon/wording/fi.ts';
import { contractSpeaker, metricSpeaker } from '../../daemon/wording/metric-speaker.ts';
import { nb } from '../../daemon/wording/nb.ts';
import type { Phrase } from '../../daemon/wording/phrase.ts';
import { type SentenceCode, say, type Wording } from '../../daemon/wording/sentence.ts';
import { sv } from '../../daemon/wording/sv.ts';
import { callsItSafe } from '../dashboard/unsafe-words.ts';
import { anyValues } from './any-values.ts';

const PROJECT = join(import.meta.dirname, '../..');
const FOLDERS = ['daemon', 'sensors'];
const codes = Object.keys(en);

const sources = FOLDERS.flatMap((folder) =>
  readdirSync(join(PROJECT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => /(?<!\.d)\.ts$/.test(name) && !/^wording\/(subject|en)\//.test(name))
    .map((name) => readFileSync(join(PROJECT, folder, name), 'utf8'))
    .filter((source) => /\/(sentence|english|refusal)\.ts'/.test(source)),
).join('\n');

/** Codes that are put together from a part that is known only when it is said. */
const families = [...sources.matchAll(/`([a-z-]+(?:\/|-))\$\{/g)].map(([, start]) => start ?? '');

describe('the sentences', () => {
  it('are each said somewhere', () => {
    const isSaid = (code: string) =>
      sources.includes(`'${code}'`) || families.some((start) => code.startsWith(start));
    expect(codes.filter((code) => !isSaid(code))).toEqual([]);
  });

  it('are those that are said: every code in the sources has one', () => {
    const said = [...sources.matchAll(/\b(?:sentence|told|because|spot)\(\s*'([^']+)'/g)].map(
      ([, code]) => code ?? '',
    );
    expect(said.length).toBeGreaterThan(100);
    expect(said.filter((code) => !Object.hasOwn(en, code))).toEqual([]);
  });
});

describe('whatever a sentence tells', () => {
  const speakers = [contractSpeaker(), metricSpeaker('sv', 'Europe/Stockholm')];
  it.each(codes)('%s is said whole, and with no figure longer than anybody reads', (code) => {
    const phrase = en[code as SentenceCode] as Phrase<unknown>;
    fc.assert(
      fc.property(anyValues(code), fc.constantFrom(...speakers), (values, speak) => {
        const text = phrase(values, speak, (inner) => say(en, inner, speak));
        expect(text).not.toMatch(/undefined|NaN|Infinity|\bnull\b|\[object/);
        expect(text).not.toMatch(/\d[.,]\d{7,}/);
        expect(text.length).toBeGreaterThan(2);
        expect(text).not.toMatch(/\bsafe/i);
      }),
      { numRuns: 25 },
    );
  });

  const others: Readonly<Partial<Record<Language, Wording>>> = { sv, de, nb, fi };
  it.each(Object.entries(others))('it is said whole in %s too', (language, wording) => {
    const speak = metricSpeaker(language as Language, 'Europe/Stockholm');
    for (const code of codes) {
      const phrase = wording[code as SentenceCode] as Phrase<unknown>;
      fc.assert(
        fc.property(anyValues(code), (values) => {
          const text = phrase(values, speak, (inner) => say(wording, inner, speak));
          expect(text, code).not.toMatch(/undefined|NaN|Infinity|\bnull\b|\[object/);
          expect(text, code).not.toMatch(/\d[.,]\d{7,}/);
          expect(text.length, code).toBeGreaterThan(2);
          expect(text, code).not.toMatch(callsItSafe[language as Language]);
        }),
        { numRuns: 5 },
      );
    }
  });
});
