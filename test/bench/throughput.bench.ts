import { availableParallelism } from 'node:os';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, bench, describe } from 'vitest';
import { plainTable } from './plain-table.ts';
import { bareLoad, clientLoad, type Load, type Shape } from './throughput-load.ts';
import {
  bareBroker,
  daemonRival,
  mosquittoRival,
  type Rival,
  rawInserts,
} from './throughput-rivals.ts';

/** As the daemon has it by default. */
const groupSize = 400;
const rounds = 4;
/** About how long one run of the daemon takes, s. */
const runS = 0.7;

const shapes: (Shape & { guess: number })[] = [
  { connections: 1, inFlight: 1, guess: 1500 },
  { connections: 1, inFlight: 50, guess: 30_000 },
  { connections: 20, inFlight: 20, guess: 50_000 },
  { connections: 200, inFlight: 1, guess: 18_000 },
  { connections: 200, inFlight: 5, guess: 30_000 },
];

const at = (sorted: readonly number[], share: number) =>
  sorted[Math.floor((sorted.length - 1) * share)] ?? Number.NaN;
const median = (values: readonly number[]) =>
  at(
    [...values].sort((a, b) => a - b),
    0.5,
  );

/** Runs one after the other, round by round, so that what slows the machine slows all of them. */
async function printThroughput(who: string, load: Load, share: number): Promise<void> {
  const rivals: Record<string, Rival> = {
    ours: await daemonRival(),
    bare: await bareBroker(),
    mosquitto: await mosquittoRival(groupSize),
    raw: rawInserts(groupSize),
  };
  const rows: string[][] = [];
  for (const { guess, ...shape } of shapes) {
    const total = Math.ceil((guess * share * runS) / shape.connections) * shape.connections;
    const perSecond: Record<string, number[]> = {};
    const waits: number[] = [];
    // Processor time a reading, µs: of who publishes to the bare broker, of that, of the inserts.
    const spent = { publisher: [] as number[], bare: [] as number[], raw: [] as number[] };
    const own = { all: [] as number[], first: [] as number[] };
    for (let round = -1; round < rounds; round++) {
      for (const [name, rival] of Object.entries(rivals)) {
        const idle = process.cpuUsage();
        const result = await rival.run(load, shape, total);
        const { elapsedMs, waitsMs, cpuMs = Number.NaN, firstThreadMs = Number.NaN } = result;
        const { user, system } = process.cpuUsage(idle);
        // The first round only warms up.
        if (round < 0) continue;
        perSecond[name] = [...(perSecond[name] ?? []), (total / elapsedMs) * 1000];
        if (name === 'ours') {
          waits.push(...waitsMs);
          own.all.push((cpuMs * 1000) / total);
          own.first.push((firstThreadMs * 1000) / total);
        }
        if (name === 'bare') spent.publisher.push((user + system) / total);
        if (name === 'bare' || name === 'raw') spent[name].push((cpuMs * 1000) / total);
      }
    }
    const ratio = (to: string) =>
      median((perSecond.ours ?? []).map((own, i) => own / (perSecond[to]?.[i] ?? Number.NaN)));
    waits.sort((a, b) => a - b);
    const leastUs = median(spent.publisher) + median(spent.bare) + median(spent.raw);
    const most = (availableParallelism() * 1e6) / leastUs / median(perSecond.bare ?? []);
    rows.push([
      `${shape.connections} × ${shape.inFlight}`,
      ...['bare', 'mosquitto', 'raw'].map((name) => ratio(name).toFixed(2)),
      Math.min(1, most).toFixed(2),
      ...['ours', 'bare', 'mosquitto', 'raw'].map((name) =>
        median(perSecond[name] ?? []).toFixed(0),
      ),
      ...[at(waits, 0.5).toFixed(1), at(waits, 0.99).toFixed(1)],
      ...[own.first, own.all, spent.bare].map((each) => median(each).toFixed(1)),
    ]);
  }
  for (const rival of Object.values(rivals)) await rival.close();
  const head = [
    ...[
      'connections × under way',
      '/a',
      '/b',
      '/c',
      'most/a',
      'ours',
      'a',
      'b',
      'c',
      'ack ms',
      '99 %',
      ...['first µs', 'all µs', 'a µs'],
    ],
  ];
  process.stdout.write(
    `\nReadings committed and acknowledged a second, published with ${who}; each a median of ${rounds} rounds, the rivals in turn; processes apart.
a the same broker, nothing stored; b mosquitto and a minimal subscriber that stores; c inserts alone
first, all: processor time a reading of our first thread and of all of them; a µs, of the bare broker
most: what these processors could do if publishing, the broker (a) and the inserts (c) cost what they cost alone, and nothing else anything
${plainTable(head, rows)}\n`,
  );
}

/** From publish to the event that tells a page of it. */
async function printStreamLatency(): Promise<void> {
  const daemon = await daemonRival();
  const reply = await fetch(`http://127.0.0.1:${daemon.http}/api/v1/stream`);
  const reader = reply.body?.getReader();
  await reader?.read();
  const waits: number[] = [];
  for (let i = 0; i < 60; i++) {
    const began = performance.now();
    const event = reader?.read();
    await bareLoad(daemon.mqtt, { connections: 1, inFlight: 1 }, 1);
    await event;
    waits.push(performance.now() - began);
    await pause(20);
  }
  await reader?.cancel();
  await daemon.close();
  waits.sort((a, b) => a - b);
  process.stdout.write(
    `\nFrom publish to the stream’s event (changes are gathered for 250 ms): ${at(waits, 0.5).toFixed(0)} ms (median), ${at(waits, 0.99).toFixed(0)} ms (99 %)\n`,
  );
}

await printThroughput('the usual client library', clientLoad, 0.6);
await printThroughput('bare sockets and packets made beforehand', bareLoad, 1);
await printStreamLatency();

const [ours, bare] = [await daemonRival(), await bareBroker()];
// Of the whole file: a benchmark’s `describe` runs no hooks, and both would be left running.
afterAll(() => Promise.all([ours.close(), bare.close()]));

describe('one reading, connection and all', () => {
  const one = { connections: 1, inFlight: 1 };
  bench('committed, then acknowledged', async () => {
    await ours.run(bareLoad, one, 1);
  });
  bench('the broker with nothing stored', async () => {
    await bare.run(bareLoad, one, 1);
  });
});
