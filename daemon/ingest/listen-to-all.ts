import { randomUUID } from 'node:crypto';
import { connect, type MqttClient } from 'mqtt';
import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
import type { IngestLog } from './message-port.ts';

export interface ListenToAllParts {
  /** Of the other broker. */
  url: string;
  now: () => number;
  heard: (topic: string, payload: Uint8Array, retained: boolean) => void;
  log: IngestLog;
}

const patienceMs = 10_000;
/** From this code on a broker says no. **Source:** MQTT 3.1.1 (2014), section 3.9.3. */
const refusal = 0x80;

/**
 * Listens to every topic of another broker, for a while and on request: it may be a busy one that
 * serves others. A session of its own that ends with its connection, at QoS 0, so that readings do
 * not wait behind it, nothing is kept for it, and nothing is left at the broker when we fail.
 */
export function listenToAll({ url, now, heard, log }: ListenToAllParts) {
  let client: MqttClient | null = null;
  let end: NodeJS.Timeout | null = null;
  let until: number | null = null;
  let trouble: Said | null = null;

  async function stop(): Promise<void> {
    if (end) clearTimeout(end);
    const own = client;
    client = null;
    end = null;
    until = null;
    if (own) await own.endAsync(true);
  }

  function failed(why: Said): void {
    trouble = why;
    log.warn({ why: why.text }, 'listening to all topics does not work');
    void stop();
  }

  return {
    state: () => ({ until, trouble }),
    /** Settles once the broker has answered, or has not for a while. */
    async listenUntil(at: number | null): Promise<void> {
      trouble = null;
      await stop();
      if (at === null) return;
      const own = connect(url, {
        clientId: `boardcure-listen-${randomUUID().slice(0, 8)}`,
        clean: true,
        connectTimeout: patienceMs,
        // It is not so important as to come back by itself.
        reconnectPeriod: 0,
      });
      client = own;
      until = at;
      own.on('message', (topic, payload, packet) => heard(topic, payload, packet.retain));
      own.on('error', (cause) => {
        if (client === own) failed(sentence('listen-failed', { because: cause.message }));
      });
      own.on('close', () => {
        if (client === own) failed(sentence('listen-ended', {}));
      });
      end = setTimeout(() => void stop(), Math.max(0, at - now()));
      end.unref();
      await new Promise<void>((resolve) => {
        const late = setTimeout(resolve, patienceMs);
        const done = () => {
          clearTimeout(late);
          resolve();
        };
        own.once('close', done);
        own.once('connect', () => {
          own.subscribe('#', { qos: 0 }, (cause, granted) => {
            if (client === own && (cause || granted?.some(({ qos }) => Number(qos) >= refusal))) {
              failed(sentence('listen-refused', {}));
            }
            done();
          });
        });
      });
    },
    close: stop,
  };
}
