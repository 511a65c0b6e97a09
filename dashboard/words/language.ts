import type { Language as SpokenLanguage } from '../../daemon/contract/language.ts';

export type Language = SpokenLanguage;

/** The languages of the pages, by their BCP 47 tags, with how each calls itself. */
export const languageNames = {
  en: 'English',
  sv: 'Svenska',
  de: 'Deutsch',
  nb: 'Norsk bokmål',
  fi: 'Suomi',
} as const satisfies Record<Language, string>;

export const languages = Object.keys(languageNames) as readonly Language[];

/** Where dates and figures are written in a language when the device names no region of its own. */
const usualLocale: Readonly<Record<Language, string>> = {
  en: 'en-GB',
  sv: 'sv-SE',
  de: 'de-DE',
  nb: 'nb-NO',
  fi: 'fi-FI',
};

/** Tags of a device that mean one of ours: Norwegian in general and Nynorsk read Bokmål. */
const alsoMeant: Readonly<Record<string, Language>> = { no: 'nb', nn: 'nb' };

/** The language that a tag such as `de-AT` means; null for one that the pages do not speak. */
export function languageOf(tag: string): Language | null {
  const first = tag.toLowerCase().split('-')[0] ?? '';
  return languages.find((language) => language === first) ?? alsoMeant[first] ?? null;
}

/**
 * The first of a device’s languages that the pages speak; English when they speak none.
 *
 * @param wanted - BCP 47 tags in the order of preference, as `navigator.languages`
 */
export function preferredLanguage(wanted: readonly string[]): Language {
  for (const tag of wanted) {
    const language = languageOf(tag);
    if (language !== null) return language;
  }
  return 'en';
}

/**
 * The locale for dates and figures: the device’s own where it is of that language, so that `de-AT`
 * or `en-US` keep their ways; else the usual one.
 */
export function localeFor(language: Language, wanted: readonly string[]): string {
  const own = wanted.find((tag) => languageOf(tag) === language && tag.includes('-'));
  // The names of weekdays and months must be of the language that is shown.
  return own !== undefined && alsoMeant[own.split('-')[0] ?? ''] === undefined
    ? own
    : usualLocale[language];
}
