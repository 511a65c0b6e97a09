import { type ReadonlySignal, signal } from '@preact/signals';
import { preferredUnits, type UnitSystem } from './format/units.ts';
import { createReader, type Reader } from './reader.ts';
import { daemonWording, firstWords, restWords } from './words/catalogue.ts';
import { type Language, languages, preferredLanguage } from './words/language.ts';
import type { FirstWords, Words } from './words/words.ts';

/** What this device was told; null for “as the device itself”. */
export interface Choice {
  readonly language: Language | null;
  readonly units: UnitSystem | null;
}

/** Keeps the choice on this device. */
export interface ChoiceStore {
  read(): Choice;
  write(choice: Choice): void;
}

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

  async function show(next: Choice): Promise<void> {
    const language = next.language ?? preferredLanguage(wanted);
    const units = next.units ?? preferredUnits(wanted);
    const [first, wording, rest] = await Promise.all([
      firstWords(language),
      daemonWording(language),
      hasRest ? restWords(language) : null,
    ]);
    reader.value = createReader(language, units, wordsOf(first, rest ?? {}), wording, wanted);
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
    async fetchRest() {
      if (hasRest) return;
      hasRest = true;
      try {
        await show(choice.value);
      } catch (error) {
        hasRest = false;
        throw error;
      }
    },
  };
}

/** The rest is there before any page is shown that needs it: `later` waits for it. */
function wordsOf(first: FirstWords, rest: object): Words {
  return { ...first, ...rest } as Words;
}

const KEY = 'boardcure.reader';

/** Keeps the choice in the browser’s own storage; without one it holds until the page is closed. */
export function keptChoice(storage: Pick<Storage, 'getItem' | 'setItem'> | null): ChoiceStore {
  return {
    read() {
      try {
        return choiceOf(JSON.parse(storage?.getItem(KEY) ?? '{}'));
      } catch {
        return choiceOf({});
      }
    },
    write(choice) {
      try {
        storage?.setItem(KEY, JSON.stringify(choice));
      } catch {
        // A full or forbidden storage is no reason to refuse a language.
      }
    },
  };
}

function choiceOf(kept: unknown): Choice {
  const said = typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  return {
    language: languages.find((language) => language === said.language) ?? null,
    units: said.units === 'metric' || said.units === 'us' ? said.units : null,
  };
}
