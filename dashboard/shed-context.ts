import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { PinPrompt } from './access/pin-prompt.ts';
import type { Api } from './api.ts';
import type { DeviceKeeper } from './device-choice.ts';
import type { Live } from './live.ts';
import type { Outbox } from './offline/outbox.ts';
import type { ReaderChoice } from './reader-choice.ts';

/** What every page is handed. */
export interface Shed {
  readonly api: Api;
  readonly live: Live;
  /** What was entered here and is not sent yet. */
  readonly outbox: Outbox;
  readonly prompt: PinPrompt;
  readonly readerChoice: ReaderChoice;
  readonly device: DeviceKeeper;
}

export const ShedContext = createContext<Shed | null>(null);

/**
 * What the page was handed by `main.tsx`.
 *
 * @throws Error outside the app
 */
export function useShed(): Shed {
  const shed = useContext(ShedContext);
  if (shed === null) throw new Error('no shed was handed to this page');
  return shed;
}
