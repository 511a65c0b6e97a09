import { connectAsync } from 'mqtt';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import { discovery } from '../../daemon/ingest/discovery.ts';
import type { Acknowledge } from '../../daemon/ingest/group-commit.ts';
import { createIntake } from '../../daemon/ingest/intake.ts';
import { listenToAll } from '../../daemon/ingest/listen-to-all.ts';
import type { TakeMessage } from '../../daemon/ingest/message-port.ts';
import { topicRules } from '../../daemon/ingest/topic-rules.ts';
import type { IncomingReading, RefusedMessage } from '../../daemon/rules/facts.ts';
import { ruleForm, type TopicRuleFact } from '../../daemon/rules/topic-rule-fact.ts';
import { needs } from '../house/needs.ts';
import { draft } from '../payload/rule-of.ts';
import { quiet } from './held-store.ts';
import { connected, listening, soon } from './listening.ts';
import { type Mosquitto, startMosquitto } from './mosquitto.ts';

const now = Date.UTC(2026, 4, 4, 8);
let lastRule = 0;
const fact = (given: Parameters<typeof draft>[0] = {}): TopicRuleFact => ({
  id: `rule-${++lastRule}`,
  order: lastRule,
  form: ruleForm(draft(given)),
  createdAt: now,
  changedAt: now,
});

/** An intake with rules before a store that writes when it is told to. */
function site(...facts: TopicRuleFact[]) {
  const waiting: {
    readings: readonly IncomingReading[];
    refused: readonly RefusedMessage[];
    done: Acknowledge;
  }[] = [];
  const filters: (readonly string[])[] = [];
  const rules = topicRules({
    site: 'shed',
    maxBytes: 65_536,
    listenTo: (some) => filters.push(some),
    unusable: (id) => filters.push([`unusable ${id}`]),
  });
  rules.replace(facts);
  const found = discovery({
    ...{ site: 'shed', rules, maxTopics: 10, maxBytes: 200, now: () => now, listener: null },
  });
  const intake = createIntake({
    site: 'shed',
    maxPayloadBytes: 65_536,
    now: () => now,
    clockTrusted: () => true,
    queue: { add: (readings, refused, done) => waiting.push({ readings, refused, done }) },
    otherTopics: { heard: found.note, decode: rules.decode },
  });
  return { rules, found, intake, waiting, filters };
}

describe('a reading by a rule', () => {
  const arrived = { retained: false, backlog: false };
  const send = (intake: { take: TakeMessage }, topic: string, payload: string, rest = {}) => {
    const told: (Error | null)[] = [];
    const message = { topic, payload: Buffer.from(payload), ...arrived, ...rest };
    intake.take(message, (failure) => told.push(failure));
    return told;
  };

  it('is acknowledged once it is on disk, and with what went wrong when it is not', () => {
    const { intake, waiting } = site(fact());
    const kept = send(intake, 'farm/attic/data', '{"temp":21.5}');
    const lost = send(intake, 'farm/attic/data', '{"temp":22.5}');
    expect(waiting.map(({ readings }) => readings[0])).toMatchObject([
      { sensor: 'attic', quantity: 'air-temperature', at: now, raw: 21.5, flags: 0 },
      { sensor: 'attic', at: now + 1, raw: 22.5 },
    ]);
    expect([kept, lost]).toEqual([[], []]);
    waiting[0]?.done(null);
    const failure = new Error('the disk is full');
    waiting[1]?.done(failure);
    expect([kept, lost]).toEqual([[null], [failure]]);
  });

  it('that the broker kept and that has no time of its own is not of now', () => {
    const { intake, waiting } = site(fact());
    expect(send(intake, 'farm/attic/data', '{"temp":21.5}', { retained: true })).toEqual([null]);
    expect(waiting).toEqual([]);
    expect(intake.counts.dropped).toBe(1);
  });

  it('whose age it tells itself is dated by that', () => {
    const { intake, waiting } = site(fact({ time: { from: '/ago', format: 'age-s' } }));
    send(intake, 'farm/attic/data', '{"temp":21.5,"ago":60}');
    expect(waiting[0]?.readings).toMatchObject([{ at: now - 60_000, flags: 0 }]);
  });

  it('that cannot be read is kept for inspection like any other', () => {
    const { intake, waiting } = site(fact());
    send(intake, 'farm/attic/data', '{"temp":"warm"}');
    expect(waiting[0]?.refused).toMatchObject([
      { topic: 'farm/attic/data', code: 'payload-not-a-number', payloadStart: '{"temp":"warm"}' },
    ]);
    expect(intake.counts.refused).toBe(1);
  });

  it('never stands in the way of the default layout', () => {
    const { intake, waiting, found } = site(fact({ pattern: '+/+/+/{sensor}/temp' }));
    send(intake, 'boardcure/shed/sensor/n1/air-temperature', '3');
    expect(waiting[0]?.readings).toMatchObject([{ sensor: 'n1', raw: 3 }]);
    expect(found.list().topics).toEqual([]);
  });

  it('is no longer one when its rule is gone: the topic is unknown, and acknowledged at once', () => {
    const { intake, waiting, rules, found, filters } = site(fact());
    rules.replace([]);
    expect(send(intake, 'farm/attic/data', '{"temp":21.5}')).toEqual([null]);
    expect(waiting).toEqual([]);
    expect(found.list().topics).toMatchObject([{ topic: 'farm/attic/data' }]);
    expect(filters).toEqual([['farm/+/data'], []]);
  });

  it('waits for the rules that can be used when one cannot', () => {
    const broken = { ...fact(), form: { ...ruleForm(draft()), pattern: '#' } };
    const { intake, waiting, filters } = site(broken, fact());
    expect(filters).toEqual([[`unusable ${broken.id}`], ['farm/+/data']]);
    send(intake, 'farm/attic/data', '{"temp":21.5}');
    expect(waiting).toHaveLength(1);
  });
});

