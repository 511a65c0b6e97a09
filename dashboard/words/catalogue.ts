import type { SomeWording } from '../../daemon/wording/sentence.ts';
import type { Language } from './language.ts';
import type { FirstWords, RestWords } from './words.ts';

interface Parts {
  readonly first: () => Promise<FirstWords>;
  readonly rest: () => Promise<RestWords>;
  /** What the daemon says on the wall: reasons, notices, faults. */
  readonly wall: () => Promise<SomeWording>;
  /** All that the daemon says. */
  readonly wording: () => Promise<SomeWording>;
}

/** Each language in parts, so that a wall fetches the small one of its own language alone. */
const catalogues: Readonly<Record<Language, Parts>> = {
  en: {
    first: async () => (await import('./en/first.ts')).first,
    rest: async () => (await import('./en/rest.ts')).rest,
    wall: async () => (await import('../../daemon/wording/en-wall.ts')).wall,
    wording: async () => (await import('../../daemon/wording/en.ts')).en,
  },
  de: {
    first: async () => (await import('./de/first.ts')).first,
    rest: async () => (await import('./de/rest.ts')).rest,
    wall: async () => (await import('../../daemon/wording/de-wall.ts')).wall,
    wording: async () => (await import('../../daemon/wording/de.ts')).de,
  },
  sv: {
    first: async () => (await import('./sv/first.ts')).first,
    rest: async () => (await import('./sv/rest.ts')).rest,
    wall: async () => (await import('../../daemon/wording/sv-wall.ts')).wall,
    wording: async () => (await import('../../daemon/wording/sv.ts')).sv,
  },
  nb: {
    first: async () => (await import('./nb/first.ts')).first,
    rest: async () => (await import('./nb/rest.ts')).rest,
    wall: async () => (await import('../../daemon/wording/nb-wall.ts')).wall,
    wording: async () => (await import('../../daemon/wording/nb.ts')).nb,
  },
  fi: {
    first: async () => (await import('./fi/first.ts')).first,
    rest: async () => (await import('./fi/rest.ts')).rest,
    wall: async () => (await import('../../daemon/wording/fi-wall.ts')).wall,
    wording: async () => (await import('../../daemon/wording/fi.ts')).fi,
  },
};

/** Fetches the words that the first screen needs. */
export function firstWords(language: Language): Promise<FirstWords> {
  return catalogues[language].first();
}

/** Fetches the words of all other pages. */
export function restWords(language: Language): Promise<RestWords> {
  return catalogues[language].rest();
}

/** Fetches the sentences of the daemon that a wall says. */
export function wallWording(language: Language): Promise<SomeWording> {
  return catalogues[language].wall();
}

/** Fetches all sentences of the daemon. */
export function daemonWording(language: Language): Promise<SomeWording> {
  return catalogues[language].wording();
}
