import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keptRefused } from '../../daemon/store/refused.ts';
import { day1, group, hourMs, place, reading } from './site-of-facts.ts';
import { type OpenStore, storeSides, timeUnknown } from './store-sides.ts';

const minute = 60_000;

describe.each(storeSides)('readings, $name', ({ open }) => {
  let store: OpenStore;
  beforeEach(async () => {
    store = await open();
  });
  afterEach(() => store.close());

  const keyOf = (id: string) => store.read.sensorById(id)?.key ?? -1;
  const kept = (id: string) =>
    store.read.readingsBetween(keyOf(id), 'air-temperature', 0, Number.MAX_SAFE_INTEGER);

  it('keeps the first reading of a moment and counts a repetition', async () => {
    const { write } = store;
    const first = await write.commitReadings(group(reading('n1', day1, 18.25)));
    const again = await write.commitReadings(
      group(reading('n1', day1, 99), reading('n1', day1 + minute, 18.5)),
    );
    expect(first).toMatchObject({ duplicates: 0, newSensors: ['n1'] });
    expect(again).toMatchObject({ duplicates: 1, newSensors: [] });
    expect(again.fresh.map((one) => one.raw)).toEqual([18.5]);
    expect(kept('n1').map((one) => one.raw)).toEqual([18.25, 18.5]);
  });

  it('counts a repetition within one group too', async () => {
    const committed = await store.write.commitReadings(
      group(reading('n1', day1, 18), reading('n1', day1, 19)),
    );
    expect(committed).toMatchObject({ duplicates: 1 });
    expect(kept('n1').map((one) => one.raw)).toEqual([18]);
  });

  it('keeps two quantities of one moment apart', async () => {
    const committed = await store.write.commitReadings(
      group(reading('n1', day1, 18), reading('n1', day1, 60, 'relative-humidity')),
    );
    expect(committed.fresh).toHaveLength(2);
  });

  it('makes a sensor in its first reading’s transaction, or not at all', async () => {
    const broken = { ...reading('n2', day1, 18), at: day1 + 0.5 };
    await expect(
      store.write.commitReadings(group(reading('n1', day1, 18), broken)),
    ).rejects.toThrow();
    expect(store.read.sensors()).toEqual([]);
    await store.write.commitReadings(group(reading('n1', day1, 18)));
    expect(store.read.sensors()).toMatchObject([{ id: 'n1', name: null, firstSeenAt: day1 }]);
    expect(kept('n1')).toHaveLength(1);
  });

  it('gives a reading back bit for bit', async () => {
    const raw = 0.1 + 0.2;
    await store.write.commitReadings(group(reading('n1', day1 + 1, raw, 'wood-resistance', 5)));
    const back = store.read.readingBefore(keyOf('n1'), 'wood-resistance', day1 + 2, 0);
    expect(back).toEqual({
      sensorKey: keyOf('n1'),
      quantity: 'wood-resistance',
      at: day1 + 1,
      raw,
      flags: 5,
    });
  });

  it('passes over readings whose time is not known when asked for the neighbour', async () => {
    await store.write.commitReadings(
      group(
        reading('n1', day1, 18),
        reading('n1', day1 + minute, 19, 'air-temperature', timeUnknown),
        reading('n1', day1 + 2 * minute, 20),
      ),
    );
    const { readingBefore, readingAfter } = store.read;
    const key = keyOf('n1');
    expect(readingBefore(key, 'air-temperature', day1 + 2 * minute, timeUnknown)?.raw).toBe(18);
    expect(readingBefore(key, 'air-temperature', day1 + 2 * minute, 0)?.raw).toBe(19);
    expect(readingAfter(key, 'air-temperature', day1, timeUnknown)?.raw).toBe(20);
  });

  it('stops at the limit that was asked for', async () => {
    await store.write.commitReadings(
      group(...[0, 1, 2, 3].map((i) => reading('n1', day1 + i * minute, i))),
    );
    const some = store.read.readingsBetween(keyOf('n1'), 'air-temperature', day1, day1 + hourMs, 2);
    expect(some.map((one) => one.raw)).toEqual([0, 1]);
  });

  it('keeps the newest refused messages, and not more than fit', async () => {
    const refused = Array.from({ length: keptRefused + 20 }, (_, i) => ({
      at: day1 + i,
      topic: 'boardcure/shed/sensor/n1/air-temperature',
      code: 'BC_PAYLOAD_NOT_NUMBER',
      detail: `message ${i}`,
      payloadStart: 'warm',
      payloadBytes: 4,
    }));
    await store.write.commitReadings({
      readings: [],
      refused: refused.slice(0, 30),
      arrivedAt: day1,
    });
    await store.write.commitReadings({ readings: [], refused: refused.slice(30), arrivedAt: day1 });
    const shown = store.read.refused();
    expect(shown).toHaveLength(keptRefused);
    expect(shown[0]?.detail).toBe(`message ${keptRefused + 19}`);
    expect(shown.at(-1)?.detail).toBe('message 20');
  });

  describe('late ones', () => {
    const outdoors = place({ name: 'Yard', kind: 'outdoors' });
    const room = place({ name: 'Shed', kind: 'room', within: outdoors.id });
    const rack = place({ name: 'Rack', kind: 'rack', within: room.id });
    const wall = place({ name: 'West wall', kind: 'wall', within: outdoors.id });

    beforeEach(async () => {
      const { write } = store;
      for (const one of [outdoors, room, rack, wall]) await write.createPlace(one);
      await write.commitReadings(group(reading('room', day1, 18), reading('yard', day1, 9)));
      for (const [sensor, at] of [
        ['room', room],
        ['yard', outdoors],
      ] as const) {
        await write.placeSensor(
          { sensorKey: keyOf(sensor), placeId: at.id, fromAt: null },
          sensor,
          day1,
        );
      }
      await settle();
      await write.commitReadings(
        group(reading('room', day1 + 5 * hourMs, 18), reading('yard', day1 + 5 * hourMs, 9)),
      );
    });

    const settle = () =>
      store.write.saveHours(
        [],
        store.read.dirtySpans().map((span) => span.rank),
      );
    const marked = () =>
      store.read
        .dirtySpans()
        .map(({ placeId, fromAt, toAt }) => ({ placeId, fromAt, toAt }))
        .sort((a, b) => a.placeId.localeCompare(b.placeId) || a.fromAt - b.fromAt);
    const spans = (places: { id: string }[], fromAt: number, toAt: number) =>
      places
        .map(({ id }) => ({ placeId: id, fromAt, toAt }))
        .sort((a, b) => a.placeId.localeCompare(b.placeId));

    it('are not what comes in order', () => {
      expect(marked()).toEqual([]);
    });

    it('mark the room and the rack in it, in the transaction that keeps them', async () => {
      const at = day1 + hourMs;
      const committed = await store.write.commitReadings(group(reading('room', at, 20)));
      expect(committed.dirtied).toBe(true);
      expect(marked()).toEqual(spans([room, rack], at, at));
    });

    it('mark nothing that is not kept: the group stands or falls whole', async () => {
      const late = reading('room', day1 + hourMs, 20);
      const broken = reading('room', day1 + 0.5, 20);
      await expect(store.write.commitReadings(group(late, broken))).rejects.toThrow();
      expect(marked()).toEqual([]);
      expect(kept('room')).toHaveLength(2);
    });

    it('of the yard mark the wall outside, but neither room nor rack', async () => {
      const at = day1 + hourMs;
      await store.write.commitReadings(group(reading('yard', at, 10)));
      expect(marked()).toEqual(spans([outdoors, wall], at, at));
    });

    it('mark nothing when they were there already', async () => {
      const again = await store.write.commitReadings(group(reading('room', day1, 50)));
      expect(again).toMatchObject({ dirtied: false, duplicates: 1 });
      expect(marked()).toEqual([]);
    });

    it('mark nothing when they are not temperatures, or when their time is not known', async () => {
      const committed = await store.write.commitReadings(
        group(
          reading('room', day1 + hourMs, 60, 'relative-humidity'),
          reading('room', day1 + hourMs, 20, 'air-temperature', timeUnknown),
        ),
      );
      expect(committed.dirtied).toBe(false);
    });

    it('of one hour are one mark, those far apart are two', async () => {
      await store.write.commitReadings(
        group(
          reading('room', day1 + hourMs + 20 * minute, 20),
          reading('room', day1 + hourMs, 20),
          reading('room', day1 + 4 * hourMs, 20),
        ),
      );
      expect(marked()).toEqual(
        [
          ...spans([room, rack], day1 + hourMs, day1 + hourMs + 20 * minute),
          ...spans([room, rack], day1 + 4 * hourMs, day1 + 4 * hourMs),
        ].sort((a, b) => a.placeId.localeCompare(b.placeId) || a.fromAt - b.fromAt),
      );
    });

    it('are late also when only another sensor of the place was later', async () => {
      const { write } = store;
      await write.commitReadings(group(reading('second', day1, 19)));
      const stay = { sensorKey: keyOf('second'), placeId: room.id, fromAt: null };
      await write.placeSensor(stay, 'second', day1);
      await settle();
      const committed = await write.commitReadings(group(reading('second', day1 + hourMs, 19)));
      expect(committed.dirtied).toBe(true);
    });

    it('are late also when nothing is remembered of what came before', async () => {
      // What the committer knows of the newest readings comes from the file, not from this run.
      await store.write.createPlace(place({ name: 'Loft' }));
      const committed = await store.write.commitReadings(group(reading('room', day1 + hourMs, 20)));
      expect(committed.dirtied).toBe(true);
    });
  });

  it('marks what a first placement makes count, from the first reading to the last', async () => {
    const { write } = store;
    const room = place();
    await write.createPlace(room);
    await write.commitReadings(
      group(reading('n1', day1, 18), reading('n1', day1 + 9 * hourMs, 18)),
    );
    const stay = { sensorKey: keyOf('n1'), placeId: room.id, fromAt: null };
    await write.placeSensor(stay, 'n1', day1);
    expect(store.read.dirtySpans()).toMatchObject([
      { placeId: room.id, fromAt: day1, toAt: day1 + 9 * hourMs },
    ]);
    expect(store.read.sensorStays()).toEqual([stay]);
  });

  it('marks both places from the moment of a move that is told later', async () => {
    const { write } = store;
    const [here, there] = [place(), place()];
    for (const one of [here, there]) await write.createPlace(one);
    await write.commitReadings(
      group(reading('n1', day1, 18), reading('n1', day1 + 9 * hourMs, 18)),
    );
    const sensorKey = keyOf('n1');
    await write.placeSensor({ sensorKey, placeId: here.id, fromAt: null }, 'n1', day1);
    await write.saveHours(
      [],
      store.read.dirtySpans().map((span) => span.rank),
    );
    const movedAt = day1 + 3 * hourMs;
    await write.placeSensor({ sensorKey, placeId: there.id, fromAt: movedAt }, 'n1', day1);
    const marked = store.read.dirtySpans();
    expect(marked.map((span) => span.placeId).sort()).toEqual([here.id, there.id].sort());
    for (const span of marked) {
      expect(span).toMatchObject({ fromAt: movedAt, toAt: day1 + 9 * hourMs });
    }
  });

  it('replaces a stay that began at the same moment', async () => {
    const { write } = store;
    const [here, there] = [place(), place()];
    for (const one of [here, there]) await write.createPlace(one);
    await write.commitReadings(group(reading('n1', day1, 18)));
    const sensorKey = keyOf('n1');
    for (const placeId of [here.id, there.id]) {
      await write.placeSensor({ sensorKey, placeId, fromAt: null }, 'n1', day1);
    }
    expect(store.read.sensorStays()).toEqual([{ sensorKey, placeId: there.id, fromAt: null }]);
  });
});
