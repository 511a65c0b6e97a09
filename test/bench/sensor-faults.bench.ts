import { existsSync } from 'node:fs';
import { bench, describe } from 'vitest';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { faultFinder } from '../../daemon/rules/fault/fault-finder.ts';
import { RECORDED_AIR } from '../house/needs.ts';
import { seededRandom } from '../science/seeded-random.ts';
import { type CheapSensor, typicalSensor } from './cheap-sensor.ts';
import { type FaultRecipe, recipes } from './injected-faults.ts';
import { plainTable } from './plain-table.ts';
import { type RecordedSeries, recordedRooms } from './recorded-series.ts';
import { dayMs, type PlaceUnderTest, watchSite } from './sensor-faults.ts';

const minute = 60_000;
const hour = 60 * minute;

const kindOf = (name: string) => (name.startsWith('outdoors') ? 'outdoors' : 'room');

function place(record: RecordedSeries, sensors: readonly CheapSensor[]): PlaceUnderTest {
  return { name: record.name, kind: kindOf(record.name), record, sensors };
}

const trio = (seed: number, everyMs: number) =>
  [0, 1, 2].map((i) => typicalSensor(seed + i, everyMs));
const coarse = (sensor: CheapSensor, stepK: number): CheapSensor => ({
  ...sensor,
  ...{ noiseK: 0, noisePercent: 0, stepK, stepPercent: 10 * stepK },
});

const spanOf = ({ readings }: RecordedSeries) =>
  [readings[0]?.at ?? 0, readings.at(-1)?.at ?? 0] as const;

/** Faults that are raised where none was put in. */
function falseAlarms(records: readonly RecordedSeries[]): string {
  const kinds = {
    'three together, every 5 min': (seed: number) => trio(seed, 5 * minute),
    'alone, every minute': (seed: number) => [typicalSensor(seed, minute)],
    'alone, every 10 min': (seed: number) => [typicalSensor(seed, 10 * minute)],
    'three, no noise, 0.1 K and 1 %': (seed: number) =>
      trio(seed, 5 * minute).map((one) => coarse(one, 0.1)),
    'three, no noise, 0.5 K and 5 %': (seed: number) =>
      trio(seed, 5 * minute).map((one) => coarse(one, 0.5)),
  };
  const lines: string[][] = [];
  let all = 0;
  let months = 0;
  for (const [words, make] of Object.entries(kinds)) {
    for (const [i, record] of records.entries()) {
      const [from, to] = spanOf(record);
      const { raised, sensorMonths } = watchSite([place(record, make(100 * i + 7))], from, to);
      // A recording with gaps really is silent there.
      const wrong = raised.filter(({ kind }) => kind !== 'silent');
      all += wrong.length;
      months += sensorMonths;
      const byKind = [...new Set(wrong.map(({ kind }) => kind))]
        .map((kind) => `${kind} ${wrong.filter((one) => one.kind === kind).length}`)
        .join(', ');
      const silent = raised.length - wrong.length;
      lines.push([
        `${record.name}; ${words}`,
        sensorMonths.toFixed(1),
        String(wrong.length),
        (wrong.length / sensorMonths).toFixed(2),
        String(silent),
        byKind,
      ]);
      if (process.env.BOARDCURE_BENCH_SAY)
        for (const one of wrong.slice(0, 6))
          process.stdout.write(
            `${JSON.stringify({ ...one, at: new Date(one.at).toISOString(), from: new Date(one.fromAt).toISOString() })}\n`,
          );
    }
  }
  lines.push(['all', months.toFixed(1), String(all), (all / months).toFixed(2), '', '']);
  return plainTable(
    ['clean recordings', 'sensor-months', 'false', 'a sensor-month', 'silent', 'which'],
    lines,
  );
}

interface Outcome {
  delaysMs: number[];
  missed: number;
  besides: number;
}

