import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import {
  type PlainDoubt,
  type PlainReading,
  type PlainStay,
  plainDegreeHours,
} from './independent-sum.ts';
import { openSite, type TestSite } from './site.ts';

const hour = 3_600_000;
const start = Date.UTC(2026, 3, 1, 6, 20);
const rules = { datumC: 5, maxGapHours: 3 };
let site: TestSite | null = null;

afterEach(() => {
  site?.close();
  site = null;
});

const close = (value: number, expected: number) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(expected)));

describe('the degree-hours of a coat', () => {
  it('are 15 °C·h for each hour at a steady 20 °C, split anywhere', () => {
    site = openSite();
    const rack = site.place('Rack', 'rack');
    site.send([{ sensor: 'a', at: start, value: 20 }]);
    site.put('a', rack);
    const batch = site.batch(rack);
    site.coat(batch, 0, start + 10 * 60_000);
    for (let i = 1; i <= 48; i++) {
      site.send([{ sensor: 'a', at: start + i * hour + (i % 7) * 1000, value: 20 }]);
    }
    const end = start + 48 * hour + 6000;
    const [coat] = site.coatsAt(batch, end);
    close(coat?.degreeHours ?? 0, (15 * (end - start - 10 * 60_000)) / hour);
    close(coat?.equivalentHours ?? 0, (end - start - 10 * 60_000) / hour);
    expect(coat?.gapHours).toBeCloseTo(0, 9);
  });

  it('gain nothing over a gap but in the high sum', () => {
    site = openSite();
    const rack = site.place('Rack', 'rack');
    site.send([{ sensor: 'a', at: start, value: 20 }]);
    site.put('a', rack);
    const batch = site.batch(rack);
    site.coat(batch, 0, start);
    site.send([{ sensor: 'a', at: start + 2 * hour, value: 20 }]);
    site.send([{ sensor: 'a', at: start + 12 * hour, value: 10 }]);
    const [coat] = site.coatsAt(batch, start + 12 * hour);
    close(coat?.degreeHoursLow ?? 0, 30);
    close(coat?.degreeHoursHigh ?? 0, 30 + 100);
    close(coat?.gapHours ?? 0, 10);
  });

  it('follow the batch from place to place', () => {
    site = openSite();
    const warm = site.place('Warm rack', 'rack');
    const cold = site.place('Cold rack', 'rack');
    site.send([
      { sensor: 'w', at: start, value: 20 },
      { sensor: 'c', at: start, value: 10 },
    ]);
    site.put('w', warm);
    site.put('c', cold);
    const batch = site.batch(warm);
    site.coat(batch, 0, start);
    for (let i = 1; i <= 10; i++) {
      site.send([
        { sensor: 'w', at: start + i * hour, value: 20 },
        { sensor: 'c', at: start + i * hour, value: 10 },
      ]);
    }
    site.move(batch, cold, start + 4.5 * hour);
    const [coat] = site.coatsAt(batch, start + 10 * hour);
    close(coat?.degreeHours ?? 0, 4.5 * 15 + 5.5 * 5);
  });

  it('stand still for a coat once the next one is on', () => {
    site = openSite();
    const rack = site.place('Rack', 'rack');
    site.send([{ sensor: 'a', at: start, value: 20 }]);
    site.put('a', rack);
    const batch = site.batch(rack);
    site.coat(batch, 0, start);
    for (let i = 1; i <= 8; i++) site.send([{ sensor: 'a', at: start + i * hour, value: 20 }]);
    site.coat(batch, 1, start + 5.25 * hour);
    const [first, second] = site.coatsAt(batch, start + 8 * hour);
    close(first?.degreeHours ?? 0, 5.25 * 15);
    close(second?.degreeHours ?? 0, 2.75 * 15);
  });

  it('leave out readings whose time is not known', () => {
    site = openSite();
    const rack = site.place('Rack', 'rack');
    site.send([{ sensor: 'a', at: start, value: 20 }]);
    site.put('a', rack);
    const batch = site.batch(rack);
    site.coat(batch, 0, start);
    site.send([{ sensor: 'a', at: start + hour, value: 40 }], 2);
    site.send([{ sensor: 'a', at: start + 2 * hour, value: 20 }]);
    const [coat] = site.coatsAt(batch, start + 2 * hour);
    close(coat?.degreeHours ?? 0, 30);
  });

  it('forget what a sensor said that turns out to have hung elsewhere', () => {
    site = openSite();
    const rack = site.place('Rack', 'rack');
    const other = site.place('Yard', 'outdoors');
    site.send([{ sensor: 'a', at: start, value: 20 }]);
    site.put('a', rack);
    const batch = site.batch(rack);
    site.coat(batch, 0, start);
    for (let i = 1; i <= 30; i++) site.send([{ sensor: 'a', at: start + i * hour, value: 20 }]);
    close(site.coatsAt(batch, start + 30 * hour)[0]?.degreeHours ?? 0, 450);
    site.put('a', other, start + 10.5 * hour);
    close(site.coatsAt(batch, start + 30 * hour)[0]?.degreeHours ?? 0, 150);
    site.restart();
    close(site.coatsAt(batch, start + 30 * hour)[0]?.degreeHours ?? 0, 150);
    site.send([{ sensor: 'a', at: start + 31 * hour, value: 20 }]);
    close(site.coatsAt(batch, start + 31 * hour)[0]?.degreeHours ?? 0, 150);
  });
});

