import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Sentence } from '../daemon/contract/sentence.ts';
import { type SomeWording, say } from '../daemon/wording/sentence.ts';
import { type Calendar, createCalendar } from './format/calendar.ts';
import { keptTogether } from './format/kept-together.ts';
import { createFigures, type Figures } from './format/reader-figures.ts';
import { createSpeaker } from './format/reader-speaker.ts';
import type { UnitSystem } from './format/units.ts';
import { type Language, localeFor } from './words/language.ts';
import type { Words } from './words/words.ts';

/** A sentence as a reply has it; of those that have no code yet, the English text alone. */
export type Told = Pick<Sentence, 'code' | 'text' | 'values'>;

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
  say(sentence: Told): string;
}

/**
 * @param wording - the daemon’s sentences in that language
 * @param wanted - the device’s languages, for the ways of a region
 */
export function createReader(
  language: Language,
  units: UnitSystem,
  words: Words,
  wording: SomeWording,
  wanted: readonly string[],
): Reader {
  const locale = localeFor(language, wanted);
  const figures = createFigures(locale, units);
  const calendar = createCalendar(undefined, locale);
  const speaker = createSpeaker(locale, units, figures, calendar);
  return {
    language,
    locale,
    units,
    words,
    figures: onOneLine(figures),
    calendar,
    say: (sentence) => keptTogether(say(wording, sentence, speaker)),
  };
}

/** The same figures, each on one line with its unit. */
function onOneLine(figures: Figures): Figures {
  const told = Object.entries(figures).map(([name, tell]: [string, (...of: never[]) => string]) => [
    name,
    (...of: never[]) => keptTogether(tell(...of)),
  ]);
  return Object.fromEntries(told) as Figures;
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
