import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { ListedSetting } from '../../daemon/contract/setting.ts';
import { Settings } from '../../daemon/settings/schema.ts';
import { plainGround, standingSettings } from '../../daemon/settings/standing.ts';
import { described, settingDescriptions } from '../../dashboard/settings-page/descriptions.ts';
import { fitsSearch, unitText } from '../../dashboard/settings-page/setting-value.ts';
import { restWords } from '../../dashboard/words/catalogue.ts';
import { type Language, languages } from '../../dashboard/words/language.ts';
import { callsItSafe } from './unsafe-words.ts';

const { settings } = standingSettings(() => plainGround(Settings.parse({}))).list();
const others = languages.filter((language) => language !== 'en');

const markOf = (english: string): string =>
  createHash('sha256').update(english).digest('hex').slice(0, 4);

/** What must be the same in every language: figures, and words that are typed as they stand. */
const fixedWords = (text: string): string[] =>
  (
    text.match(
      /\d+|`[^`]+`|[\w.-]+\/<\w+>\/\w+|https?:\/\/|mqtt:\/\/[\w:]+|\b(?:[A-Z][A-Z_]{2,}|[a-z]+[A-Z]\w*|RFC \d+|hmac-sha256|null|false)\b/g,
    ) ?? []
  ).sort();

const figuresIn = (text: string) => new Set(text.match(/\d+/g));

async function shown(language: Language, name: string): Promise<ReturnType<typeof described>> {
  const setting = settings.find((one) => one.name === name) as ListedSetting;
  return described(setting, language, await settingDescriptions(language));
}

describe.each(others)('what settings do, in %s', (language) => {
  it('is said of every setting, and of none that is gone', async () => {
    const names = Object.keys(await settingDescriptions(language));
    expect(names.sort()).toEqual(settings.map(({ name }) => name).sort());
  });

  it('is that of the English text of today', async () => {
    const descriptions = await settingDescriptions(language);
    const stale = settings
      .filter(({ name, description }) => descriptions[name]?.[0] !== markOf(description))
      .map(
        ({ name, description }) =>
          `${name}: translate “${description}” anew and mark it ${markOf(description)}`,
      );
    expect(stale, `dashboard/words/${language}/setting-descriptions.ts`).toEqual([]);
  });

  it('keeps figures, names and values as they are', async () => {
    const descriptions = await settingDescriptions(language);
    for (const { name, description, choices } of settings) {
      const says = descriptions[name]?.[1] ?? '';
      const values = choices.filter((choice) => new RegExp(`\\b${choice}\\b`).test(description));
      for (const value of [...values, ...fixedWords(description)]) {
        expect(says, name).toContain(value);
      }
      expect(figuresIn(says), name).toEqual(figuresIn(description));
      expect(says, name).not.toBe(description);
    }
  });

  it('never calls anything safe', async () => {
    const texts = Object.values(await settingDescriptions(language)).map(([, says]) => says);
    expect(texts.join('\n')).not.toMatch(callsItSafe[language]);
  });
});

describe('a unit that is a word', () => {
  const units = settings.map(({ unit }) => unit).filter((unit) => / |\p{L}{4,}/u.test(unit ?? ''));

  it.each(others)('is written in %s', async (language) => {
    const words = (await restWords(language)).settings;
    // A clock is typed into a field of its own, which tells how.
    const shownUnits = new Set(units.filter((unit) => !/hh:mm/.test(unit ?? '')));
    expect([...shownUnits].sort()).toEqual(Object.keys(words.units).sort());
    for (const unit of shownUnits) expect(unitText(unit ?? '', words)).not.toBe('');
    expect(unitText('MiB', words)).toBe('MiB');
  });
});

describe('the search among settings', () => {
  it('finds words of the language that is shown, and the name in each', async () => {
    const swedish = await shown('sv', 'notices.ragRepeatHours');
    expect(fitsSearch(swedish, 'trasorna dygnet')).toBe(true);
    expect(fitsSearch(swedish, 'until ticked')).toBe(false);
    expect(fitsSearch(swedish, 'ragRepeat')).toBe(true);
    expect(fitsSearch(await shown('en', 'notices.ragRepeatHours'), 'until ticked')).toBe(true);
  });

  it('finds English where a newer daemon lists what is described in no other language', async () => {
    const newer = { ...(await shown('sv', 'site')), name: 'newer', description: 'a new one' };
    const setting = described(newer, 'fi', await settingDescriptions('fi'));
    expect(setting.says).toBeNull();
    expect(fitsSearch(setting, 'new one')).toBe(true);
  });
});

it('a changed figure or name in a description would be seen', () => {
  expect(fixedWords('port 465, in secretFile or BOARDCURE_X; `backups`')).toEqual(
    ['465', 'secretFile', 'BOARDCURE_X', '`backups`'].sort(),
  );
});