describe('at the broker of our own', () => {
  it('a message by a rule is acknowledged to its sender only after it was written', async () => {
    const { intake, waiting } = site(fact());
    const broker = await startBroker({
      ...{ host: '127.0.0.1', port: 0, take: intake.take, log: quiet },
    });
    const device = await connectAsync(`mqtt://127.0.0.1:${broker.port}`);
    let acknowledged = false;
    const sent = device
      .publishAsync('farm/attic/data', '{"temp":21.5}', { qos: 1 })
      .then(() => (acknowledged = true));
    await vi.waitFor(() => expect(waiting).toHaveLength(1), soon);
    // A message that nobody keeps is answered meanwhile, so the line is not what is waited for.
    await device.publishAsync('farm/door', 'open', { qos: 0 });
    expect(acknowledged).toBe(false);
    waiting[0]?.done(null);
    await sent;
    await device.endAsync();
    await broker.close();
  });
});

needs('mosquitto')('at another broker', () => {
  let mosquitto: Mosquitto;
  let line: ReturnType<typeof listening>;
  beforeEach(async () => {
    line = listening();
    mosquitto = await startMosquitto();
    line.onClose(() => mosquitto.remove());
  });
  afterEach(() => line.close());

  it('the topics of rules are listened to, also of those that come and go meanwhile', async () => {
    const topics: string[] = [];
    const port = line.subscriber(mosquitto.port, {
      filters: ['farm/+/data'],
      take: ({ topic }, acknowledge) => {
        topics.push(topic);
        acknowledge(null);
      },
    });
    await connected(port);
    const device = await line.publisher(mosquitto.port);
    const send = (topic: string) => device.publishAsync(topic, '{"temp":1}', { qos: 1 });
    const heard = async (topic: string) => {
      await send(topic);
      await vi.waitFor(() => expect(topics).toContain(topic), soon);
    };
    await heard('farm/attic/data');
    port.listenTo(['yard/#']);
    await vi.waitFor(async () => {
      await send('yard/n1/up');
      expect(topics).toContain('yard/n1/up');
    }, soon);
    const before = topics.length;
    await send('farm/attic/data');
    await heard('yard/last');
    expect(topics.slice(before)).not.toContain('farm/attic/data');
    // The broker remembers a session: what was given up while it was away stays given up.
    await mosquitto.stop();
    await vi.waitFor(() => expect(port.connected()).toBe(false), soon);
    port.listenTo(['barn/+']);
    await mosquitto.start();
    await connected(port);
    const back = await line.publisher(mosquitto.port);
    const after = topics.length;
    await back.publishAsync('yard/n1/up', '1', { qos: 1 });
    await back.publishAsync('barn/n1', '1', { qos: 1 });
    await vi.waitFor(() => expect(topics).toContain('barn/n1'), soon);
    expect(topics.slice(after)).not.toContain('yard/n1/up');
  });

  it('everything is listened to on request, for a while, and not after', async () => {
    const heard: string[] = [];
    const listener = listenToAll({
      url: `mqtt://127.0.0.1:${mosquitto.port}`,
      now: Date.now,
      heard: (topic, payload, retained) =>
        heard.push(`${topic} ${new TextDecoder().decode(payload)}${retained ? ' kept' : ''}`),
      log: quiet,
    });
    line.onClose(listener.close);
    const device = await line.publisher(mosquitto.port);
    const send = (topic: string, retain = false) =>
      device.publishAsync(topic, '17.2', { qos: 1, retain });
    await send('farm/kept', true);
    await send('farm/before');
    const until = Date.now() + 60_000;
    await listener.listenUntil(until);
    expect(listener.state()).toEqual({ until, trouble: null });
    await send('farm/during');
    await vi.waitFor(
      () => expect(heard).toEqual(['farm/kept 17.2 kept', 'farm/during 17.2']),
      soon,
    );
    await listener.listenUntil(null);
    expect(listener.state()).toEqual({ until: null, trouble: null });
    await send('farm/after');
    expect(heard).toHaveLength(2);
  });

  it('says why listening does not work', async () => {
    const port = mosquitto.port;
    await mosquitto.stop();
    const listener = listenToAll({
      url: `mqtt://127.0.0.1:${port}`,
      now: Date.now,
      heard: () => {},
      log: quiet,
    });
    await listener.listenUntil(Date.now() + 60_000);
    expect(listener.state()).toMatchObject({ until: null });
    expect(listener.state().trouble?.text).toMatch(/^The broker /);
  });
});
