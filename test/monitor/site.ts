import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { correction } from '../../daemon/corrected.ts';
import { modelPair, requirementPrior } from '../../daemon/model-settings.ts';
import { createMonitor } from '../../daemon/monitor/monitor.ts';
import type { ReadingSource } from '../../daemon/monitor/ports.ts';
import type { PlaceFact } from '../../daemon/rules/facts.ts';
import { Settings } from '../../daemon/settings/schema.ts';
import { openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { readingFlagBits } from '../../sensors/correct/reading-time.ts';

const timeUnknown = readingFlagBits['time-unknown'];

/** What may be otherwise about a site that a test opens. */
export interface OpenSiteOptions {
  /** puts a database there before it is opened */
  prepare?: (file: string) => void;
  /** quicker; reads and writes then share a connection */
  inMemory?: boolean;
  /** another way to look readings up than the store’s */
  readings?: ReadingSource;
  /** how long a verdict on air stands, ms */
  airFreshMs?: number;
}

/** A store and a monitor over it, without threads, brokers or clocks. */
export function openSite(
  cure: Partial<Settings['cure']> = {},
  options: OpenSiteOptions | ((file: string) => void) = {},
) {
  const other = typeof options === 'function' ? { prepare: options } : options;
  const folder = mkdtempSync(join(tmpdir(), 'boardcure-monitor-'));
  const file = other.inMemory ? ':memory:' : join(folder, 'boardcure.sqlite');
  other.prepare?.(file);
  const db = openForWriting(file);
  const writer = storeWriter(db, timeUnknown);
  const reader = storeReader(other.inMemory ? db : openForReading(file));
  const settings = { ...Settings.parse({}).cure, ...cure };
  const models = modelPair(settings);
  let ids = 0;
  const newId = () => `00000000-0000-7000-8000-${String(++ids).padStart(12, '0')}`;

  const start = () =>
    createMonitor({
      source: { ...reader, ...other.readings },
      ...(other.airFreshMs === undefined ? {} : { airFreshMs: other.airFreshMs }),
      keeper: {
        saveHours: async (blocks, ranks) => writer.saveHours(blocks, ranks),
        changeFaults: async (begun, ended, at) => writer.changeFaults(begun, ended, at),
        changeNotices: async (raised, clearedIds, at) =>
          writer.changeNotices(raised, clearedIds, at),
      },
      correction,
      flags: { timeUnknown },
      models,
      prior: requirementPrior(models.ruling),
      limits: settings,
      localLimitPpm: () => null,
      maxGapMs: settings.maxGapHours * 3_600_000,
      ahead: Settings.parse({}).work,
      newId,
      failed: (cause) => {
        throw cause;
      },
    });
  let monitor = start();

  return {
    writer,
    reader,
    models,
    newId,
    get monitor() {
      return monitor;
    },
    /** As after a restart of the daemon: nothing in memory. */
    restart(): void {
      monitor = start();
    },
    place(name: string, kind: PlaceFact['kind'], within: string | null = null): string {
      const id = newId();
      const none = { volumeM3: null, facing: null, exposure: null };
      writer.createPlace({ id, name, kind, within, ...none, createdAt: 0 });
      monitor.factsChanged();
      return id;
    },
    put(sensor: string, placeId: string | null, fromAt: number | null = null): void {
      const known = reader.sensorById(sensor);
      if (!known) throw new Error(`Sensor ${sensor} has not been heard.`);
      writer.placeSensor({ sensorKey: known.key, placeId, fromAt }, sensor, 0);
      monitor.factsChanged();
    },
    send(
      readings: { sensor: string; at: number; value: number; quantity?: Quantity }[],
      flags = 0,
      heardAt: number | null = null,
    ): void {
      monitor.committed(
        writer.commitReadings({
          readings: readings.map(({ sensor, at, value, quantity }) => ({
            sensor,
            quantity: quantity ?? 'air-temperature',
            at,
            raw: value,
            flags,
          })),
          refused: [],
          arrivedAt: 0,
        }),
        heardAt,
      );
    },
    /** A fault keeps all that a sensor says from counting. */
    doubt(fault: { id: string; sensor: string; fromAt: number; untilAt: number | null }): void {
      const { id, fromAt, untilAt } = fault;
      const sensorKey = reader.sensorById(fault.sensor)?.key ?? 0;
      const says = 'made up by a test';
      const fact = { id, sensorKey, quantity: null, kind: 'stuck' as const, fromAt, untilAt, says };
      writer.changeFaults([fact], [], 0);
      monitor.factsChanged();
    },
    trust(id: string, untilAt: number): void {
      writer.changeFaults([], [{ id, untilAt }], 0);
      monitor.factsChanged();
    },
    /** As the daemon does every minute: closed hours are packed. */
    pack(beforeAt: number): void {
      while (writer.packClosedHours(beforeAt, 20_000).more);
    },
    batch(placeId: string, name = 'Spruce'): string {
      const planId = newId();
      const mixture = { paint: 100, rawLinseedOil: 0, turpentine: 0 };
      const coat = { mixture, faces: ['face' as const], spreadingM2PerL: 10, soaksIn: false };
      writer.createPlan({
        id: planId,
        name: 'Three',
        surface: 'sawn',
        coats: ['One', 'Two', 'Three'].map((one) => ({ name: one, ...coat })),
        isDefault: false,
        createdAt: 0,
      });
      const id = newId();
      writer.createBatch(
        {
          id,
          name,
          species: 'norway-spruce',
          surface: 'sawn',
          boards: { count: 10, lengthMm: 4000, widthMm: 145, thicknessMm: 22 },
          planId,
          createdAt: 0,
          closedAt: null,
        },
        { id: newId(), batchId: id, placeId, at: null },
      );
      monitor.factsChanged();
      return id;
    },
    coat(batchId: string, coat: number, finishedAt: number): string {
      const id = newId();
      writer.createCoat(
        {
          id,
          batchId,
          coat,
          begunAt: null,
          finishedAt,
          mixture: { paint: 100, rawLinseedOil: 0, turpentine: 0 },
          faces: ['face'],
          usedL: null,
          colour: null,
          tin: null,
        },
        0,
        null,
      );
      monitor.factsChanged();
      return id;
    },
    move(batchId: string, placeId: string, at: number): void {
      writer.createMove({ id: newId(), batchId, placeId, at }, 0);
      monitor.factsChanged();
    },
    touch(
      batchId: string,
      coatId: string,
      gate: 'turn' | 'mount' | 'recoat',
      passed: boolean,
      at: number,
    ) {
      writer.createTest({ id: newId(), batchId, coatId, at, gate, passed, on: 'board' }, 0);
      monitor.factsChanged();
    },
    coatsAt(batchId: string, now: number) {
      const batch = monitor.facts().batches.get(batchId);
      if (!batch) throw new Error('no such batch');
      return monitor.assess.batch(batch, now).coats;
    },
    close(): void {
      if (!other.inMemory) reader.close();
      writer.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
export type TestSite = ReturnType<typeof openSite>;