const minute = 60_000;
const reading = fc.record({
  sensor: fc.constantFrom('own-1', 'own-2', 'room-1'),
  at: fc.integer({ min: 0, max: 60 * 24 }).map((minutes) => start + minutes * minute * 2),
  value: fc.integer({ min: -40, max: 300 }).map((tenths) => tenths / 10),
});
const act = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.record({
      kind: fc.constant('send' as const),
      readings: fc.array(reading, { minLength: 1, maxLength: 12 }),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constantFrom('restart' as const, 'start-over' as const) }),
  },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant('look' as const) }) },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('put' as const),
      sensor: fc.constantFrom('own-1', 'own-2', 'room-1'),
      where: fc.constantFrom('rack' as const, 'room' as const, 'yard' as const, null),
      fromMinutes: fc.integer({ min: 0, max: 60 * 48 }),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constantFrom('calibrate' as const, 'correct' as const, 'withdraw' as const),
      sensor: fc.constantFrom('own-1', 'own-2', 'room-1'),
      fromMinutes: fc.option(fc.integer({ min: 0, max: 60 * 48 })),
      gain: fc.constantFrom(1, 0.9, 1.1),
      add: fc.integer({ min: -30, max: 30 }).map((tenths) => tenths / 10),
      which: fc.nat(),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constantFrom('doubt' as const, 'trust' as const),
      sensor: fc.constantFrom('own-1', 'own-2', 'room-1'),
      fromMinutes: fc.integer({ min: 0, max: 60 * 48 }),
      forMinutes: fc.option(fc.integer({ min: 0, max: 60 * 24 })),
      which: fc.nat(),
    }),
  },
);

interface PlainCalibration {
  id: string;
  sensor: string;
  fromAt: number | null;
  gain: number;
  add: number;
  order: number;
}

/** Readings as the calibrations of their time correct them, looked up the slow way. */
function plainlyCorrected(
  readings: readonly PlainReading[],
  calibrations: readonly PlainCalibration[],
): PlainReading[] {
  return readings.map((one) => {
    const inForce = calibrations
      .filter((c) => c.sensor === one.sensor && (c.fromAt ?? -1) <= one.at)
      .sort((a, b) => (a.fromAt ?? -1) - (b.fromAt ?? -1) || a.order - b.order)
      .at(-1);
    return inForce ? { ...one, value: inForce.gain * one.value + inForce.add } : one;
  });
}

