import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connectAsync } from 'mqtt';
import { afterEach, describe, expect, it } from 'vitest';
import { type RunningDaemon, runCommand, startDaemon } from './running-daemon.ts';

const hourMs = 3_600_000;
let folder = '';
let daemon: RunningDaemon | null = null;
afterEach(async () => {
  await daemon?.stop();
  daemon = null;
  rmSync(folder, { recursive: true, force: true });
});

describe('a weather forecast for outdoors', () => {
  it('sent from a CSV file moves the times of a wall, and one that cannot be read moves nothing', async () => {
    folder = mkdtempSync(join(tmpdir(), 'boardcure-forecast-'));
    daemon = await startDaemon(join(folder, 'data'));
    const { http, mqtt } = daemon;
    const base = `http://127.0.0.1:${http}/api/v1`;
    const call = async (method: string, path: string, body?: object) => {
      const reply = await fetch(`${base}${path}`, {
        method,
        ...(body
          ? { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }
          : {}),
      });
      expect(reply.ok, await reply.clone().text()).toBe(true);
      return reply.json();
    };

    const url = `mqtt://127.0.0.1:${mqtt}`;
    const client = await connectAsync(url);
    const now = Date.now();
    const topic = 'boardcure/shed/sensor/yard/air-temperature';
    await Promise.all(
      Array.from({ length: 5 * 24 + 1 }, (_, i) => {
        const time = now - i * hourMs;
        const value = 12 + 4 * Math.sin((time / hourMs / 24) * 2 * Math.PI);
        return client.publishAsync(topic, JSON.stringify({ value, time }), { qos: 1 });
      }),
    );
    const yard = await call('POST', '/places', { name: 'Yard', kind: 'outdoors' });
    const wall = await call('POST', '/places', { name: 'Wall', kind: 'wall', within: yard.id });
    await call('PATCH', '/sensors/yard', { placeId: yard.id });
    const batch = await call('POST', '/batches', {
      name: 'South',
      placeId: wall.id,
      species: 'scots-pine',
      surface: 'planed',
      boards: { count: 10, lengthMm: 3000, widthMm: 120, thicknessMm: 20 },
    });
    await call('POST', `/batches/${batch.id}/coats`, {
      coat: 0,
      finishedAt: new Date(now - hourMs).toISOString(),
    });
    const likely = async () =>
      Date.parse((await call('GET', `/batches/${batch.id}`)).coats[0].gates.recoat.likely);
    const without = await likely();

    const file = join(folder, 'hours.csv');
    const hours = Array.from({ length: 240 }, (_, i) => new Date(now + i * hourMs).toISOString());
    writeFileSync(file, ['time,tempC', ...hours.map((time) => `${time},24`)].join('\n'));
    const sent = runCommand(['forecast', file, '--mqtt', url]);
    expect(await sent.ended, sent.err()).toBe(0);
    expect(JSON.parse(sent.out[0] ?? '')).toEqual({ event: 'forecast-sent', points: 240 });
    const warm = await likely();
    expect(warm).toBeLessThan(without - 12 * hourMs);

    await client.publishAsync('boardcure/shed/forecast/outdoors', '[{"time":"soon"}]', { qos: 1 });
    expect(await likely()).toBe(warm);
    const refused = await call('GET', '/refused');
    expect(refused[0]).toMatchObject({ code: 'time-not-understood' });
    await client.endAsync();

    // It outlives a restart.
    await daemon.stop();
    daemon = await startDaemon(join(folder, 'data'), { http, mqtt: mqtt ?? 0 });
    expect(Math.abs((await likely()) - warm)).toBeLessThan(hourMs);
  });

  it('that is no table of times and numbers is not sent, and says why', async () => {
    folder = mkdtempSync(join(tmpdir(), 'boardcure-forecast-'));
    const file = join(folder, 'hours.csv');
    writeFileSync(file, 'time,tempC\n2026-05-04T07:00:00Z,warm\n');
    const sent = runCommand(['forecast', file]);
    expect(await sent.ended).toBe(1);
    expect(sent.err()).toMatch(/Point 1 has no time or no number/);
  });
});
