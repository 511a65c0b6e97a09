import { afterEach, describe, expect, it } from 'vitest';
import { openSite, type TestSite } from './site.ts';

const minute = 60_000;
const hour = 60 * minute;
const start = Date.UTC(2026, 3, 1);
const warmUntil = start + 40 * hour;
let site: TestSite | null = null;
afterEach(() => {
  site?.close();
  site = null;
});

/** Air of a shed that follows the day, with what a cheap sensor adds; in steps of 0.1. */
const airAt = (at: number, who: number) => ({
  tempC: 15 + 3 * Math.sin(at / (4 * hour)) + 0.1 * who + 0.06 * Math.sin(at / 47_000 + who),
  rh: 60 + 6 * Math.cos(at / (4 * hour)) + who + 0.5 * Math.sin(at / 31_000 + who),
});
const tenth = (value: number) => Math.round(value * 10) / 10;

type Change = (
  sensor: string,
  at: number,
  air: { tempC: number; rh: number },
) => { tempC: number; rh: number } | null;

/** A rack with sensors that have sent every five minutes for 40 h; a coat went on after 30. */
async function shed(names: string[]) {
  const one = openSite();
  site = one;
  const room = one.place('Shed', 'room');
  const rack = one.place('Rack', 'rack', room);
  const readingsAt = (at: number, change: Change) =>
    names.flatMap((sensor, who) => {
      const air = change(sensor, at, airAt(at, who));
      if (air === null) return [];
      return [
        { sensor, at, value: tenth(air.tempC) },
        { sensor, at, value: tenth(air.rh), quantity: 'relative-humidity' as const },
      ];
    });
  const times = (fromAt: number, toAt: number) =>
    Array.from({ length: (toAt - fromAt) / (5 * minute) }, (_, i) => fromAt + i * 5 * minute);
  const sendFrom = async (fromAt: number, toAt: number, change: Change = (_s, _a, air) => air) => {
    for (const at of times(fromAt, toAt)) {
      one.send(readingsAt(at, change), 0, at + 3000);
      await one.monitor.watchFaults(at + 4000);
    }
  };
  // What was sent before the daemon looks for the first time is read from the store.
  one.send(times(start, warmUntil).flatMap((at) => readingsAt(at, (_s, _a, air) => air)));
  for (const name of names) one.put(name, name.startsWith('room') ? room : rack);
  await one.monitor.watchFaults(warmUntil - minute);
  const batch = one.batch(rack);
  one.coat(batch, 0, start + 30 * hour);
  const open = () =>
    one.monitor
      .facts()
      .faults.filter(({ untilAt }) => untilAt === null)
      .map(({ kind, quantity }) => `${kind} ${quantity ?? ''}`.trim())
      .sort();
  const recoat = (now: number) => one.coatsAt(batch, now)[0]?.gates.recoat;
  return { one, room, rack, batch, sendFrom, open, recoat };
}