describe('whatever the order in which readings, corrections and restarts come', () => {
  it('the sum equals an independent integration of what is stored', () => {
    fc.assert(
      fc.property(
        fc.array(act, { minLength: 3, maxLength: 25 }),
        fc.integer({ min: 0, max: 600 }),
        (acts, coatMinutes) => {
          const one = openSite();
          try {
            const yard = one.place('Yard', 'outdoors');
            const room = one.place('Room', 'room', yard);
            const rack = one.place('Rack', 'rack', room);
            const idOf = { rack, room, yard };
            const levelOf = { rack: 0, room: 1, yard: null };
            const batch = one.batch(rack);
            const finishedAt = start + coatMinutes * minute;
            const end = start + 60 * 24 * 2 * minute;
            const readings: PlainReading[] = [];
            const stays: PlainStay[] = [];
            const calibrations: PlainCalibration[] = [];
            const doubts: (PlainDoubt & { id: string })[] = [];
            let order = 0;
            const keyOf = (sensor: string) => one.reader.sensorById(sensor)?.key ?? 0;
            const calibrate = (plain: PlainCalibration) => ({
              id: plain.id,
              sensorKey: keyOf(plain.sensor),
              quantity: 'air-temperature' as const,
              fromAt: plain.fromAt,
              how: {
                kind: 'two-point' as const,
                points: [0, 20].map((shown) => ({
                  shown,
                  actual: plain.gain * shown + plain.add,
                })),
              },
              note: null,
            });
            const place = (
              sensor: string,
              where: keyof typeof idOf | null,
              fromAt: number | null,
            ) => {
              one.put(sensor, where === null ? null : idOf[where], fromAt);
              const stay = {
                sensor,
                level: where === null ? null : levelOf[where],
                fromAt: fromAt ?? Number.NEGATIVE_INFINITY,
              };
              const same = stays.findIndex((s) => s.sensor === sensor && s.fromAt === stay.fromAt);
              if (same >= 0) stays.splice(same, 1);
              stays.push(stay);
            };
            const first: PlainReading[] = [
              { sensor: 'own-1', at: start, value: 18 },
              { sensor: 'own-2', at: start + minute, value: 17 },
              { sensor: 'room-1', at: start + 3 * minute, value: 21 },
            ];
            one.send(first);
            readings.push(...first);
            place('own-1', 'rack', null);
            place('own-2', 'rack', null);
            place('room-1', 'room', null);
            one.coat(batch, 0, finishedAt);
            const check = () => {
              const [coat] = one.coatsAt(batch, end);
              const plain = plainDegreeHours(
                plainlyCorrected(readings, calibrations),
                stays,
                finishedAt,
                end,
                rules,
                doubts,
              );
              close(coat?.degreeHoursLow ?? -1, plain.low);
              close(coat?.degreeHoursHigh ?? -1, plain.high);
              close(coat?.coveredHours ?? -1, plain.coveredHours);
            };
            for (const step of acts) {
              if (step.kind === 'send') {
                one.send(step.readings);
                readings.push(...step.readings);
              } else if (step.kind === 'restart') one.restart();
              else if (step.kind === 'start-over') one.monitor.startOver();
              else if (step.kind === 'put') {
                place(step.sensor, step.where, start + step.fromMinutes * minute);
              } else if (step.kind === 'calibrate') {
                const { sensor, gain, add, fromMinutes } = step;
                const fromAt = fromMinutes === null ? null : start + fromMinutes * minute;
                const plain = { id: one.newId(), sensor, gain, add, fromAt, order: order++ };
                calibrations.push(plain);
                one.writer.createCalibrations([calibrate(plain)], 0);
                one.monitor.factsChanged();
              } else if (step.kind === 'correct' || step.kind === 'withdraw') {
                const at = calibrations.length === 0 ? -1 : step.which % calibrations.length;
                const [before] = at < 0 ? [] : calibrations.splice(at, 1);
                if (!before) continue;
                if (step.kind === 'withdraw') one.writer.withdrawCalibration(before.id, 1);
                else {
                  const plain = { ...before, gain: step.gain, add: step.add, order: order++ };
                  calibrations.push(plain);
                  one.writer.changeCalibration(calibrate(plain), 1);
                }
                one.monitor.factsChanged();
              } else if (step.kind === 'doubt') {
                const fromAt = start + step.fromMinutes * minute;
                const untilAt = step.forMinutes === null ? null : fromAt + step.forMinutes * minute;
                const doubt = { id: one.newId(), sensor: step.sensor, fromAt };
                doubts.push({ ...doubt, untilAt: untilAt ?? Number.POSITIVE_INFINITY });
                one.doubt({ ...doubt, untilAt });
              } else if (step.kind === 'trust') {
                const open = doubts.filter((d) => d.untilAt === Number.POSITIVE_INFINITY);
                const doubt = open[step.which % Math.max(1, open.length)];
                if (!doubt) continue;
                doubt.untilAt = doubt.fromAt + (step.forMinutes ?? 90) * minute;
                one.trust(doubt.id, doubt.untilAt);
              } else check();
            }
            check();
            one.restart();
            check();
          } finally {
            one.close();
          }
        },
      ),
      { numRuns: 40 },
    );
  }, 240_000);
});
