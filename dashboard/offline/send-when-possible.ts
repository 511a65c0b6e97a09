import { effect } from '@preact/signals';
import type { Live } from '../live.ts';
import type { Outbox } from './outbox.ts';

/** While something waits and the shed answers, it is tried again after so long. */
const AGAIN_MS = 30_000;

/** Sends what waits when a page starts, the network returns, or the page is about to be left. */
export function sendWhenPossible(outbox: Outbox, live: Pick<Live, 'isMissing'>): void {
  void outbox.open();
  addEventListener('online', () => void outbox.flush());
  // A phone that is put into a pocket may not run this page again.
  document.addEventListener('visibilitychange', () => {
    void (document.visibilityState === 'hidden' ? outbox.hurry() : outbox.flush());
  });
  addEventListener('pagehide', () => void outbox.hurry());
  effect(() => {
    // Not within the effect, which would then hang on what the outbox reads.
    if (!live.isMissing.value) queueMicrotask(() => void outbox.flush());
  });
  setInterval(() => {
    if (outbox.entries.peek().length > 0) void outbox.flush();
  }, AGAIN_MS);
}
