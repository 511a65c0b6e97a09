import { connect, type IClientOptions } from 'mqtt';
import { dated, type Now } from './dating.ts';
import type { DiskQueue } from './disk-queue.ts';
import { senmlPack } from './senml-pack.ts';
import { textSample } from './waiting-sample.ts';

export interface SenderOptions {
  readonly url: string;
  readonly site: string;
  readonly login: Pick<IClientOptions, 'username' | 'password' | 'ca'>;
  readonly queue: DiskQueue;
  readonly now: () => Now;
  readonly say: (line: string) => void;
}

/** Empties the queue into a broker, in its order. */
export interface Sender {
  /** Something was added, or the clock was set. */
  wake(): void;
  counts(): { readonly sent: number; readonly undatable: number };
  close(): Promise<void>;
}

/** So many are under way together; each batch is let go as a whole. */
const BATCH = 50;
const RECONNECT_MS = 2000;

/**
 * Sends what waits, at QoS 1, and lets it go once the broker has acknowledged it. While the broker
 * is away it is tried again every two seconds.
 */
export function startSender(options: SenderOptions): Sender {
  const { url, site, login, queue, now, say } = options;
  const client = connect(url, {
    ...login,
    clientId: `attached-${site}-${process.pid}`,
    reconnectPeriod: RECONNECT_MS,
    connectTimeout: 10_000,
  });
  const counts = { sent: 0, undatable: 0 };
  let closing = false;
  let busy: Promise<void> | null = null;
  let again = false;
  let saidAway = false;

  client.on('connect', () => {
    say(saidAway ? 'the broker is back' : `connected to ${addressAlone(url)}`);
    saidAway = false;
    wake();
  });
  client.on('close', () => {
    if (!saidAway && !closing) say('the broker is away; readings wait on disk');
    saidAway = true;
  });
  client.on('error', (error) => say(`the broker answers: ${error.message}`));

  function wake(): void {
    again = true;
    if (busy !== null || closing || !client.connected) return;
    busy = empty()
      .catch((error: Error) => {
        if (!closing) say(`sending failed, tried again later: ${error.message}`);
      })
      .finally(() => {
        busy = null;
      });
  }

  async function empty(): Promise<void> {
    while (again && !closing) {
      again = false;
      while (!closing && (await sendBatch())) {
        // on to the next
      }
    }
  }

  /** Returns whether more may be waiting. */
  async function sendBatch(): Promise<boolean> {
    const moment = now();
    const under: Promise<unknown>[] = [];
    let through = null;
    for (const waiting of queue.oldest(BATCH)) {
      const found = textSample(waiting.body);
      const time = found === null ? ({ kind: 'never' } as const) : dated(found.taken, moment);
      if (time.kind === 'not-yet') break;
      through = waiting;
      if (found === null || time.kind === 'never') {
        counts.undatable += 1;
        continue;
      }
      const { sample } = found;
      const topic = `boardcure/${site}/sensor/${sample.sensor}`;
      under.push(client.publishAsync(topic, senmlPack(sample, time.at), { qos: 1 }));
    }
    if (through === null) return false;
    await Promise.all(under);
    counts.sent += under.length;
    queue.letGo(through);
    return true;
  }

  return {
    wake,
    counts: () => counts,
    async close() {
      closing = true;
      // what was not acknowledged stays on disk and is sent at the next start
      await client.endAsync(true);
    },
  };
}

/** The address without user and password. */
function addressAlone(url: string): string {
  const { protocol, host } = new URL(url);
  return `${protocol}//${host}`;
}
