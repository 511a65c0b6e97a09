import { type ReadonlySignal, signal } from '@preact/signals';
import { preferredUnits } from './format/units.ts';
import type { Choice, ChoiceStore } from './kept-choice.ts';
import { createReader, type Reader } from './reader.ts';
import { daemonWording, firstWords, restWords, wallWording } from './words/catalogue.ts';
import { preferredLanguage } from './words/language.ts';
import type { FirstWords, Words } from './words/words.ts';

/** The reader of this device, and the way to change it. */
export interface ReaderChoice {
  /** null until the first words are here. */
  readonly reader: ReadonlySignal<Reader | null>;
  readonly choice: ReadonlySignal<Choice>;
  /** Fetches the words of a new language before anything changes. Rejects where they cannot be had. */
  choose(choice: Choice): Promise<void>;
  /** Fetches the words that only other pages than the wall need. */
  fetchRest(): Promise<void>;
}

/**
 * @param wanted - the device’s own languages, BCP 47, as `navigator.languages`
 */
export async function createReaderChoice(
  store: ChoiceStore,
  wanted: readonly string[],
): Promise<ReaderChoice> {
  const choice = signal(store.read());
  const reader = signal<Reader | null>(null);
  let hasRest = false;
  let fetching: Promise<void> | null = null;

  async function show(next: Choice): Promise<void> {
    const language = next.language ?? preferredLanguage(wanted);
    const units = next.units ?? preferredUnits(wanted);
    const [first, wording, rest] = await Promise.all([
      firstWords(language),
      hasRest ? daemonWording(language) : wallWording(language),
      hasRest ? restWords(language) : null,
    ]);
    reader.value = createReader(language, units, wordsOf(first, rest ?? {}), wording, wanted);
  }

  async function fetchRest(): Promise<void> {
    hasRest = true;
    try {
      await show(choice.value);
    } catch (error) {
      hasRest = false;
      fetching = null;
      throw error;
    }
  }

  await show(choice.value);
  return {
    reader,
    choice,
    async choose(next) {
      await show(next);
      choice.value = next;
      store.write(next);
    },
    fetchRest() {
      // Whoever asks while they are on their way waits for the same ones.
      fetching ??= fetchRest();
      return fetching;
    },
  };
}

/** The rest is there before any page is shown that needs it: `later` waits for it. */
function wordsOf(first: FirstWords, rest: object): Words {
  return { ...first, ...rest } as Words;
}
