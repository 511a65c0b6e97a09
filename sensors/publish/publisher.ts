import { randomUUID } from 'node:crypto';
import { connectAsync } from 'mqtt';
import type { Quantity } from '../../daemon/contract/quantity.ts';

/** A reading on its way to a broker, with its own time. */
export interface OutgoingReading {
  readonly sensor: string;
  readonly quantity: Quantity;
  readonly value: number;
  /** UTC epoch ms */
  readonly at: number;
}

export interface PublisherOptions {
  /** `mqtt://host:port` or another address an MQTT client takes */
  readonly url: string;
  readonly site: string;
  /** start of the client id, so that it is known in the broker's log */
  readonly name: string;
  /** most readings sent and not yet acknowledged; default 200 */
  readonly window?: number;
  /** told when the connection is lost and when it is back */
  readonly onLink?: (state: 'lost' | 'back') => void;
  /** gives up at once when aborted */
  readonly stop?: AbortSignal;
}

/** Sends readings at QoS 1 as any stranger would. */
export interface Publisher {
  /** Sends one; resolves as soon as there is room for the next. @throws when stopped or refused */
  publish(reading: OutgoingReading): Promise<void>;
  /** Resolves when all that was sent has been acknowledged. */
  drained(): Promise<void>;
  counts(): { readonly published: number; readonly acknowledged: number };
  close(): Promise<void>;
}

const DEFAULT_WINDOW = 200;
const RECONNECT_MS = 500;
const CONNECT_TIMEOUT_MS = 10_000;

/**
 * Connects to a broker, once; after that a lost connection is mended by itself and what was not
 * acknowledged is sent again.
 *
 * @param options - where to, and how much may be under way
 * @returns the publisher
 * @throws Error of the connection when nothing answers at the first try
 */
export async function connectPublisher(options: PublisherOptions): Promise<Publisher> {
  const { url, site, name, window = DEFAULT_WINDOW, onLink, stop } = options;
  const client = await connectAsync(
    url,
    {
      clientId: `${name}-${randomUUID().slice(0, 8)}`,
      reconnectPeriod: RECONNECT_MS,
      connectTimeout: CONNECT_TIMEOUT_MS,
    },
    false,
  );
  let published = 0;
  let acknowledged = 0;
  let failure: Error | null = null;
  let connected = true;
  let closing = false;
  let resume: (() => void) | null = null;
  const wake = () => {
    resume?.();
    resume = null;
  };
  const fail = (error: Error) => {
    failure ??= error;
    wake();
  };
  const until = async (enough: () => boolean) => {
    while (failure === null && !enough()) {
      await new Promise<void>((resolve) => {
        resume = resolve;
      });
    }
    if (failure !== null) throw failure;
  };
  const onStop = () => fail(new Error('stopped before everything was acknowledged'));
  if (stop?.aborted) onStop();
  stop?.addEventListener('abort', onStop, { once: true });
  client.on('close', () => {
    if (connected && !closing) onLink?.('lost');
    connected = false;
  });
  client.on('connect', () => {
    if (!connected) onLink?.('back');
    connected = true;
  });

  return {
    async publish({ sensor, quantity, value, at }) {
      await until(() => published - acknowledged < window);
      published += 1;
      const payload = JSON.stringify({ value, time: new Date(at).toISOString() });
      client.publish(
        `boardcure/${site}/sensor/${sensor}/${quantity}`,
        payload,
        { qos: 1 },
        (error) => {
          if (error) return fail(error);
          acknowledged += 1;
          wake();
        },
      );
    },
    drained: () => until(() => acknowledged === published),
    counts: () => ({ published, acknowledged }),
    async close() {
      closing = true;
      stop?.removeEventListener('abort', onStop);
      // a broken or stopped connection may never acknowledge: leave without waiting for it
      await client.endAsync(failure !== null || acknowledged < published || !client.connected);
    },
  };
}
