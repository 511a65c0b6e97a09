import { connectAsync, type MqttClient } from 'mqtt';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import type { Discovery } from '../../daemon/contract/found-topic.ts';
import type { Place } from '../../daemon/contract/place.ts';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import type { TopicRule } from '../../daemon/contract/topic-rule.ts';
import { needs } from '../house/needs.ts';
import { type Mosquitto, startMosquitto } from '../ingest/mosquitto.ts';
import { temporaryFolder } from '../store/store-sides.ts';
import { type RunningDaemon, startDaemon } from './running-daemon.ts';

const soon = { timeout: 20_000, interval: 50 };

needs('mosquitto')('a sensor on topics of its own at another broker', () => {
  const { folder, remove } = temporaryFolder();
  let mosquitto: Mosquitto;
  let daemon: RunningDaemon;
  let device: MqttClient;

  const start = () => startDaemon(folder, { mqtt: `mqtt://127.0.0.1:${mosquitto.port}` });
  async function call<T>(method: string, path: string, body?: unknown): Promise<T> {
    const reply = await fetch(`http://127.0.0.1:${daemon.http}/api/v1/${path}`, {
      method,
      ...(body === undefined
        ? {}
        : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
    });
    const answer = await reply.json();
    if (!reply.ok) throw new Error(`${method} ${path}: ${JSON.stringify(answer)}`);
    return answer as T;
  }
  const send = (topic: string, payload: object) =>
    device.publishAsync(topic, JSON.stringify(payload), { qos: 1 });
  const latest = async () =>
    (await call<Sensor[]>('GET', 'sensors')).map(({ id, placeId, latest: [newest] }) => ({
      ...{ id, placeId, raw: newest?.raw, at: newest?.at },
    }));

  beforeAll(async () => {
    mosquitto = await startMosquitto();
    daemon = await start();
    device = await connectAsync(`mqtt://127.0.0.1:${mosquitto.port}`);
  });
  afterAll(async () => {
    await device?.endAsync();
    await daemon?.stop();
    await mosquitto?.remove();
    remove();
  });

  it('is found when the broker is listened to, and read from then on', async () => {
    const before = await call<Discovery>('GET', 'found-topics');
    expect(before.listening).toMatchObject({ always: false, until: null, trouble: null });
    const listening = await call<Discovery>('POST', 'found-topics/listen', { minutes: 1 });
    expect(listening.listening).toMatchObject({ until: expect.any(String), trouble: null });
    await send('farm/attic/up', { temp: 16.5, ts: new Date().toISOString() });
    const found = await vi.waitFor(async () => {
      const { topics } = await call<Discovery>('GET', 'found-topics');
      expect(topics).toHaveLength(1);
      return topics[0];
    }, soon);
    await call('POST', 'found-topics/listen', { minutes: 0 });
    const place = await call<Place>('POST', 'places', { name: 'North rack', kind: 'rack' });
    const rule = await call<TopicRule>('POST', 'topic-rules', {
      ...found?.suggestion,
      placeId: place.id,
    });
    expect(rule.time).toEqual({ from: '/ts', format: 'any' });
    const at = new Date().toISOString();
    await vi.waitFor(async () => {
      await send('farm/attic/up', { temp: 17.25, ts: at });
      expect(await latest()).toEqual([{ id: 'farm-attic', placeId: place.id, raw: 17.25, at }]);
    }, soon);
  });

  it('loses nothing that it sent while the daemon was away: the broker kept it for the rule', async () => {
    await daemon.kill();
    const at = new Date().toISOString();
    await send('farm/attic/up', { temp: 18.75, ts: at });
    daemon = await start();
    await vi.waitFor(async () => expect(await latest()).toMatchObject([{ raw: 18.75, at }]), soon);
  });
});
