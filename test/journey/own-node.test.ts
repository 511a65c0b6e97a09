import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Sensor } from '../../daemon/contract/sensor.ts';
import { needs } from '../house/needs.ts';
import { temporaryFolder } from '../store/store-sides.ts';
import { type RunningDaemon, startDaemon } from './running-daemon.ts';

const page = readFileSync(new URL('../../deploy/own-sensor-node.md', import.meta.url), 'utf8');
const [, script = ''] = /```sh\n(#!\/bin\/sh\n.*?)```/s.exec(page) ?? [];

needs('mosquitto')('the shell example of the page for own nodes', () => {
  const { folder, remove } = temporaryFolder();
  let daemon: RunningDaemon;
  beforeAll(async () => {
    daemon = await startDaemon(folder);
  });
  afterAll(async () => {
    await daemon?.stop();
    remove();
  });

  it('brings its readings to a real daemon, acknowledged when it ends', async () => {
    expect(script).toContain('mosquitto_pub');
    const began = Math.floor(Date.now() / 1000) * 1000;
    await promisify(execFile)('/bin/sh', ['-c', script], {
      env: { ...process.env, BOARDCURE_HOST: '127.0.0.1', BOARDCURE_PORT: String(daemon.mqtt) },
    });
    const reply = await fetch(`http://127.0.0.1:${daemon.http}/api/v1/sensors`);
    const [sensor] = (await reply.json()) as Sensor[];
    expect(sensor).toMatchObject({
      id: 'shell-node',
      latest: [
        { quantity: 'air-temperature', raw: 18.4 },
        { quantity: 'relative-humidity', raw: 61 },
      ],
    });
    const at = Date.parse(sensor?.latest[0]?.at ?? '');
    // The time that the script gave itself, in whole seconds.
    expect(at % 1000).toBe(0);
    expect(at).toBeGreaterThanOrEqual(began);
  });
});
