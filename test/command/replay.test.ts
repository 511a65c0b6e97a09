import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer, type Server, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Aedes } from 'aedes';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { CommandIo } from '../../daemon/command/command-io.ts';
import { replay } from '../../daemon/command/replay.ts';

interface Arrived {
  topic: string;
  value: number;
  time: string;
  qos: number;
}

interface Summary {
  event: string;
  rows: number;
  published: number;
  acknowledged: number;
  skipped: number;
  missing: number;
  seconds: number;
}

let folder: string;
let broker: Aedes;
let server: Server;
let port: number;
let arrived: Arrived[];
let sockets: Set<Socket>;
let onArrival: (count: number) => void;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-replay-'));
  arrived = [];
  sockets = new Set();
  onArrival = () => {};
  broker = await Aedes.createBroker();
  broker.on('publish', (packet, client) => {
    if (client === null) return;
    const { value, time } = JSON.parse(packet.payload.toString());
    arrived.push({ topic: packet.topic, value, time, qos: packet.qos });
    onArrival(arrived.length);
  });
  server = createServer((socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
    broker.handle(socket);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  port = typeof address === 'object' && address !== null ? address.port : 0;
});

afterEach(async () => {
  await new Promise<void>((resolve) => broker.close(() => resolve()));
  for (const socket of sockets) socket.destroy();
  await new Promise<void>((resolve) => server.close(() => resolve()));
  await rm(folder, { recursive: true });
});

async function run(text: string | null, args: string[] = [], stop = new AbortController()) {
  const out: string[] = [];
  const err: string[] = [];
  const io: CommandIo = {
    stdout: (line) => out.push(line),
    stderr: (line) => err.push(line),
    env: {},
    cwd: folder,
    stop: stop.signal,
  };
  if (text !== null) await writeFile(join(folder, 'a.csv'), text);
  const code = await replay(['a.csv', '--mqtt', `127.0.0.1:${port}`, ...args], io);
  const [line] = out;
  return { code, err: err.join('\n'), summary: line ? (JSON.parse(line) as Summary) : null };
}

function wideTable(rows: number): string {
  const lines = ['time,t,rh'];
  for (let row = 0; row < rows; row++) {
    const time = new Date(Date.UTC(2024, 0, 1) + row * 60_000).toISOString();
    lines.push(`${time},${(20 + (row % 50) / 10).toFixed(1)},${40 + (row % 30)}`);
  }
  return lines.join('\n');
}

const MAP = ['--map', 't=office/air-temperature', '--map', 'rh=office/relative-humidity'];

