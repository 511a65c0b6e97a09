import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { day1, group, hourMs, place, reading } from './site-of-facts.ts';
import { type OpenStore, storeSides, timeUnknown } from './store-sides.ts';

const minute = 60_000;

describe.each(storeSides)('hours that readings and placements change, $name', ({ open }) => {
  let store: OpenStore;
  beforeEach(async () => {
    store = await open();
  });
  afterEach(() => store.close());

  const keyOf = (id: string) => store.read.sensorById(id)?.key ?? -1;
  const kept = (id: string) =>
    store.read.readingsBetween(keyOf(id), 'air-temperature', 0, Number.MAX_SAFE_INTEGER);

  describe('late readings', () => {
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
