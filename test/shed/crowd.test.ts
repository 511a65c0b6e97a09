import { afterEach, describe, expect, it, vi } from 'vitest';
import { demoLoad } from '../../daemon/command/demo-load.ts';
import { quantityFacts } from '../../daemon/contract/quantity.ts';
import { startBroker } from '../../daemon/ingest/broker.ts';
import type { MessagePort } from '../../daemon/ingest/message-port.ts';
import { crowd } from '../../sensors/shed/crowd.ts';
import { heldStore, quiet } from '../ingest/held-store.ts';

const at = Date.UTC(2026, 4, 8);

describe('a crowd of sensors', () => {
  it('takes turns, each sensor with both quantities', () => {
    const many = crowd(3, 1);
    const sent = Array.from({ length: 12 }, (_, index) => many.next(at + index * 1000));
    const names = sent.map(({ sensor, quantity }) => `${sensor} ${quantity}`);
    expect(names.slice(0, 6)).toEqual(names.slice(6));
    expect(new Set(names).size).toBe(6);
  });

  it('sends what air can be, the same for a seed', () => {
    const run = (seed: number) => {
      const many = crowd(50, seed);
      return Array.from({ length: 2000 }, (_, index) => many.next(at + index * 600_000));
    };
    for (const { quantity, value } of run(2)) {
      expect(value).toBeGreaterThanOrEqual(quantityFacts[quantity].low);
      expect(value).toBeLessThanOrEqual(quantityFacts[quantity].high);
    }
    expect(run(2)).toEqual(run(2));
    expect(run(2)).not.toEqual(run(3));
  });

  it('is refused without a sensor', () => {
    expect(() => crowd(0, 1)).toThrow(RangeError);
  });
});

describe('the load generator', () => {
  let broker: MessagePort | null = null;
  const store = heldStore();
  afterEach(async () => {
    store.release();
    await broker?.close();
  });

  it('sends at its rate until it is stopped, and everything arrives', async () => {
    broker = await startBroker({ host: '127.0.0.1', port: 0, take: store.take, log: quiet });
    const stop = new AbortController();
    const said: string[] = [];
    const io = {
      ...{ env: {}, cwd: '/', stop: stop.signal },
      stdout: (line: string) => said.push(line),
      stderr: () => {},
    };
    const options = { to: `mqtt://127.0.0.1:${broker.port}`, sensors: 20, rate: 400, seed: 1 };
    const ended = demoLoad(options, io);
    await vi.waitFor(() => expect(store.readings().length).toBeGreaterThan(100), 15_000);
    stop.abort();
    expect(await ended).toBe(0);
    const { published } = JSON.parse(said.at(-1) ?? '{}') as { published: number };
    expect(published).toBeGreaterThanOrEqual(store.readings().length);
    expect(new Set(store.readings().map(({ sensor }) => sensor)).size).toBe(20);
    expect(store.refused()).toEqual([]);
  });

  it('says so where there is no broker', async () => {
    const said: string[] = [];
    const io = {
      ...{ env: {}, cwd: '/', stop: new AbortController().signal },
      stdout: () => {},
      stderr: (line: string) => said.push(line),
    };
    expect(await demoLoad({ to: 'mqtt://127.0.0.1:1', sensors: 1, rate: 1, seed: 1 }, io)).toBe(1);
    expect(said.join('\n')).toContain('could not be reached');
  });
});