describe('replaying a recording over a real connection', () => {
  it('delivers every reading once, at QoS 1, in order, with its own time', async () => {
    const { code, summary, err } = await run(wideTable(1500), MAP);
    expect(code).toBe(0);
    expect(err).not.toContain('lost');
    expect(summary).toMatchObject({
      event: 'replayed',
      rows: 1500,
      published: 3000,
      acknowledged: 3000,
      skipped: 0,
    });
    expect(arrived).toHaveLength(3000);
    expect(arrived.every(({ qos }) => qos === 1)).toBe(true);
    const temperatures = arrived.filter(({ topic }) => topic.endsWith('air-temperature'));
    expect(temperatures.map(({ value }) => value)).toEqual(
      Array.from({ length: 1500 }, (_, row) => Number((20 + (row % 50) / 10).toFixed(1))),
    );
    expect(temperatures[1]).toEqual({
      topic: 'boardcure/shed/sensor/office/air-temperature',
      value: 20.1,
      time: '2024-01-01T00:01:00.000Z',
      qos: 1,
    });
  });

  it('sends to the site that was asked for', async () => {
    await run('time,sensor,quantity,value\n2024-01-01T00:00Z,a,battery,90\n', ['--site', 'barn']);
    expect(arrived.map(({ topic }) => topic)).toEqual(['boardcure/barn/sensor/a/battery']);
  });

  it('counts faulty rows, names the first few with their line, and sends the rest', async () => {
    const bad = Array.from({ length: 7 }, () => '2024-01-01T00:02Z,a,air-temperature,warm');
    const { code, summary, err } = await run(
      [
        'time,sensor,quantity,value',
        '2024-01-01T00:00Z,a,air-temperature,20',
        '',
        'never,a,air-temperature,20',
        '2024-01-01T00:01Z,a,air-temperature,',
        ...bad,
        '2024-01-01T00:03Z,a,air-temperature,21',
      ].join('\r\n'),
    );
    expect(code).toBe(0);
    expect(summary).toMatchObject({
      rows: 11,
      published: 2,
      acknowledged: 2,
      skipped: 8,
      missing: 1,
    });
    expect(err).toContain('Line 4: "never"');
    expect(err).toContain('Line 6: the value is "warm"');
    expect(err).not.toContain('Line 11');
    expect(err).toContain('3 more faulty rows');
    expect(arrived.map(({ value }) => value)).toEqual([20, 21]);
  });

  it('survives a quotation mark that is out of place', async () => {
    const { code, summary, err } = await run(
      'time,sensor,quantity,value\n2024-01-01T00:00Z,a,air-temperature,20\n2024-01-01T00:01Z,"a"b,air-temperature,20\n2024-01-01T00:02Z,a,air-temperature,22\n',
    );
    expect(code).toBe(0);
    expect(summary).toMatchObject({ rows: 3, published: 2, acknowledged: 2, skipped: 1 });
    expect(err).toContain('Line 3');
  });

  it('says from which line a quotation mark swallows the rest', async () => {
    const { summary, err } = await run(
      'time,sensor,quantity,value\n2024-01-01T00:00Z,a,air-temperature,20\n2024-01-01T00:01Z,"a,air-temperature,20\n2024-01-01T00:02Z,a,air-temperature,22\n',
    );
    expect(summary).toMatchObject({ rows: 2, published: 1, skipped: 1 });
    expect(err).toMatch(/Line 3: .*never closed/);
  });

  it('reads semicolons, decimal commas and a byte-order mark', async () => {
    await run('\uFEFFtimestamp;t;rh\n1704067200;21,5;50\n1704067260000;21,7;51\n', MAP);
    expect(arrived.map(({ value, time }) => [value, time])).toEqual([
      [21.5, '2024-01-01T00:00:00.000Z'],
      [50, '2024-01-01T00:00:00.000Z'],
      [21.7, '2024-01-01T00:01:00.000Z'],
      [51, '2024-01-01T00:01:00.000Z'],
    ]);
  });

  it('goes on after the connection was cut, and loses nothing', async () => {
    onArrival = (count) => {
      if (count === 700) for (const socket of sockets) socket.destroy();
    };
    const { code, summary, err } = await run(wideTable(1000), MAP);
    expect(code).toBe(0);
    expect(summary).toMatchObject({ published: 2000, acknowledged: 2000 });
    expect(err).toContain('lost');
    const distinct = new Set(arrived.map(({ topic, time }) => `${topic} ${time}`));
    expect(distinct.size).toBe(2000);
  });

  it('stops when asked, with a summary and exit code 1', async () => {
    const stop = new AbortController();
    onArrival = (count) => {
      if (count === 4) stop.abort();
    };
    const { code, summary } = await run(wideTable(1000), [...MAP, '--speed', '600'], stop);
    expect(code).toBe(1);
    expect(summary?.acknowledged).toBeLessThan(2000);
  });
});

describe('a replay that cannot start', () => {
  it('says that the file is not there', async () => {
    const { code, err, summary } = await run(null);
    expect(code).toBe(1);
    expect(summary).toBeNull();
    expect(err).toContain('there is no such file');
  });

  it('says that the file is empty', async () => {
    const { code, err } = await run('');
    expect(code).toBe(1);
    expect(err).toContain('empty');
  });

  it('says what to do when no broker answers', async () => {
    const { code, err } = await run(wideTable(1), [...MAP, '--mqtt', '127.0.0.1:1']);
    expect(code).toBe(1);
    expect(err).toContain('npm start');
    expect(err).toContain('--mqtt');
  });

  it('exits with 1 when not one row could be used', async () => {
    const { code, err, summary } = await run('time,sensor,quantity,value\nnever,a,battery,1\n');
    expect(code).toBe(1);
    expect(summary).toMatchObject({ rows: 1, published: 0, skipped: 1 });
    expect(err).toContain('Nothing was sent');
  });
});
