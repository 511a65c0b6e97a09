import { beforeEach, describe, expect, it } from 'vitest';
import type { Api } from '../../daemon/command/demo-api.ts';
import { demoOperator } from '../../daemon/command/demo-operator.ts';
import { rackNames } from '../../sensors/shed/cart-shed.ts';
import { createShed, type Shed } from '../../sensors/shed/shed.ts';

const HOUR_MS = 3_600_000;
const START = Date.UTC(2026, 4, 12, 7);

interface Call {
  name: string;
  batch: string;
  at: number;
  body: { coat?: number; gate?: string; passed?: boolean; name?: string; closed?: boolean };
}

const faces = ['face', 'edges'];
const mixture = { paint: 100, rawLinseedOil: 0, turpentine: 0 };
const plannedCoat = { name: 'a coat', mixture, faces, spreadingM2PerL: 10, soaksIn: false };
const plan = { coats: [plannedCoat, plannedCoat, plannedCoat] };

let shed: Shed;
let calls: Call[];
let coats: Map<string, number[]>;
let verdictAfterHours: number;

/** A daemon that knows one rule: worth a test after so many hours. */
const fakeApi = (async (name: string, sent: { params?: { id: string }; body?: Call['body'] }) => {
  const batch = sent.params?.id ?? `batch-${coats.size + 1}`;
  if (name !== 'listCoats' && name !== 'readBatch') {
    calls.push({ name, batch, at: shed.at(), body: sent.body ?? {} });
  }
  if (name === 'createBatch') {
    coats.set(batch, []);
    return { id: batch, plan };
  }
  if (name === 'createCoat') coats.get(batch)?.push(shed.at());
  if (name === 'listCoats') {
    return coats.get(batch)?.map((at, coat) => {
      const waited = shed.at() - at >= verdictAfterHours * HOUR_MS;
      const gate = { verdict: waited ? 'test' : 'wait' };
      return { coat, gates: { turn: gate, stack: gate, mount: gate, sand: gate, recoat: gate } };
    });
  }
  return { id: batch, plan };
}) as unknown as Api;

async function live(days: number): Promise<void> {
  const places = Object.fromEntries(rackNames.map((rack) => [rack, `place-${rack}`]));
  const operator = demoOperator(fakeApi, shed, places);
  for (let at = START; at < START + days * 24 * HOUR_MS; at += 600_000) {
    shed.advanceTo(at);
    await operator.lookAround();
  }
}

const of = (name: string) => calls.filter((call) => call.name === name);

beforeEach(() => {
  shed = createShed({ seed: 1, startAt: START });
  calls = [];
  coats = new Map();
  verdictAfterHours = 45;
});

describe('the scripted operator of the demo', () => {
  it('takes each batch through its three coats, clears the rack and starts the next', async () => {
    await live(40);
    const closed = of('changeBatch').map(({ batch }) => batch);
    expect(closed.length).toBeGreaterThanOrEqual(4);
    for (const batch of closed) {
      const order = of('createCoat').filter((call) => call.batch === batch);
      expect(order.map(({ body }) => body.coat)).toEqual([0, 1, 2]);
    }
    expect(of('createBatch').length).toBe(closed.length + rackNames.length);
    const names = of('createBatch').map(({ body }) => body.name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('coats again only after a hand test of this very coat has passed', async () => {
    await live(40);
    for (const { batch, body, at } of of('createCoat')) {
      if (body.coat === 0) continue;
      const before = calls.filter((call) => call.batch === batch && call.at <= at);
      const lastCoat = before.filter(({ name }) => name === 'createCoat').at(-2);
      const passed = before.some(
        (call) =>
          call.body.gate === 'recoat' && call.body.passed === true && call.at > (lastCoat?.at ?? 0),
      );
      expect(passed).toBe(true);
    }
  });

  it('works by day, and waits eight hours after a test that failed', async () => {
    await live(40);
    for (const { at } of calls) {
      const hour = new Date(at).getUTCHours();
      expect(hour).toBeGreaterThanOrEqual(6);
      expect(hour).toBeLessThan(20);
    }
    const tests = of('createTest');
    expect(tests.some(({ body }) => body.passed === false)).toBe(true);
    for (const failed of tests.filter(({ body }) => body.passed === false)) {
      const next = tests.find(({ batch, at }) => batch === failed.batch && at > failed.at);
      if (next !== undefined) expect(next.at - failed.at).toBeGreaterThanOrEqual(8 * HOUR_MS);
    }
  });

  it('feels the boards in the end even where the page never says so', async () => {
    verdictAfterHours = Number.POSITIVE_INFINITY;
    await live(30);
    expect(of('createCoat').some(({ body }) => body.coat === 1)).toBe(true);
  });
});