/** Puts a fault into a recording at many moments, and measures until it is named. */
function inject(recipe: FaultRecipe, records: readonly RecordedSeries[], everyMs: number): Outcome {
  const outcome: Outcome = { delaysMs: [], missed: 0, besides: 0 };
  const random = seededRandom(41);
  const rooms = recipe.pair ? records.slice(0, 3) : records;
  for (const [i, record] of rooms.entries()) {
    const [start, end] = spanOf(record);
    const warmMs = 2.5 * dayMs;
    const afterMs = 12 * hour;
    for (let n = 0; n < injections; n++) {
      const from = start + random() * Math.max(0, end - start - warmMs - afterMs);
      const at = from + warmMs + random() * 6 * hour;
      const other = recipe.pair ? rooms[(i + 1) % rooms.length] : undefined;
      const seed = 1000 * i + 10 * n;
      const make = recipe.needs === 3 ? trio : (s: number, e: number) => trio(s, e).slice(0, 1);
      const places = [
        place(record, make(seed, everyMs)),
        ...(other ? [place(other, make(seed + 5, everyMs))] : []),
      ];
      const on = recipe.pair ? places.map(({ name }) => `${name}/0`) : [`${record.name}/0`];
      const fault = {
        kind: recipe.found[0] ?? 'stuck',
        on,
        fromAt: at,
        change: recipe.make(seed, at),
      };
      const { raised } = watchSite(places, from, Math.min(end, at + afterMs), fault);
      const named = raised.filter(
        (one) => one.at >= at && on.includes(one.sensor) && recipe.found.includes(one.kind),
      );
      const first = named[0];
      if (first) outcome.delaysMs.push(Math.max(0, first.at - at - (recipe.mattersAfterMs ?? 0)));
      else outcome.missed++;
      outcome.besides += raised.filter((one) => one.at >= at && !on.includes(one.sensor)).length;
    }
  }
  return outcome;
}

const injections = Number(process.env.BOARDCURE_BENCH_INJECTIONS ?? 8);

function delays(records: readonly RecordedSeries[]): string {
  const lines: string[][] = [];
  for (const everyMs of [minute, 5 * minute]) {
    for (const recipe of recipes) {
      const { delaysMs, missed, besides } = inject(recipe, records, everyMs);
      const sorted = delaysMs.toSorted((a, b) => a - b);
      const at = (share: number) =>
        sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
      const words = (ms: number | undefined) =>
        ms === undefined
          ? '–'
          : recipe.name === 'silent'
            ? `${(ms / everyMs).toFixed(1)} rhythms`
            : `${Math.round(ms / minute)} min`;
      const late = sorted.filter(
        (ms) => ms > (recipe.name === 'silent' ? 5 * everyMs : 2 * hour),
      ).length;
      lines.push([
        `${recipe.name}; every ${everyMs / minute} min`,
        String(sorted.length + missed),
        words(at(0.5)),
        words(at(0.95)),
        String(late),
        String(missed),
        String(besides),
      ]);
    }
  }
  return plainTable(
    ['fault put in', 'times', 'median', '95 %', 'later than the aim', 'missed', 'blamed others'],
    lines,
  );
}

function print(): void {
  if (!existsSync(RECORDED_AIR)) {
    process.stderr.write(`\n*** NOT TESTED: no recordings in ${RECORDED_AIR}\n`);
    return;
  }
  const records = recordedRooms();
  if (injections > 0) process.stdout.write(`\n${delays(records)}\n`);
  process.stdout.write(`\n${falseAlarms(records)}\n`);
}

print();

const surroundings = { placeId: 'p', kind: 'room' as const, name: 's' };
/** A finder that has heard a day of so many sensors. */
function warm(count: number) {
  const about = Array.from({ length: Math.min(count, 4) }, (_, i) => i);
  const finder = faultFinder((key) => ({ ...surroundings, about: about.filter((i) => i !== key) }));
  let at = 0;
  const take = () => {
    at += minute;
    for (let sensorKey = 0; sensorKey < count; sensorKey++) {
      const raw = 18 + Math.sin(at / hour + sensorKey) + (at % 7) / 10;
      const quantity: Quantity = 'air-temperature';
      finder.take({ sensorKey, quantity, at, raw, value: raw, heardAt: at });
    }
  };
  for (let i = 0; i < 1440; i++) take();
  return take;
}

describe('cost of hearing 100 readings', () => {
  const ten = warm(10);
  const hundred = warm(100);
  bench('10 sensors, ten times', () => {
    for (let i = 0; i < 10; i++) ten();
  });
  bench('100 sensors, once', () => hundred());
});
