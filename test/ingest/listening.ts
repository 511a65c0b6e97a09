import { connectAsync, type MqttClient } from 'mqtt';
import { expect, vi } from 'vitest';
import type { IngestLog, MessagePort, TakeMessage } from '../../daemon/ingest/message-port.ts';
import { startSubscriber } from '../../daemon/ingest/subscriber.ts';
import { heldStore, quiet } from './held-store.ts';

export const sensorTopic = 'boardcure/shed/sensor/rack-1/air-temperature';
/** How long something that must come is waited for. */
export const soon = { timeout: 10_000, interval: 20 };

/** A reading with a time of its own, a second after the one before. */
export const ownTimed = (index: number) =>
  JSON.stringify({ value: 20, time: Date.UTC(2025, 0, 1) + index * 1000 });

/** Sends readings of one sensor at QoS 1; settles when the broker has them all. */
export const publishAll = (client: MqttClient, payloads: readonly string[]) =>
  Promise.all(payloads.map((payload) => client.publishAsync(sensorTopic, payload, { qos: 1 })));

export interface ListenOptions {
  take?: TakeMessage;
  /** Topics of rules. */
  filters?: readonly string[];
  /** `user:password@` as in an address */
  login?: string;
  log?: IngestLog;
}

/** A store with subscribers and publishers about it, all of which it can close. */
export function listening() {
  const store = heldStore();
  const closers: (() => Promise<unknown>)[] = [];
  return {
    store,
    /** Something else to close at the end, before what was there earlier. */
    onClose: (close: () => Promise<unknown>) => closers.push(close),
    subscriber(port: number, options: ListenOptions = {}): MessagePort {
      const subscriber = startSubscriber({
        url: `mqtt://${options.login ?? ''}127.0.0.1:${port}`,
        clientId: 'boardcure-test',
        site: 'shed',
        take: options.take ?? store.take,
        filters: options.filters ?? [],
        log: options.log ?? quiet,
      });
      closers.push(() => subscriber.close());
      return subscriber;
    },
    async publisher(port: number, options: object = {}): Promise<MqttClient> {
      const client = await connectAsync(`mqtt://127.0.0.1:${port}`, options);
      closers.push(() => client.endAsync(true));
      return client;
    },
    async close(): Promise<void> {
      store.break(null);
      store.release();
      for (const close of closers.reverse()) await close();
    },
  };
}

export const connected = (subscriber: MessagePort) =>
  vi.waitFor(() => expect(subscriber.connected()).toBe(true), soon);
