import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import type { MessagePort } from '../../daemon/ingest/message-port.ts';
import { readSegment } from '../../sensors/attached/queue-record.ts';
import { textSample } from '../../sensors/attached/waiting-sample.ts';
import { madeTree } from '../attached/made-tree.ts';
import { heldStore, quiet } from '../ingest/held-store.ts';
import { freePort } from '../ingest/mosquitto.ts';

/*
 * The fault injected: the program for wired sensors is killed (SIGKILL) while it writes its queue,
 * and while it empties it.
 */
const program = new URL('../../.build/bundle/attached.js', import.meta.url);
const soon = { timeout: 30_000, interval: 10 };

let tree: ReturnType<typeof madeTree>;
let folder: string;
let store: ReturnType<typeof heldStore>;
let broker: MessagePort | null;
let child: ChildProcess | null;

beforeEach(() => {
  if (!existsSync(fileURLToPath(program))) throw new Error('Build first: npm run build');
  tree = madeTree();
  folder = mkdtempSync(join(tmpdir(), 'boardcure-attached-'));
  store = heldStore();
  broker = null;
  child = null;
});
afterEach(async () => {
  await kill();
  store.release();
  await broker?.close();
  tree.remove();
  rmSync(folder, { recursive: true, force: true });
});

async function kill(): Promise<void> {
  if (child === null || child.exitCode !== null || child.signalCode !== null) return;
  child.kill('SIGKILL');
  await once(child, 'close');
}

function start(port: number): void {
  const settings = join(folder, 'attached.toml');
  const queue = join(folder, 'queue');
  writeFileSync(
    settings,
    `mqtt = "mqtt://127.0.0.1:${port}"\nperiodS = 0.1\nqueue.folder = "${queue}"\n`,
  );
  const code = `import(${JSON.stringify(program.href)}).then((it) => it.run(process.argv.slice(1)))`;
  const args = ['--config', settings, '--root', tree.root];
  child = spawn(process.execPath, ['-e', code, '--', ...args], { stdio: 'ignore' });
}

/** The samples on disk as `sensor moment`, in their order, read as the program itself would. */
function onDisk(): string[] {
  const queue = join(folder, 'queue');
  if (!existsSync(queue)) return [];
  const names = readdirSync(queue).filter((name) => name.endsWith('.queue'));
  return names.sort().flatMap((name) =>
    readSegment(readFileSync(join(queue, name))).records.map(({ body }) => {
      const found = textSample(body);
      return `${found?.sample.sensor} ${found?.taken.at}`;
    }),
  );
}

it('loses none of the readings that were on disk, however often it is killed', async () => {
  const port = await freePort();
  for (let round = 1; round <= 4; round++) {
    const before = onDisk().length;
    start(port);
    await vi.waitFor(() => expect(onDisk().length).toBeGreaterThan(before + 3), soon);
    await kill();
  }
  const waiting = onDisk();
  expect(waiting.length).toBeGreaterThan(15);

  broker = await startBroker({ host: '127.0.0.1', port, take: store.take, log: quiet });
  store.hold();
  start(port);
  // killed while the broker has readings that it has not acknowledged
  await store.commitBegun(1);
  await kill();
  store.release();
  start(port);
  const arrived = () => store.readings().map(({ sensor, at }) => `${sensor} ${at}`);
  await vi.waitFor(() => expect(arrived()).toEqual(expect.arrayContaining(waiting)), soon);
  // in the order in which they were taken, also those that came twice
  const first = [...new Set(arrived())].filter((one) => waiting.includes(one));
  expect(first).toEqual([...new Set(waiting)]);
  expect(store.refused()).toEqual([]);
});
