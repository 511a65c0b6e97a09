import { connectAsync, type MqttClient } from 'mqtt';
import { describe, expect, it, onTestFinished, vi } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import type { MessagePort } from '../../daemon/ingest/message-port.ts';
import { startSubscriber } from '../../daemon/ingest/subscriber.ts';
import { mqttChannel } from '../../daemon/notify/mqtt-notices.ts';
import { quiet } from '../ingest/held-store.ts';
import { connected, soon } from '../ingest/listening.ts';
import { minuteMs, morning, noticeAt, postOffice } from './post-office.ts';

const plan = {
  channels: [{ name: 'mqtt' as const, heedsQuiet: false }],
  quiet: null,
  timeZone: 'UTC',
};

async function broker(port = 0): Promise<MessagePort> {
  const started = await startBroker({
    ...{ host: '127.0.0.1', port, log: quiet },
    take: (_message, acknowledge) => acknowledge(null),
  });
  onTestFinished(() => started.close());
  return started;
}

/** Somebody who listens at the broker, and what he heard. */
async function listener(port: number) {
  const client: MqttClient = await connectAsync(`mqtt://127.0.0.1:${port}`);
  onTestFinished(() => client.endAsync(true));
  await client.subscribeAsync(['boardcure/shed/notice', 'boardcure/shed/digest'], { qos: 1 });
  const heard: { topic: string; qos: number; retain: boolean; json: Record<string, unknown> }[] =
    [];
  client.on('message', (topic, payload, { qos, retain }) => {
    heard.push({ topic, qos, retain, json: JSON.parse(payload.toString()) });
  });
  return heard;
}

describe('a notice by MQTT', () => {
  it('goes to whoever listens at our own broker, once, and is not kept', async () => {
    const own = await broker();
    const heard = await listener(own.port ?? 0);
    const office = postOffice(plan, () => [mqttChannel({ site: 'shed', deliver: own.deliver })]);
    const notice = noticeAt(morning);
    await office.raise(notice);
    await office.office.out.kick();
    await office.office.out.kick();
    await vi.waitFor(() => expect(heard).toHaveLength(1), soon);
    expect(heard[0]).toMatchObject({
      ...{ topic: 'boardcure/shed/notice', qos: 1, retain: false },
      json: { schema: 1, noticeId: notice.id, kind: 'place-silent', event: 'raised' },
    });
    expect(await listener(own.port ?? 0)).toEqual([]);
  });

  it('waits for another broker that is away, and is told once it has it', async () => {
    const other = await broker();
    const port = other.port ?? 0;
    const session = startSubscriber({
      ...{ url: `mqtt://127.0.0.1:${port}`, clientId: 'boardcure-test', site: 'shed' },
      ...{ take: () => {}, filters: [], log: quiet },
    });
    onTestFinished(() => session.close());
    await connected(session);
    await other.close();
    await vi.waitFor(() => expect(session.connected()).toBe(false), soon);

    const office = postOffice(plan, () => [
      mqttChannel({ site: 'shed', deliver: session.deliver }),
    ]);
    await office.raise(noticeAt(morning));
    await office.office.out.kick();
    expect(office.tally('mqtt')).toMatchObject({ waiting: 1, sentAt: null });
    expect(office.tally('mqtt')?.lastError).toMatch(/no connection to the MQTT broker/);

    await broker(port);
    const heard = await listener(port);
    await connected(session);
    office.now += minuteMs;
    await office.office.out.kick();
    await vi.waitFor(() => expect(heard).toHaveLength(1), soon);
    expect(office.tally('mqtt')).toMatchObject({ waiting: 0, sentAt: office.now });
  });

  it('is a digest on a topic of its own', async () => {
    const own = await broker();
    const heard = await listener(own.port ?? 0);
    const office = postOffice(plan, () => [mqttChannel({ site: 'shed', deliver: own.deliver })]);
    const digest = {
      ...{ id: 'digest-2026-05-20.mqtt', channel: 'mqtt' as const },
      ...{ createdAt: morning, dueAt: morning },
      body: { kind: 'digest' as const, title: 'Morning', text: 'To brush' },
    };
    await office.office.write.addMessages([digest]);
    await office.office.out.kick();
    // A second start on the same morning brings no second digest.
    await office.office.write.addMessages([digest]);
    await office.restart();
    await office.office.out.kick();
    await vi.waitFor(() => expect(heard).toHaveLength(1), soon);
    expect(heard[0]).toMatchObject({ topic: 'boardcure/shed/digest', json: { text: 'To brush' } });
    expect(office.tally('mqtt')).toMatchObject({ waiting: 0 });
  });
});
