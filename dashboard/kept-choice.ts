import type { UnitSystem } from './format/units.ts';
import { type Language, languages } from './words/language.ts';

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

/** The browser’s own storage; null where it is forbidden. */
export function ownStorage(): Storage | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}
