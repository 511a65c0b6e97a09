import { createServer, type Socket } from 'node:net';
import { Aedes } from 'aedes';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readingFlagBits } from '../../sensors/correct/reading-time.ts';
import { needs } from '../house/needs.ts';
import { cutLine } from './cut-line.ts';
import { connected, listening, ownTimed, publishAll, sensorTopic, soon } from './listening.ts';
import { type Mosquitto, startMosquitto } from './mosquitto.ts';

let site: ReturnType<typeof listening>;
beforeEach(() => {
  site = listening();
});
afterEach(() => site.close());

needs('mosquitto')('a session at mosquitto', () => {
  let mosquitto: Mosquitto;
  beforeEach(async () => {
    mosquitto = await startMosquitto();
    site.onClose(() => mosquitto.remove());
  });

  it('holds many readings under way while they are committed, and acknowledges none of them', async () => {
    let taken = 0;
    const line = await cutLine(mosquitto.port);
    site.onClose(() => line.close());
    const subscriber = site.subscriber(line.port, {
      take: (message, acknowledge) => {
        taken++;
        site.store.take(message, acknowledge);
      },
    });
    await connected(subscriber);
    site.store.hold();
    await publishAll(
      await site.publisher(mosquitto.port),
      Array.from({ length: 500 }, (_, index) => ownTimed(index)),
    );
    await vi.waitFor(() => expect(taken).toBe(500), soon);
    expect(site.store.readings()).toEqual([]);
    // What was not acknowledged comes again over the next connection: all of it.
    line.cut();
    line.mend();
    await vi.waitFor(() => expect(taken).toBe(1000), soon);
    site.store.release();
    await vi.waitFor(
      () => expect(new Set(site.store.readings().map(({ at }) => at)).size).toBe(500),
      soon,
    );
  });

  it('a reading that could not be written comes again until it is', async () => {
    const subscriber = site.subscriber(mosquitto.port);
    await connected(subscriber);
    site.store.break(new Error('the disk is full'));
    await publishAll(await site.publisher(mosquitto.port), [ownTimed(1), ownTimed(2)]);
    await vi.waitFor(() => expect(subscriber.connected()).toBe(false), soon);
    site.store.break(null);
    await vi.waitFor(() => expect(site.store.readings().map(({ at }) => at)).toHaveLength(2), soon);
  });

  it('is taken up again after mosquitto was restarted', async () => {
    const subscriber = site.subscriber(mosquitto.port);
    await connected(subscriber);
    await mosquitto.stop();
    await vi.waitFor(() => expect(subscriber.connected()).toBe(false), soon);
    await mosquitto.start();
    await connected(subscriber);
    await publishAll(await site.publisher(mosquitto.port), [ownTimed(1)]);
    await vi.waitFor(() => expect(site.store.readings()).toHaveLength(1), soon);
  });

  it('brings what waited while we were away exactly once, and only what has no own time is of unknown time', async () => {
    const first = site.subscriber(mosquitto.port);
    await connected(first);
    await first.close();
    const client = await site.publisher(mosquitto.port);
    const timed = Array.from({ length: 1200 }, (_, index) => ownTimed(index));
    await publishAll(client, [...timed, '18', '19']);

    const second = site.subscriber(mosquitto.port);
    await vi.waitFor(() => expect(site.store.readings()).toHaveLength(1202), soon);
    const flagged = site.store.readings().filter(({ flags }) => flags !== 0);
    expect(flagged.map(({ raw, flags }) => [raw, flags])).toEqual([
      [18, readingFlagBits['time-unknown']],
      [19, readingFlagBits['time-unknown']],
    ]);
    expect(new Set(site.store.readings().map(({ at, raw }) => `${at} ${raw}`)).size).toBe(1202);

    await connected(second);
    await vi.waitFor(async () => {
      await publishAll(client, ['20.5']);
      expect(site.store.readings().at(-1)).toMatchObject({ raw: 20.5, flags: 0 });
    }, soon);
  });

  it('at first a new session has no backlog: the first reading is of now', async () => {
    const subscriber = site.subscriber(mosquitto.port);
    await connected(subscriber);
    await publishAll(await site.publisher(mosquitto.port), ['20']);
    await vi.waitFor(() => expect(site.store.readings()).toMatchObject([{ flags: 0 }]), soon);
  });

  it('drops what mosquitto retained without a time, and takes what has one', async () => {
    const client = await site.publisher(mosquitto.port);
    const retain = { qos: 1, retain: true } as const;
    await client.publishAsync(sensorTopic, '20', retain);
    await client.publishAsync(sensorTopic.replace('rack-1', 'rack-2'), ownTimed(7), retain);
    const subscriber = site.subscriber(mosquitto.port);
    await connected(subscriber);
    await vi.waitFor(() => expect(site.store.intake.counts.dropped).toBe(1), soon);
    await vi.waitFor(() => expect(site.store.readings()).toHaveLength(1), soon);
    expect(site.store.readings()[0]).toMatchObject({
      sensor: 'rack-2',
      at: Date.UTC(2025, 0, 1) + 7000,
    });
  });

  it('messages that are no reading are kept and acknowledged once', async () => {
    const subscriber = site.subscriber(mosquitto.port);
    await connected(subscriber);
    await publishAll(await site.publisher(mosquitto.port), ['warm', '1e9', ownTimed(3)]);
    await vi.waitFor(() => expect(site.store.readings()).toHaveLength(1), soon);
    expect(site.store.refused().map(({ code }) => code)).toEqual([
      'payload-not-a-number',
      'value-out-of-range',
    ]);
  });

  it('closing acknowledges what is being committed: it does not come again', async () => {
    const subscriber = site.subscriber(mosquitto.port);
    await connected(subscriber);
    site.store.hold();
    await publishAll(await site.publisher(mosquitto.port), ['20']);
    await site.store.commitBegun(1);
    const closed = subscriber.close();
    site.store.release();
    await closed;
    const again = site.subscriber(mosquitto.port);
    await connected(again);
    await publishAll(await site.publisher(mosquitto.port), [ownTimed(1)]);
    await vi.waitFor(() => expect(site.store.readings()).toHaveLength(2), soon);
    expect(site.store.readings().map(({ raw }) => raw)).toEqual([20, 20]);
    expect(site.store.readings().map(({ flags }) => flags)).toEqual([0, 0]);
  });
});

describe('a broker that speaks MQTT 3.1.1 only', () => {
  it('is asked again in 3.1.1, and its readings are taken', async () => {
    const broker = await Aedes.createBroker();
    const sockets = new Set<Socket>();
    const server = createServer((socket) => {
      sockets.add(socket);
      broker.handle(socket);
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    site.onClose(async () => {
      await new Promise<void>((resolve) => broker.close(() => resolve()));
      for (const socket of sockets) socket.destroy();
      await new Promise((resolve) => server.close(resolve));
    });
    const address = server.address();
    const port = typeof address === 'object' && address ? address.port : 0;
    const subscriber = site.subscriber(port);
    await connected(subscriber);
    site.store.hold();
    const client = await site.publisher(port);
    await publishAll(client, [ownTimed(1), ownTimed(2)]);
    await site.store.commitBegun(1);
    site.store.release();
    await vi.waitFor(() => expect(site.store.readings()).toHaveLength(2), soon);
  });
});
