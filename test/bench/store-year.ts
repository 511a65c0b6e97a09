import { readFileSync } from 'node:fs';
import type { Series } from '../../daemon/contract/series.ts';
import type { IncomingReading } from '../../daemon/rules/facts.ts';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { flowOf, flowStartAt, hourMs } from './store-flow.ts';
import { openStoreOnDisk, type StoreOnDisk } from './store-on-disk.ts';

export const sensors = 20;
const quantity = 'air-temperature';

/** A store with many days of readings, and one hour of them as they were sent. */
export interface FilledStore {
  store: StoreOnDisk;
  readings: number;
  endAt: number;
  /** The hour that is looked at again, and what was sent in it. */
  hour: number;
  sent: IncomingReading[];
  seconds: number;
}

/** Fills a store the way it fills in life: an hour comes in, then it is packed. */
export function fillDays(days: number): FilledStore {
  const store = openStoreOnDisk();
  const flow = flowOf(sensors);
  const begun = performance.now();
  const hours = days * 24;
  const hour = hours >> 1;
  let sent: IncomingReading[] = [];
  let readings = 0;
  store.hurriedly(() => {
    for (let i = 0; i < hours; i++) {
      const group = flow.hour(i);
      if (i === hour) sent = group;
      store.write.commitReadings({ readings: group, refused: [], arrivedAt: flowStartAt });
      store.packBefore(flowStartAt + i * hourMs);
      readings += group.length;
    }
  });
  store.close();
  const seconds = (performance.now() - begun) / 1000;
  return { store, readings, endAt: flowStartAt + hours * hourMs, hour, sent, seconds };
}

export interface DaemonOnYear {
  startMs: number;
  residentMb: number;
  residentAfterMb: number;
  /** After a year’s curves of the sensor were asked for 25 times more. */
  residentAfterCurvesMb: number;
  curvesMs: number;
  /** Median of the times from question to whole answer, ms. */
  seasonMs: number;
  seasonPoints: number;
  dayMs: number;
  dayReadings: number;
  hourMs: number;
  hourIsExact: boolean;
}

const residentMb = (daemon: RunningDaemon): number => {
  const status = readFileSync(`/proc/${daemon.process.pid}/status`, 'utf8');
  return Number(/^VmRSS:\s+(\d+) kB$/m.exec(status)?.[1] ?? Number.NaN) / 1024;
};

/** Starts the daemon as it is built on a filled folder, and asks it as the dashboard does. */
export async function askDaemon(filled: FilledStore): Promise<DaemonOnYear> {
  const begun = performance.now();
  const daemon = await startDaemon(filled.store.folder);
  const startMs = performance.now() - begun;
  try {
    const resident = residentMb(daemon);
    const ask = async (query: Record<string, string>) => {
      const asked = new URLSearchParams({ sensor: 'n7', quantity, ...query });
      const times: number[] = [];
      let series: Series | null = null;
      for (let i = 0; i < 15; i++) {
        const from = performance.now();
        const reply = await fetch(`http://127.0.0.1:${daemon.http}/api/v1/series?${asked}`);
        series = (await reply.json()) as Series;
        times.push(performance.now() - from);
      }
      if (!series?.at) throw new Error(`No series came: ${JSON.stringify(series)}`);
      return { series, ms: times.sort((a, b) => a - b)[times.length >> 1] ?? Number.NaN };
    };
    const moment = (at: number) => new Date(at).toISOString();
    const season = await ask({ from: moment(flowStartAt), points: '1000' });
    const day = await ask({ from: moment(filled.endAt - 24 * hourMs) });
    const startAt = flowStartAt + filled.hour * hourMs;
    const one = await ask({ from: moment(startAt), to: moment(startAt + hourMs - 1) });
    const residentAfter = residentMb(daemon);
    const curves = new URLSearchParams({
      from: moment(flowStartAt),
      to: moment(filled.endAt),
    });
    const times: number[] = [];
    for (let i = 0; i < 25; i++) {
      const from = performance.now();
      const reply = await fetch(
        `http://127.0.0.1:${daemon.http}/api/v1/sensors/n7/curves?${curves}`,
      );
      if (!reply.ok) throw new Error(`No curves came: ${await reply.text()}`);
      await reply.text();
      times.push(performance.now() - from);
    }
    const expected = filled.sent.filter(
      (it) =>
        it.sensor === 'n7' &&
        it.quantity === quantity &&
        it.at >= startAt &&
        it.at < startAt + hourMs,
    );
    return {
      startMs,
      residentMb: resident,
      residentAfterMb: residentAfter,
      residentAfterCurvesMb: residentMb(daemon),
      curvesMs: times.sort((a, b) => a - b)[times.length >> 1] ?? Number.NaN,
      seasonMs: season.ms,
      seasonPoints: season.series.at.length,
      dayMs: day.ms,
      dayReadings: day.series.at.length,
      hourMs: one.ms,
      hourIsExact:
        // A node whose minutes lie across the hour’s edge gives one more or less.
        expected.every(({ at, raw }) => one.series.raw[one.series.at.indexOf(at / 1000)] === raw) &&
        one.series.at.length - expected.length <= 2,
    };
  } finally {
    await daemon.stop();
  }
}
