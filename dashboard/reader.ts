import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import { type Calendar, createCalendar } from './format/calendar.ts';
import { createFigures, type Figures } from './format/reader-figures.ts';
import type { UnitSystem } from './format/units.ts';
import type { Words } from './words/catalogue.ts';
import { type Language, localeFor } from './words/language.ts';

/** A sentence of the daemon: its English text, and what it takes to say it otherwise. */
export interface Sentence {
  readonly code: string;
  readonly text: string;
}

/** Whoever reads this page: in which words, figures, units and dates. */
export interface Reader {
  readonly language: Language;
  /** BCP 47 tag for Intl. */
  readonly locale: string;
  readonly units: UnitSystem;
  readonly words: Words;
  readonly figures: Figures;
  readonly calendar: Calendar;
  /** A reason, caution, notice … of the daemon in the reader’s words. */
  say(sentence: Sentence): string;
}

/**
 * @param wanted - the device’s languages, for the ways of a region
 */
export function createReader(
  language: Language,
  units: UnitSystem,
  words: Words,
  wanted: readonly string[],
): Reader {
  const locale = localeFor(language, wanted);
  return {
    language,
    locale,
    units,
    words,
    figures: createFigures(locale, units),
    calendar: createCalendar(undefined, locale),
    say: ({ text }) => text,
  };
}

export const ReaderContext = createContext<Reader | null>(null);

/**
 * In which words, figures and units this page is to be written.
 *
 * @throws Error outside the app
 */
export function useReader(): Reader {
  const reader = useContext(ReaderContext);
  if (reader === null) throw new Error('no reader was handed to this page');
  return reader;
}
