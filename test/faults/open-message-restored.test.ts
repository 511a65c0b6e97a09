import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import type { IPublishPacket } from 'mqtt-packet';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { databaseFile } from '../../daemon/store/open.ts';
import { finished } from '../command/backup-site.ts';
import { wireClient } from '../ingest/wire-client.ts';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { storedReadings } from './stored-readings.ts';

/*
 * The fault injected: a backup from while a QoS 2 message was open is put back once its sender has released
 * the number and given it to a new message that says the same. MQTT 3.1.1 (2014), section 4.3.3: a number
 * that was released is free for another message.
 */
let folder: string;
let data: string;
let daemon: RunningDaemon;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-restored-'));
  data = join(folder, 'data');
  daemon = await startDaemon(data);
});
afterEach(async () => {
  await daemon.kill();
  await rm(folder, { recursive: true, force: true });
});

const node = () => wireClient(daemon.mqtt ?? 0, { clientId: 'node 1', clean: false });
const publish: IPublishPacket = {
  ...{ cmd: 'publish', topic: 'boardcure/shed/sensor/rack-1/air-temperature', payload: '20' },
  ...{ qos: 2, messageId: 7, retain: false, dup: false },
};

/** Asked of the file as it lies there. */
function count(file: string, table: 'open_message' | 'reading'): number {
  const db = new BetterSqlite3(file, { readonly: true });
  try {
    return db.prepare<[], number>(`select count(*) from ${table}`).pluck().get() ?? -1;
  } finally {
    db.close();
  }
}

/** As programs before this one copied: with every row. */
function copiedWhole(target: string): void {
  const db = new BetterSqlite3(databaseFile(data), { readonly: true });
  db.prepare('vacuum into ?').run(target);
  db.close();
}

it('a new message with the number of one that was open in the backup is a new reading', async () => {
  const before = await node();
  before.send(publish);
  await before.hear('pubrec');
  const backup = join(folder, 'backup.sqlite');
  expect(await finished('backup', backup, '--data', data)).toMatchObject({ code: 0 });
  const older = join(folder, 'older.sqlite');
  copiedWhole(older);
  expect([count(older, 'open_message'), count(backup, 'open_message')]).toEqual([1, 0]);
  expect(count(backup, 'reading')).toBe(1);
  // The daemon itself still knows it: its sender may send it again.
  expect(count(databaseFile(data), 'open_message')).toBe(1);
  before.send({ cmd: 'pubrel', messageId: 7 });
  await before.hear('pubcomp');

  for (const from of [older, backup]) {
    expect(await daemon.stop()).toBe(0);
    const restored = await finished('restore', from, '--data', data, '--replace');
    expect(restored, from).toMatchObject({ code: 0 });
    daemon = await startDaemon(data);
    const after = await node();
    after.send(publish);
    await after.hear('pubrec');
    after.close();
    await daemon.kill();
    expect(storedReadings(databaseFile(data)).readings.get('rack-1'), from).toHaveLength(2);
    daemon = await startDaemon(data);
  }
});