describe('faults found while readings come in', () => {
  it('are none in a shed that does well', async () => {
    const { open } = await shed(['a', 'b', 'room-1']);
    expect(open()).toEqual([]);
  });

  it('not possible: a broken wire’s −127, refused at the door, is named, counts for nothing, and clears', async () => {
    const { one, sendFrom, open, recoat } = await shed(['a', 'room-1', 'room-2']);
    const gone = (sensor: string, _at: number, air: { tempC: number; rh: number }) =>
      sensor === 'a' ? null : air;
    const brokeAt = warmUntil + minute;
    for (let i = 0; i < 12; i++) {
      const at = brokeAt + i * 5 * minute;
      one.monitor.heardImpossible('a', 'air-temperature', -127, at);
      one.monitor.heardImpossible('nobody', 'air-temperature', -127, at);
    }
    await sendFrom(warmUntil, warmUntil + hour, gone);
    expect(open()).toEqual(['out-of-physics air-temperature']);
    const texts = recoat(warmUntil + hour)?.reasons.map(({ text }) => text) ?? [];
    expect(texts.join()).toMatch(/Sensor a: .*It sent -127\./);
    await sendFrom(warmUntil + hour, warmUntil + 2 * hour);
    expect(open()).toEqual([]);
  });

  it('stuck: it stops counting from when it stuck, the gate says why, and it clears by itself', async () => {
    const { one, batch, sendFrom, open, recoat } = await shed(['a', 'room-1', 'room-2']);
    const stuckAt = warmUntil;
    const before = one.coatsAt(batch, stuckAt)[0]?.degreeHours ?? 0;
    const shown = airAt(stuckAt, 0);
    await sendFrom(stuckAt, stuckAt + 4 * hour, (sensor, _at, air) =>
      sensor === 'a' ? shown : air,
    );
    expect(open()).toEqual(['stuck air-temperature', 'stuck relative-humidity']);
    const now = stuckAt + 4 * hour;
    const reasons = recoat(now)?.reasons ?? [];
    expect(reasons.find(({ code }) => code === 'sensor-stuck')?.text).toMatch(
      /^Sensor a: stuck for 4 h\. It has shown [\d.]+ all the while\. Its readings are not counted since\.$/,
    );
    // The coldest of the room's sensors speaks for the rack instead; the line to it takes its start
    // from the last reading before.
    const during = (one.coatsAt(batch, now)[0]?.degreeHours ?? 0) - before;
    const truth = Array.from(
      { length: 48 },
      (_, i) => airAt(stuckAt + i * 5 * minute, 1).tempC - 5,
    );
    const expected = truth.reduce((sum, each) => sum + each / 12, 0);
    expect(Math.abs(during - expected)).toBeLessThan(0.8);
    await sendFrom(now, now + hour);
    expect(open()).toEqual([]);
    expect(recoat(now + hour)?.reasons.some(({ code }) => code === 'sensor-stuck')).toBe(false);
    const [stuck] = one.monitor.facts().faults;
    expect(stuck).toMatchObject({ kind: 'stuck' });
    expect(Math.abs((stuck?.fromAt ?? 0) - stuckAt)).toBeLessThanOrEqual(5 * minute);
    expect(stuck?.untilAt).toBeGreaterThanOrEqual(now);
    expect(stuck?.untilAt).toBeLessThanOrEqual(now + 10 * minute);
    // What was made on the way equals what is made anew.
    const streamed = one.coatsAt(batch, now + hour)[0]?.degreeHours ?? 0;
    one.restart();
    expect(one.coatsAt(batch, now + hour)[0]?.degreeHours).toBeCloseTo(streamed, 9);
  });

  it('stands through a restart, and is not raised a second time', async () => {
    const { one, sendFrom, open } = await shed(['a', 'room-1', 'room-2']);
    const shown = airAt(warmUntil, 0);
    const stuck: Change = (sensor, _at, air) => (sensor === 'a' ? shown : air);
    await sendFrom(warmUntil, warmUntil + 2 * hour, stuck);
    const found = one.monitor.facts().faults.length;
    one.restart();
    await one.monitor.watchFaults(warmUntil + 2 * hour);
    await sendFrom(warmUntil + 2 * hour, warmUntil + 3 * hour, stuck);
    expect(open()).toEqual(['stuck air-temperature', 'stuck relative-humidity']);
    expect(one.monitor.facts().faults).toHaveLength(found);
    await sendFrom(warmUntil + 3 * hour, warmUntil + 3.5 * hour);
    expect(open()).toEqual([]);
  });

  it('humidity pinned at 100: temperature counts on, and brushing waits, for nobody knows how damp it is', async () => {
    const { one, rack, batch, sendFrom, open, recoat } = await shed(['a']);
    const before = one.coatsAt(batch, warmUntil)[0]?.degreeHours ?? 0;
    await sendFrom(warmUntil, warmUntil + 5 * hour, (_s, _a, air) => ({ ...air, rh: 100 }));
    const now = warmUntil + 5 * hour;
    expect(open()).toEqual(['pinned-humidity relative-humidity']);
    expect(one.monitor.air(rack, now)).toMatchObject({ rhPercent: null });
    expect(one.monitor.air(rack, now).tempC).not.toBeNull();
    expect(one.coatsAt(batch, now)[0]?.degreeHours).toBeGreaterThan(before + 20);
    expect(recoat(now)?.reasons.some(({ code }) => code === 'sensor-pinned-humidity')).toBe(true);
  });

  it('silent, within five of its own intervals, and heard again', async () => {
    const { one, sendFrom, open } = await shed(['a', 'b']);
    await sendFrom(warmUntil, warmUntil + 30 * minute, (sensor, _at, air) =>
      sensor === 'b' ? null : air,
    );
    expect(open()).toEqual(['silent']);
    const [silent] = one.monitor.facts().faults;
    expect(silent?.fromAt).toBe(warmUntil - 5 * minute);
    await sendFrom(warmUntil + 30 * minute, warmUntil + 40 * minute);
    expect(open()).toEqual([]);
  });

  it('drift: the one that left the others is named, and the others speak', async () => {
    const { one, rack, sendFrom, open } = await shed(['a', 'b', 'c']);
    await sendFrom(warmUntil, warmUntil + 5 * hour, (sensor, at, air) =>
      sensor === 'b' ? { ...air, tempC: air.tempC - (at - warmUntil) / hour } : air,
    );
    expect(open()).toEqual(['drift air-temperature']);
    const now = warmUntil + 5 * hour;
    // Without it the coldest is near the truth; with it, it would be 5 K lower.
    expect(one.monitor.air(rack, now).tempC ?? 0).toBeGreaterThan(airAt(now, 0).tempC - 1);
  });

  it('a calibration begins the comparison anew', async () => {
    const { one, sendFrom, open } = await shed(['a', 'b', 'c']);
    const off: Change = (sensor, _at, air) =>
      sensor === 'b' ? { ...air, tempC: air.tempC - 5 } : air;
    await sendFrom(warmUntil, warmUntil + 2 * hour, off);
    expect(open()).toHaveLength(1);
    const sensorKey = one.reader.sensorById('b')?.key ?? 0;
    const how = { kind: 'offset' as const, add: 5 };
    const common = { sensorKey, quantity: 'air-temperature' as const, note: null };
    one.writer.createCalibrations([{ ...common, id: one.newId(), fromAt: warmUntil, how }], 0);
    one.monitor.factsChanged();
    await sendFrom(warmUntil + 2 * hour, warmUntil + 3 * hour, off);
    expect(open()).toEqual([]);
  });
});
