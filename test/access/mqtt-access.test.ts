import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import type { MessagePort } from '../../daemon/ingest/message-port.ts';
import { heldStore, quiet } from '../ingest/held-store.ts';
import { type WireClient, wireClient } from '../ingest/wire-client.ts';
import { openAccess } from './open-access.ts';

const soon = { timeout: 5000, interval: 10 };
const topicOf = (sensor: string) => `boardcure/shed/sensor/${sensor}/air-temperature`;

let store: ReturnType<typeof heldStore>;
let opened: ReturnType<typeof openAccess>;
let broker: MessagePort;
let wires: WireClient[];

beforeEach(async () => {
  store = heldStore();
  opened = openAccess();
  wires = [];
  broker = await startBroker({
    host: '127.0.0.1',
    port: 0,
    access: opened.mqttAccess,
    take: store.take,
    log: quiet,
  });
});
afterEach(async () => {
  for (const wire of wires) wire.close();
  await broker.close();
});

const heardNow = (...ids: string[]) =>
  ids.map((id) => ({ id, name: null, latestAt: opened.time.ms }));
const state = (...ids: string[]) => opened.mqttAccess.state(heardNow(...ids));
const pairings = (...ids: string[]) =>
  Object.fromEntries(state(...ids).sensors.map(({ id, pairing }) => [id, pairing]));
const setMode = (mode: 'open' | 'pairing' | 'closed', ids: string[], silence: string[] = []) =>
  opened.mqttAccess.setMode(mode, heardNow(...ids), { silence, silenceListeners: false });

async function connect(login?: { name: string; password: string }): Promise<WireClient> {
  const client = await wireClient(
    broker.port ?? 0,
    login ? { username: login.name, password: login.password } : {},
  );
  wires.push(client);
  return client;
}

/** The code of CONNACK: 0 accepted, 4 wrong name or password, 5 not authorised. MQTT 3.1.1, 3.2.2.3. */
async function connackOf(login?: { name: string; password: string }): Promise<number> {
  const client = await connect(login);
  const packet = (await client.hear('connack')) as { returnCode?: number };
  return packet.returnCode ?? -1;
}

/** What becomes of a reading: acknowledged and kept, or the end of the connection. */
async function publish(client: WireClient, sensor: string, messageId = 1): Promise<string> {
  client.send({
    cmd: 'publish',
    topic: topicOf(sensor),
    payload: `${20 + messageId}`,
    qos: 1,
    messageId,
    retain: false,
    dup: false,
  });
  return Promise.race([
    client
      .hear('puback', (packet) => packet.messageId === messageId)
      .then(
        () => 'acknowledged',
        () => 'ended',
      ),
    client.closed.then(() => 'ended'),
  ]);
}

async function subscribe(client: WireClient, topic: string, messageId = 50): Promise<number> {
  client.send({ cmd: 'subscribe', messageId, subscriptions: [{ topic, qos: 0 }] });
  const packet = (await client.hear('suback', (one) => one.messageId === messageId)) as {
    granted: number[];
  };
  return packet.granted[0] ?? -1;
}

describe('an open broker', () => {
  it('takes readings from anyone, also under an unknown name and a wrong password', async () => {
    const login = await opened.mqttAccess.make('rack-1', 'node', ['rack-1']);
    expect(await publish(await connect(), 'rack-1')).toBe('acknowledged');
    expect(await publish(await connect({ name: 'x', password: 'y' }), 'rack-1')).toBe(
      'acknowledged',
    );
    expect(await publish(await connect({ ...login, password: 'y' }), 'rack-1')).toBe(
      'acknowledged',
    );
    expect(state('rack-1').wrongPasswords).toMatchObject([{ name: 'rack-1' }]);
  });
});

describe('the way to a closed broker', () => {
  it('tells how far each sensor is, and silences none unasked', async () => {
    const all = ['rack-1', 'rack-2', 'rack-3'];
    const [first, second, third] = [await connect(), await connect(), await connect()];
    for (const [index, sensor] of all.entries()) {
      await publish([first, second, third][index] as WireClient, sensor);
    }
    await setMode('pairing', all);
    const one = await opened.mqttAccess.make('rack-1', 'node', ['rack-1']);
    await opened.mqttAccess.make('rack-2', 'node', ['rack-2']);
    opened.time.ms += 1000;
    await publish(await connect(one), 'rack-1');
    expect(pairings(...all)).toEqual({
      'rack-1': 'paired',
      'rack-2': 'waiting',
      'rack-3': 'unpaired',
    });

    await expect(setMode('closed', all)).rejects.toThrow(/no longer be heard: rack-2, rack-3/);
    await expect(setMode('closed', all, ['rack-2'])).rejects.toThrow(/no longer be heard: rack-3/);
    expect(state().mode).toBe('pairing');
    // Nobody was sent away by being asked.
    expect(await publish(third, 'rack-3', 2)).toBe('acknowledged');

    await setMode('closed', all, ['rack-2', 'rack-3']);
    await third.closed;
  });

  it('sees a sensor that still publishes without its name beside its name', async () => {
    const login = await opened.mqttAccess.make('rack-1', 'node', ['rack-1']);
    await publish(await connect(login), 'rack-1');
    opened.time.ms += 1000;
    await publish(await connect(), 'rack-1');
    expect(pairings('rack-1')).toEqual({ 'rack-1': 'mixed' });
    await expect(setMode('closed', ['rack-1'])).rejects.toThrow(/rack-1/);
  });

  it('sees a node that publishes as a sensor that it was not given, before that matters', async () => {
    const login = await opened.mqttAccess.make('rack-1', 'node', ['rack-1']);
    expect(await publish(await connect(login), 'rack-2')).toBe('acknowledged');
    expect(state().strays).toMatchObject([{ name: 'rack-1', topic: topicOf('rack-2') }]);
    await expect(setMode('closed', ['rack-2'])).rejects.toThrow(/rack-2/);
    await opened.mqttAccess.assign('rack-1', ['rack-1', 'rack-2']);
    opened.time.ms += 1000;
    await publish(await connect(login), 'rack-2');
    await setMode('closed', ['rack-2']);
  });

  it('asks about listeners without a name as well', async () => {
    const listener = await connect();
    expect(await subscribe(listener, 'boardcure/shed/#')).toBe(0);
    await expect(setMode('closed', [])).rejects.toThrow(/listeners would hear nothing more/);
    await opened.mqttAccess.setMode('closed', [], { silence: [], silenceListeners: true });
    await listener.closed;
  });

  it('remembers over a restart who was paired', async () => {
    const login = await opened.mqttAccess.make('rack-1', 'node', ['rack-1']);
    await publish(await connect(login), 'rack-1');
    const again = openAccess({ data: opened.data });
    const sensors = [{ id: 'rack-1', name: null, latestAt: again.time.ms }];
    expect(again.mqttAccess.state(sensors).sensors).toMatchObject([{ pairing: 'paired' }]);
  });
});

