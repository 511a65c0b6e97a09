import { type ReadonlySignal, signal } from '@preact/signals';

/** Asks whoever is there for the PIN, once for all that wait for it. */
export interface PinPrompt {
  readonly asked: ReadonlySignal<boolean>;
  /** Resolves with whether someone logged in. */
  ask(): Promise<boolean>;
  answer(isLoggedIn: boolean): void;
}

export function createPinPrompt(): PinPrompt {
  const asked = signal(false);
  let waiting: ((isLoggedIn: boolean) => void)[] = [];
  return {
    asked,
    ask() {
      asked.value = true;
      return new Promise((resolve) => waiting.push(resolve));
    },
    answer(isLoggedIn) {
      asked.value = false;
      const told = waiting;
      waiting = [];
      for (const resolve of told) resolve(isLoggedIn);
    },
  };
}
