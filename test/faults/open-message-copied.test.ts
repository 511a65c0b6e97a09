import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { connect, type MqttClient, Store } from 'mqtt';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { databaseFile } from '../../daemon/store/open.ts';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { storedReadings } from './stored-readings.ts';

/*
 * The fault injected: the data folder is copied by hand while a QoS 2 message is open, and a second daemon
 * runs on the copy. Its node says the same under the same number: a new reading, which must not be taken for
 * the one that was open. At the original the node that comes back is still known.
 */
let folder: string;
let running: RunningDaemon[];
let nodes: MqttClient[];

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-copied-'));
  running = [];
  nodes = [];
});
afterEach(async () => {
  for (const node of nodes) node.end(true);
  for (const daemon of running) await daemon.kill();
  await rm(folder, { recursive: true, force: true });
});

async function daemonOn(data: string): Promise<RunningDaemon> {
  const daemon = await startDaemon(data);
  running.push(daemon);
  return daemon;
}

/** A node that numbers its first message 7. @param outgoing - what it has not been told to be complete */
function node({ mqtt }: RunningDaemon, outgoing: Store): MqttClient {
  const client = connect({
    ...{ host: '127.0.0.1', port: mqtt ?? 0, clientId: 'node 1', clean: false },
    ...{ reconnectPeriod: 0, outgoingStore: outgoing },
    messageIdProvider: {
      ...{ allocate: () => 7, getLastAllocated: () => 7, register: () => true },
      ...{ deallocate() {}, clear() {} },
    },
  });
  client.on('error', () => {});
  nodes.push(client);
  return client;
}
const topic = 'boardcure/shed/sensor/rack-1/air-temperature';
const keptStore = () => new Store({ clean: false });

const readings = (data: string) =>
  storedReadings(databaseFile(data)).readings.get('rack-1')?.length ?? 0;

function openOnDisk(data: string): number {
  const db = new BetterSqlite3(databaseFile(data), { readonly: true });
  const count = db.prepare<[], number>('select count(*) from open_message').pluck().get() ?? -1;
  db.close();
  return count;
}

it('a new message to a copy is stored, and the original knows what was open', async () => {
  const [data, copy] = [join(folder, 'data'), join(folder, 'copy')];
  const first = await daemonOn(data);
  const outgoing = keptStore();
  const before = node(first, outgoing);
  // The line is cut where the node has its answer and has not released the number yet.
  before.on('packetreceive', ({ cmd }) => {
    if (cmd === 'pubrec') before.stream.destroy();
  });
  before.publish(topic, '20', { qos: 2 });
  await new Promise<void>((cut) => before.once('close', () => cut()));
  await first.kill();
  expect([readings(data), openOnDisk(data)]).toEqual([1, 1]);
  await cp(data, copy, { recursive: true, preserveTimestamps: true });

  const second = await daemonOn(copy);
  await node(second, keptStore()).publishAsync(topic, '20', { qos: 2 });
  await second.kill();
  expect([readings(copy), openOnDisk(copy)]).toEqual([2, 0]);
  expect(second.err()).toContain('the database is a copy of another');

  const again = await daemonOn(data);
  expect(again.err()).not.toContain('a copy of another');
  const after = node(again, outgoing);
  const complete = new Promise<void>((told) => {
    after.on('packetreceive', ({ cmd }) => {
      if (cmd === 'pubcomp') told();
    });
  });
  await complete;
  await again.kill();
  expect([readings(data), openOnDisk(data)]).toEqual([1, 0]);
});