describe('a closed broker', () => {
  let node: { name: string; password: string };
  beforeEach(async () => {
    node = await opened.mqttAccess.make('rack-1', 'node', ['rack-1', 'rack-1b']);
    await opened.mqttAccess.setMode('closed', [], { silence: [], silenceListeners: false });
  });

  it('lets in only who has a name and its password', async () => {
    expect(await connackOf()).toBe(5);
    expect(await connackOf({ name: 'rack-2', password: node.password })).toBe(4);
    expect(await connackOf({ ...node, password: `${node.password}x` })).toBe(4);
    expect(await connackOf(node)).toBe(0);
    expect(broker.traffic()?.refused).toBe(3);
  });

  it('keeps a node to its own sensors: a forged reading is not taken and ends the connection', async () => {
    const wire = await connect(node);
    expect(await publish(wire, 'rack-1', 1)).toBe('acknowledged');
    expect(await publish(wire, 'rack-1b', 2)).toBe('acknowledged');
    expect(await publish(wire, 'rack-2', 3)).toBe('ended');
    expect(store.readings().map(({ sensor }) => sensor)).toEqual(['rack-1', 'rack-1b']);
  });

  it('keeps its will to its own sensors as well', async () => {
    const wire = await wireClient(broker.port ?? 0, {
      username: node.name,
      password: node.password,
      will: { topic: topicOf('rack-2'), payload: Buffer.from('99'), qos: 1, retain: false },
    });
    wire.close();
    await vi.waitFor(() => expect(broker.traffic()?.notAllowed).toBe(1), soon);
    expect(store.readings()).toEqual([]);
  });

  it('lets go what is for nobody here, without ending the connection', async () => {
    const wire = await connect(node);
    wire.send({
      cmd: 'publish',
      topic: 'some/diagnostics',
      payload: 'x',
      qos: 1,
      messageId: 7,
      retain: true,
      dup: false,
    });
    await wire.hear('puback', (packet) => packet.messageId === 7);
    expect(await publish(wire, 'rack-1', 8)).toBe('acknowledged');
  });

  it('tells a node only whether the daemon is there', async () => {
    const wire = await connect(node);
    const granted = [
      ['boardcure/shed/status', 0],
      ['#', 128],
      ['boardcure/shed/batch/+', 128],
      [topicOf('rack-2'), 128],
      ['boardcure/+/status', 128],
    ] as const;
    for (const [index, [filter, code]] of granted.entries()) {
      expect(await subscribe(wire, filter, 60 + index), filter).toBe(code);
    }
  });

  it('lets a listener hear what the daemon says, and publish nothing', async () => {
    const login = await opened.mqttAccess.make('display', 'listener', []);
    const wire = await connect(login);
    expect(await subscribe(wire, 'boardcure/shed/batch/#', 60)).toBe(0);
    expect(await subscribe(wire, 'boardcure/shed/sensor/#', 61)).toBe(128);
    expect(await publish(wire, 'rack-1')).toBe('ended');
  });

  it('sends a node away whose name is taken back', async () => {
    const wire = await connect(node);
    await opened.mqttAccess.remove('rack-1');
    await wire.closed;
    expect(await connackOf(node)).toBe(4);
  });

  it('does not keep a node out whose neighbour guesses at its password', async () => {
    for (let i = 0; i < 8; i++) await connackOf({ ...node, password: `guess-${i}` });
    // From the same address as the guesses: only what was never right before waits now.
    opened.time.ms += 31_000 * 2 ** 4;
    expect(await connackOf(node)).toBe(0);
    for (let i = 0; i < 8; i++) await connackOf({ ...node, password: `guess-${i}` });
    expect(await connackOf(node)).toBe(0);
  });

  it('keeps passwords out of its file', () => {
    expect(JSON.stringify(opened.file.read())).not.toContain(node.password);
  });
});
