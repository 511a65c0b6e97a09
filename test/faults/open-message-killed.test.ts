import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { IPublishPacket } from 'mqtt-packet';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseFile, openForReading } from '../../daemon/store/open.ts';
import { wireClient } from '../ingest/wire-client.ts';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { storedReadings } from './stored-readings.ts';

/*
 * The fault injected: the daemon is killed (SIGKILL) between the PUBREC and the PUBREL of a QoS 2 message
 * without a time of its own. MQTT 3.1.1 (2014), section 4.3.3: the receiver must not have it again, and
 * 4.4: its sender sends it, or its release, again.
 */
let folder: string;
let daemon: RunningDaemon;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-open-'));
  daemon = await startDaemon(folder);
});
afterEach(async () => {
  await daemon.kill();
  await rm(folder, { recursive: true, force: true });
});

const node = () => wireClient(daemon.mqtt ?? 0, { clientId: 'node 1', clean: false });
const publish = (messageId: number, dup = false): IPublishPacket => ({
  ...{ cmd: 'publish', topic: 'boardcure/shed/sensor/rack-1/air-temperature', payload: '20' },
  ...{ qos: 2, messageId, retain: false, dup },
});
const pubrel = (messageId: number) => ({ cmd: 'pubrel', messageId }) as const;

async function killAndStart(): Promise<void> {
  await daemon.kill();
  daemon = await startDaemon(folder);
}

async function stored(): Promise<number> {
  await daemon.kill();
  return storedReadings(databaseFile(folder)).readings.get('rack-1')?.length ?? 0;
}

const openOnDisk = () => {
  const db = openForReading(databaseFile(folder));
  const count = db.prepare<[], number>('select count(*) from open_message').pluck().get();
  db.close();
  return count;
};

describe('a QoS 2 message that was answered and not released when the daemon was killed', () => {
  it('is stored once, though it is sent again, and its number is free once it is released', async () => {
    const before = await node();
    before.send(publish(7));
    await before.hear('pubrec');
    await killAndStart();
    const after = await node();
    after.send(publish(7, true));
    await after.hear('pubrec');
    after.send(pubrel(7));
    await after.hear('pubcomp');
    // What was said to be complete is so: also after another kill the same figure is a new reading.
    await killAndStart();
    const last = await node();
    last.send(publish(7));
    await last.hear('pubrec');
    expect(await stored()).toBe(2);
  });

  it('is complete when only its release is sent again', async () => {
    const before = await node();
    before.send(publish(9));
    await before.hear('pubrec');
    expect(openOnDisk()).toBe(1);
    await killAndStart();
    const after = await node();
    after.send(pubrel(9));
    await after.hear('pubcomp');
    expect(openOnDisk()).toBe(0);
    expect(await stored()).toBe(1);
  });
});
