import { type ReadonlySignal, signal } from '@preact/signals';

export const lights = ['auto', 'day', 'dusk', 'night'] as const;
/** Seconds for which a page of the wall stands; 0 is until someone turns it. */
export const turnTimes = [10, 15, 30, 60, 0] as const;

/** What this screen was told to do, wherever it hangs. */
export interface DeviceChoice {
  readonly light: (typeof lights)[number];
  /** Whole hours of the device’s clock, 0 to 23. */
  readonly nightFrom: number;
  readonly nightUntil: number;
  readonly turnSeconds: (typeof turnTimes)[number];
}

export const usualChoice: DeviceChoice = {
  light: 'auto',
  nightFrom: 21,
  nightUntil: 6,
  turnSeconds: 15,
};

export interface DeviceKeeper {
  readonly choice: ReadonlySignal<DeviceChoice>;
  choose(change: Partial<DeviceChoice>): void;
}

const KEY = 'boardcure.screen';

/**
 * Keeps the choice in the browser’s own storage.
 *
 * @param storage - null where there is none: it holds until the page is closed
 */
export function createDeviceChoice(
  storage: Pick<Storage, 'getItem' | 'setItem'> | null,
): DeviceKeeper {
  const choice = signal(read());

  function read(): DeviceChoice {
    try {
      return choiceOf(JSON.parse(storage?.getItem(KEY) ?? '{}'));
    } catch {
      return usualChoice;
    }
  }

  return {
    choice,
    choose(change) {
      choice.value = choiceOf({ ...choice.value, ...change });
      try {
        storage?.setItem(KEY, JSON.stringify(choice.value));
      } catch {
        // A full or forbidden storage is no reason to refuse a light.
      }
    },
  };
}

/** What was kept, with the usual in place of what is no choice. */
function choiceOf(kept: unknown): DeviceChoice {
  const said = typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  const hour = (value: unknown, usual: number) =>
    Number.isInteger(value) && Number(value) >= 0 && Number(value) < 24 ? Number(value) : usual;
  return {
    light: lights.find((light) => light === said.light) ?? usualChoice.light,
    nightFrom: hour(said.nightFrom, usualChoice.nightFrom),
    nightUntil: hour(said.nightUntil, usualChoice.nightUntil),
    turnSeconds:
      turnTimes.find((seconds) => seconds === said.turnSeconds) ?? usualChoice.turnSeconds,
  };
}
