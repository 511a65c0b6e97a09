import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import { apiAt } from '../../daemon/command/demo-api.ts';
import { demoOptions } from '../../daemon/command/demo-options.ts';

const CLI = new URL('../../.build/bundle/cli.js', import.meta.url).href;
const PATIENCE_MS = 90_000;

interface Demo {
  child: ChildProcess;
  complaints: string[];
  ready: Promise<{ event: string; http: number; mqtt: number; data: string }>;
  ended: Promise<number | null>;
}

const running: ChildProcess[] = [];

function startDemo(...args: string[]): Demo {
  const entry = `import(${JSON.stringify(CLI)}).then(({ run }) => run(process.argv.slice(1)))`;
  const command = ['-e', entry, '--', 'demo', ...args];
  const child = spawn(process.execPath, command, { stdio: 'pipe' });
  running.push(child);
  const complaints: string[] = [];
  createInterface({ input: child.stderr }).on('line', (line) => complaints.push(line));
  const ended = new Promise<number | null>((resolve) => child.on('close', resolve));
  const ready = new Promise<Awaited<Demo['ready']>>((resolve, reject) => {
    createInterface({ input: child.stdout }).once('line', (line) => resolve(JSON.parse(line)));
    void ended.then((code) => reject(new Error(`ended with ${code}: ${complaints.join('\n')}`)));
  });
  // whoever waits for it sees the rejection; nobody need wait for it
  ready.catch(() => {});
  return { child, complaints, ready, ended };
}

afterEach(() => {
  for (const child of running.splice(0)) child.kill('SIGKILL');
});

describe('the demo', () => {
  it(
    'shows four racks at work as soon as it is ready, lives on, and leaves nothing behind',
    async () => {
      expect(existsSync(fileURLToPath(CLI)), 'run npm run build first').toBe(true);
      const demo = startDemo('--http', '0', '--mqtt', '0', '--speed', '3000');
      const ready = await demo.ready;
      expect(ready).toMatchObject({ event: 'ready' });
      const api = apiAt(`http://127.0.0.1:${ready.http}`);

      const overview = await api('overview', {});
      expect(overview.speed).toBe(3000);
      expect(overview.unplacedSensors).toBe(0);
      expect(overview.intake.refused).toBe(0);
      const racks = overview.places.filter(({ kind }) => kind === 'rack');
      expect(racks).toHaveLength(4);
      for (const { air, batches } of racks) {
        expect(air.tempC).toBeGreaterThan(10);
        expect(air.rhPercent).toBeGreaterThan(20);
        expect(batches).toHaveLength(1);
        expect(batches[0]?.degreeHours).toBeGreaterThan(0);
      }
      const sums = racks.map(({ batches }) => batches[0]?.degreeHours ?? 0);
      expect(Math.max(...sums)).toBeGreaterThan(600);
      expect(Math.min(...sums)).toBeLessThan(100);

      // the shed lives on: its own time passes and the sums grow
      await expect
        .poll(
          async () => {
            const later = await api('overview', {});
            const rack = later.places.find(({ id }) => id === racks[0]?.id);
            return rack?.batches[0]?.degreeHours ?? 0;
          },
          { timeout: PATIENCE_MS, interval: 250 },
        )
        .toBeGreaterThan(sums[0] ?? 0);

      const batches = await api('listBatches', {});
      const tests = await Promise.all(
        batches.map(({ id }) => api('listTests', { params: { id } })),
      );
      expect(tests.flat().some(({ passed }) => passed)).toBe(true);

      demo.child.kill('SIGTERM');
      expect(await demo.ended).toBe(0);
      expect(existsSync(ready.data)).toBe(false);
    },
    2 * PATIENCE_MS,
  );

  it(
    'says what to do when a port is taken, and leaves nothing behind',
    async () => {
      expect(existsSync(fileURLToPath(CLI)), 'run npm run build first').toBe(true);
      const first = startDemo('--http', '0', '--mqtt', '0');
      const { http } = await first.ready;
      const folders = async () =>
        (await readdir(tmpdir())).filter((name) => name.startsWith('boardcure-demo-')).sort();
      const before = await folders();
      const second = startDemo('--http', `${http}`, '--mqtt', '0');
      expect(await second.ended).toBe(1);
      expect(second.complaints.join('\n')).toMatch(
        new RegExp(`Port ${http} .*npm start -- demo --http`, 's'),
      );
      expect(await folders()).toEqual(before);
      first.child.kill('SIGINT');
      expect(await first.ended).toBe(0);
    },
    2 * PATIENCE_MS,
  );
});

describe('the command line of the demo', () => {
  it.each([
    [['--speed', '0'], '--speed 0'],
    [['--speed', '20000'], '--speed 20000'],
    [['--seed', 'x'], '--seed x'],
    [['--http', 'here'], '--http here'],
    [['--nonsense'], '--nonsense'],
    [['--faults', '1.5'], '--faults 1.5'],
    [['--load', '0'], '--load 0'],
    [['--load', '5', '--rate', '0'], '--rate 0'],
    [['--load', '5', '--to', 'here'], '--to here'],
  ])('%j is refused with a reason', (args, named) => {
    expect(demoOptions(args, '/')).toMatchObject({
      kind: 'refused',
      because: expect.stringContaining(named),
    });
  });

  it('can send a crowd of sensors instead', () => {
    expect(demoOptions(['--load', '500', '--rate', '100'], '/')).toEqual({
      kind: 'load',
      options: { sensors: 500, rate: 100, seed: 1, to: 'mqtt://localhost:1883' },
    });
  });

  it('will not mix invented readings into a folder that holds something', async () => {
    const demo = startDemo('--data', fileURLToPath(new URL('.', import.meta.url)));
    expect(await demo.ended).toBe(1);
    expect(demo.complaints.join('\n')).toContain('already holds something');
  });
});
