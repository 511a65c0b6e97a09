import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openForWriting } from '../../daemon/store/open.ts';
import { keptRefused } from '../../daemon/store/refused.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { sentence } from '../../daemon/wording/english.ts';
import { day1, group, hourMs, reading } from './site-of-facts.ts';
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

  it('keeps why a message was refused as a sentence, and shows older ones by their text', async () => {
    const refused = { at: day1, topic: 'a/b', payloadStart: '', payloadBytes: 0 };
    const said = sentence('payload-empty', {});
    const older = { ...refused, code: 'payload-empty', detail: 'It was empty.' };
    const newer = { ...refused, code: 'payload-empty', detail: said.text, detailSaid: said };
    await store.write.commitReadings({ readings: [], refused: [older, newer], arrivedAt: day1 });
    expect(store.read.refused()).toEqual([newer, older]);
  });
});

describe('a flood of sensors with invented names', () => {
  it('is refused beyond the number allowed, and kept for a look; known ones go on', () => {
    const db = openForWriting(':memory:');
    const write = storeWriter(db, timeUnknown, 3);
    const names = ['a', 'b', 'c', 'd', 'e'];
    const committed = write.commitReadings(group(...names.map((name) => reading(name, day1, 18))));
    expect(committed).toMatchObject({ refused: 2, newSensors: ['a', 'b', 'c'] });
    const later = write.commitReadings(
      group(reading('a', day1 + minute, 19), reading('d', day1, 1)),
    );
    expect(later).toMatchObject({ refused: 1 });
    expect(later.fresh).toHaveLength(1);
    const codes = storeReader(db)
      .refused()
      .map(({ code }) => code);
    expect(codes).toEqual(['too-many-sensors', 'too-many-sensors', 'too-many-sensors']);
    write.close();
  });
});
