import type { StreamEvent } from '../daemon/contract/stream-event.ts';

export interface StreamListeners {
  onEvent(event: StreamEvent): void;
  /** The line is there again. */
  onOpen(): void;
  /** The line broke; it is taken up again by itself. */
  onBroken(): void;
}

export interface Stream {
  /** Begins anew at once: what may be seen over it is settled when it begins. */
  reopen(): void;
  close(): void;
}

const AGAIN_AFTER_MS = 3_000;

/**
 * Listens to the daemon and never stops trying. A browser gives up for good when a server answers
 * with an error, so the line is then opened anew.
 *
 * @param address - of the server-sent events
 */
export function listen(address: string, listeners: StreamListeners): Stream {
  let source: EventSource | null = null;
  let again: ReturnType<typeof setTimeout> | null = null;
  let closed = false;

  function open(): void {
    const line = new EventSource(address);
    source = line;
    line.onopen = () => listeners.onOpen();
    line.onmessage = (message: MessageEvent<string>) => {
      listeners.onEvent(JSON.parse(message.data) as StreamEvent);
    };
    line.onerror = () => {
      listeners.onBroken();
      if (line.readyState === EventSource.CLOSED && !closed) {
        if (again !== null) clearTimeout(again);
        again = setTimeout(open, AGAIN_AFTER_MS);
      }
    };
  }

  open();
  return {
    reopen() {
      if (again !== null) clearTimeout(again);
      source?.close();
      open();
    },
    close() {
      closed = true;
      if (again !== null) clearTimeout(again);
      source?.close();
    },
  };
}
