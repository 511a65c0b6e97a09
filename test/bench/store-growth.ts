import type { IncomingReading } from '../../daemon/rules/facts.ts';
import { gapsBetween } from '../../daemon/rules/reading-outline.ts';
import { thinOut } from '../../daemon/rules/thin-out.ts';
import { type Flow, flowOf, flowStartAt, hourMs } from './store-flow.ts';
import { openStoreOnDisk, type StoreOnDisk } from './store-on-disk.ts';

const quantity = 'air-temperature';
const groupSize = 100;

export interface Cost {
  /** Of one more reading in order, in groups of 100, packing left out, µs. */
  commitUs: number;
  /** Of packing, by reading, µs. */
  packUs: number;
  /** Of a late reading that is committed alone and merged into its packed hour, ms. */
  lateMs: number;
  /** Of all readings of one quantity in the last 24 h, ms. */
  dayMs: number;
  /** Of the newest reading of a sensor that has been silent, ms. */
  newestMs: number;
  /** Of a curve of 1,000 points over all there is, ms; of fewer where there are fewer. */
  curveMs: number;
}

const timed = (times: number, act: (i: number) => void): number => {
  const all = Array.from({ length: times }, (_, i) => {
    const from = performance.now();
    act(i);
    return performance.now() - from;
  });
  return all.sort((a, b) => a - b)[times >> 1] ?? Number.NaN;
};

const commit = (store: StoreOnDisk, readings: IncomingReading[]) => {
  for (let i = 0; i < readings.length; i += groupSize) {
    const group = readings.slice(i, i + groupSize);
    store.write.commitReadings({ readings: group, refused: [], arrivedAt: flowStartAt });
  }
};

/** What some more hours cost at the end of a history; the middling one of each. */
function costAtEnd(store: StoreOnDisk, flow: Flow, hour: number): Cost {
  const hours = Array.from({ length: 5 }, (_, i) =>
    costOfHour(store, flow.hour(hour + i), hour + i),
  );
  const middling = (of: (cost: Cost) => number) =>
    hours.map(of).sort((a, b) => a - b)[hours.length >> 1] ?? Number.NaN;
  return {
    commitUs: middling((cost) => cost.commitUs),
    packUs: middling((cost) => cost.packUs),
    lateMs: middling((cost) => cost.lateMs),
    dayMs: middling((cost) => cost.dayMs),
    newestMs: middling((cost) => cost.newestMs),
    curveMs: middling((cost) => cost.curveMs),
  };
}

/** As the pages ask for it, from the question to the points; without HTTP. */
function curveOf(store: StoreOnDisk, sensorKey: number): number {
  const { points, spans } = store.read.readingOutline(sensorKey, quantity, 0, 8.64e15, 1000);
  gapsBetween(spans, 3 * hourMs);
  return thinOut(
    points.map(({ at, raw }) => ({ at, raw, value: raw })),
    1000,
  ).length;
}

function costOfHour(store: StoreOnDisk, nextHour: IncomingReading[], hour: number): Cost {
  const startAt = flowStartAt + hour * hourMs;
  const silent = { sensor: 'silent', quantity, raw: 18, flags: 0 } as const;
  commit(store, [{ ...silent, at: startAt - 2 * hourMs }]);
  store.packBefore(startAt);
  let from = performance.now();
  commit(store, nextHour);
  const commitUs = ((performance.now() - from) * 1000) / nextHour.length;
  const key = (id: string) => store.read.sensorById(id)?.key ?? -1;
  // The worst case for what is not packed yet: an hour that is about to be.
  const dayMs = timed(9, () => {
    store.read.readingsBetween(key('n1'), quantity, startAt - 23 * hourMs, startAt + hourMs);
  });
  const newestMs = timed(9, () => {
    store.read.readingBefore(key('silent'), quantity, startAt + hourMs, 0);
  });
  const curveMs = timed(5, () => curveOf(store, key('n1')));
  from = performance.now();
  store.packBefore(startAt + hourMs);
  const packUs = ((performance.now() - from) * 1000) / nextHour.length;
  const lateMs = timed(9, (i) => {
    commit(store, [{ ...silent, sensor: 'n1', at: startAt - 5 * hourMs + 31_007 + i * 7 }]);
    store.packBefore(startAt + hourMs);
  });
  return { commitUs, packUs, lateMs, dayMs, newestMs, curveMs };
}

/** A day of readings of so many sensors, three quantities each, and what one more hour costs. */
export function costWithSensors(sensors: number): Cost {
  const store = openStoreOnDisk();
  const flow = flowOf(sensors);
  // Six hours before are enough for what is looked up; more would only take time.
  store.hurriedly(() => {
    for (let hour = 0; hour < 6; hour++) {
      const readings = flow.hour(hour);
      store.write.commitReadings({ readings, refused: [], arrivedAt: flowStartAt });
      store.packBefore(flowStartAt + hour * hourMs);
    }
  });
  const cost = costAtEnd(store, flow, 6);
  store.remove();
  return cost;
}

/** So many days of one sensor with three quantities, and what one more hour costs. */
export function costWithDays(days: number): Cost {
  const store = openStoreOnDisk();
  const flow = flowOf(1, 1);
  const hours = days * 24;
  let readings: IncomingReading[] = [];
  store.hurriedly(() => {
    for (let hour = 0; hour < hours; hour++) {
      readings.push(...flow.hour(hour));
      if (hour % 24 < 23) continue;
      store.write.commitReadings({ readings, refused: [], arrivedAt: flowStartAt });
      store.packBefore(flowStartAt + hour * hourMs);
      readings = [];
    }
  });
  const cost = costAtEnd(store, flow, hours);
  store.remove();
  return cost;
}
