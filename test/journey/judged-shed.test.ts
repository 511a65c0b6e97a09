import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pino } from 'pino';
import { afterEach, expect, it } from 'vitest';
import { fastClock } from '../../daemon/clock.ts';
import { apiAt } from '../../daemon/command/demo-api.ts';
import { demoDesk } from '../../daemon/command/demo-desk.ts';
import { gates } from '../../daemon/contract/gate.ts';
import type { Daemon } from '../../daemon/main.ts';
import { loadSettings } from '../../daemon/settings/load.ts';
import { connectPublisher, type Publisher } from '../../sensors/publish/publisher.ts';
import { coatOf, drawnTins } from '../../sensors/shed/drawn-paints.ts';
import { drawnShed } from '../../sensors/shed/drawn-shed.ts';
import { type Desk, shedOperator } from '../../sensors/shed/operator.ts';
import { seededRandom } from '../../sensors/shed/physics/random.ts';
import { createShed } from '../../sensors/shed/shed.ts';
import { BOARDS, judgedSite } from '../judge/judged-site.ts';

/*
 * The judge leaves out sockets, threads and pages. Here one shed goes both ways at once: through the
 * judge's own site, and over MQTT and HTTP through the whole daemon.
 */
const HOUR_MS = 3_600_000;
const DAYS = 4;
const SEED = 6;

const built = new URL('../../.build/daemon/main.js', import.meta.url).href;

const folder = mkdtempSync(join(tmpdir(), 'boardcure-judge-'));
let daemon: Daemon | null = null;
let publisher: Publisher | null = null;
afterEach(async () => {
  await publisher?.close();
  await daemon?.close();
  rmSync(folder, { recursive: true, force: true });
});

it('says in this process what the whole daemon says over MQTT', async () => {
  const { plan, startAt } = drawnShed(SEED, { days: DAYS, faults: 0 });
  const shed = createShed({ seed: SEED, startAt, plan });
  const site = judgedSite(plan, shed.at(), 600_000);
  // the daemon's time stands almost still between the jumps
  const clock = fastClock(startAt, 1e-6);
  const settings = loadSettings({
    args: ['--data', join(folder, 'data'), '--http', '127.0.0.1:0', '--mqtt', '127.0.0.1:0'],
    ...{ env: {}, cwd: folder },
  });
  const { startDaemon } = (await import(built)) as typeof import('../../daemon/main.ts');
  daemon = await startDaemon({ settings, clock, log: pino({ level: 'silent' }) });
  const { http, mqtt } = daemon.ready;
  publisher = await connectPublisher({
    url: `mqtt://127.0.0.1:${mqtt}`,
    site: 'shed',
    name: 'judge',
  });
  const api = apiAt(`http://127.0.0.1:${http}`);

  const yard = await api('createPlace', { body: { name: 'Yard', kind: 'outdoors' } });
  const { volumeM3 } = plan.build;
  const room = await api('createPlace', { body: { name: 'Shed', kind: 'room', volumeM3 } });
  const racks: Record<string, string> = {};
  for (const { name } of plan.racks) {
    const body = { name, kind: 'rack' as const, within: room.id };
    racks[name] = (await api('createPlace', { body })).id;
  }
  const overHttp = demoDesk(
    api,
    racks,
    (batch) => ({ ...batch, species: 'scots-pine', surface: 'sawn', boards: BOARDS }),
    0,
  );

  /** What is recorded goes to both; what is asked, to the judge's own. */
  const idsThere = new Map<string, string>();
  const there = (id: string) => idsThere.get(id) ?? '';
  const both: Desk = {
    async begin(batch, rack) {
      const id = await site.desk.begin(batch, rack);
      idsThere.set(id, await overHttp.begin(batch, rack));
      return id;
    },
    async coated(id, ...rest) {
      await overHttp.coated(there(id), ...rest);
      return site.desk.coated(id, ...rest);
    },
    async tested(id, ...rest) {
      await overHttp.tested(there(id), ...rest);
      await site.desk.tested(id, ...rest);
    },
    async moved(id, ...rest) {
      await overHttp.moved(there(id), ...rest);
      await site.desk.moved(id, ...rest);
    },
    async sunkIn(id, ...rest) {
      await overHttp.sunkIn(there(id), ...rest);
      await site.desk.sunkIn(id, ...rest);
    },
    async closed(id) {
      await overHttp.closed(there(id));
      await site.desk.closed(id);
    },
    verdict: site.desk.verdict,
  };
  const random = seededRandom(SEED, 60);
  const [tin] = drawnTins(SEED, 1)[0] ?? [];
  if (tin === undefined) throw new Error('no tin is on the shelf');
  let batches = 0;
  const laid: { batchId: string; index: number }[] = [];
  const operator = shedOperator({
    ...{ shed, desk: both, racks: plan.racks.map(({ name }) => name), random },
    nextBatch() {
      batches += 1;
      if (batches > 2) return null;
      const coat = (index: number) => {
        const film = Math.exp(0.08 * random.normal());
        const truth = coatOf(tin, index, film, random);
        return { colour: tin.colour, tin: tin.number, film, truth };
      };
      return { name: `boards ${batches}`, dryMassKg: 90, moisturePercent: 15, coats: 3, coat };
    },
    habits: {
      ...{ tests: true, onOffcut: 0.5, movesWhenTurned: true, forgetsMoves: 0.5 },
      againAfterMs: 3 * HOUR_MS,
    },
    onlooker: { laid: ({ batchId, index }) => laid.push({ batchId, index }) },
  });

  async function placeSensors(): Promise<void> {
    site.placeSensors();
    const known = await api('listSensors', {});
    for (const { id, spot } of plan.sensors) {
      if (known.find((one) => one.id === id)?.placeId !== null) continue;
      const placeId =
        spot.kind === 'outdoors' ? yard.id : spot.kind === 'room' ? room.id : racks[spot.rack];
      if (placeId !== undefined) await api('changeSensor', { params: { id }, body: { placeId } });
    }
  }

  let compared = 0;
  const words = new Set<string>();
  for (let hour = 1; hour <= DAYS * 24; hour++) {
    const at = startAt + hour * HOUR_MS;
    clock.jumpTo(at);
    const sent = shed.advanceTo(at);
    for (const reading of sent) await publisher.publish(reading);
    await publisher.drained();
    site.take(sent);
    await site.at(at);
    if (hour === 1) await placeSensors();
    await operator.lookAround();
    if (hour % 6 !== 0) continue;
    for (const { batchId, index } of laid) {
      const coats = await api('listCoats', { params: { id: there(batchId) } });
      const said = coats.find(({ coat }) => coat === index)?.gates;
      const here = site.verdicts(batchId, index);
      for (const gate of gates) {
        expect(`${hour} ${index} ${gate} ${said?.[gate].verdict}`).toBe(
          `${hour} ${index} ${gate} ${here[gate]}`,
        );
        words.add(here[gate]);
        compared += 1;
      }
    }
  }
  site.close();
  expect(compared).toBeGreaterThan(100);
  // more was said than "wait"
  expect(words.size).toBeGreaterThan(2);
}, 120_000);
