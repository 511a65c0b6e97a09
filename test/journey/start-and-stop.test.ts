import BetterSqlite3 from 'better-sqlite3';
import { connectAsync } from 'mqtt';
import { describe, expect, it, vi } from 'vitest';
import { databaseFile } from '../../daemon/store/open.ts';
import { persistentNode } from '../faults/persistent-node.ts';
import { freePort } from '../ingest/mosquitto.ts';
import { freshSite } from './fresh-site.ts';
import { runCommand, startDaemon } from './running-daemon.ts';
import { siteApi } from './site-api.ts';

const site = freshSite();

describe('stopping and starting', () => {
  it('a daemon asked to stop ends in order and knows everything afterwards', async () => {
    const daemon = await site.daemon();
    const client = await connectAsync(`mqtt://127.0.0.1:${daemon.mqtt}`);
    await client.publishAsync('boardcure/shed/sensor/rack-1/air-temperature', '20', { qos: 1 });
    await client.endAsync(true);
    const figures = await fetch(`http://127.0.0.1:${daemon.http}/metrics`);
    expect(figures.headers.get('content-type')).toMatch(
      /^application\/openmetrics-text; version=1/,
    );
    expect(await figures.text()).toMatch(
      /\nboardcure_readings_total 1\n.*boardcure_commit_duration_seconds_count 1\n.*\n# EOF\n$/s,
    );
    expect(await daemon.stop()).toBe(0);
    const again = await site.daemon();
    expect((await siteApi(again.http).sensors()).map(({ id }) => id)).toEqual(['rack-1']);
    expect(await again.stop()).toBe(0);
  });

  it('also while nodes send: it ends with exit code 0, and all that it acknowledged is there', async () => {
    const mqtt = await freePort();
    const data = site.path('data');
    const first = await startDaemon(data, { mqtt });
    site.atEnd(() => first.kill());
    let at = Date.UTC(2025, 2, 1);
    const next = () => {
      at += 60_000;
      return { at, value: 18 };
    };
    const node = persistentNode(mqtt, 'rack-1', next, 50);
    await vi.waitFor(() => expect(node.acknowledged.size).toBeGreaterThan(500), {
      timeout: 20_000,
    });
    expect(await first.stop(), first.err()).toBe(0);
    const kept = node.acknowledged.size;
    const again = await startDaemon(data, { mqtt });
    site.atEnd(() => again.kill());
    await node.finish();
    expect(node.acknowledged.size).toBeGreaterThanOrEqual(kept);
    const db = new BetterSqlite3(databaseFile(data), { readonly: true });
    const rows = db.prepare<[], { at: number }>('select at from reading order by at').all();
    db.close();
    expect(rows.map((row) => row.at)).toEqual([...node.acknowledged.keys()].sort((a, b) => a - b));
  });

  it('a taken port is named with what to do, and the exit code is 1', async () => {
    const first = await site.daemon();
    const other = site.path('other');
    const asked = [
      { flags: ['--http', `127.0.0.1:${first.http}`, '--mqtt', '127.0.0.1:0'], port: first.http },
      { flags: ['--http', '127.0.0.1:0', '--mqtt', `127.0.0.1:${first.mqtt}`], port: first.mqtt },
    ];
    for (const { flags, port } of asked) {
      const second = runCommand(['--data', other, ...flags]);
      expect(await second.ended).toBe(1);
      expect(second.err()).toMatch(new RegExp(`Port ${port} .*is taken.*--(http|mqtt)`));
      expect(second.out).toEqual([]);
    }
  });
});
