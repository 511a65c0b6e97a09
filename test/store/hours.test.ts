import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { HourBlock, HourSum } from '../../daemon/rules/hour-facts.ts';
import { day1, group, hourMs, place, reading } from './site-of-facts.ts';
import { type OpenStore, storeSides } from './store-sides.ts';

const placeId = 'rack';
const model = 'nurse-saul v1';

const sum = (hour: number, low = 1): HourSum => ({ hour, low, high: low, capped: low, covered: 1 });
const block = (fromHour: number, toHour: number, given: Partial<HourBlock> = {}): HourBlock => ({
  placeId,
  model,
  fromHour,
  toHour,
  sums: Array.from({ length: toHour - fromHour + 1 }, (_, i) => sum(fromHour + i)),
  endsHere: false,
  ...given,
});

describe.each(storeSides)('hour sums, $name', ({ open }) => {
  let store: OpenStore;
  beforeEach(async () => {
    store = await open();
  });
  afterEach(() => store.close());

  const hours = () => store.read.hoursBetween(placeId, model, 0, 1_000_000).map((one) => one.hour);
  const range = () => store.read.hourRange(placeId, model);

  it('grow at their end', async () => {
    await store.write.saveHours([block(10, 12)], []);
    await store.write.saveHours([block(13, 13)], []);
    expect(range()).toEqual({ fromHour: 10, toHour: 13 });
    expect(hours()).toEqual([10, 11, 12, 13]);
  });

  it('are replaced where they were reckoned anew, also by nothing', async () => {
    await store.write.saveHours([block(10, 14)], []);
    await store.write.saveHours([block(11, 12, { sums: [sum(12, 0.25)] })], []);
    expect(range()).toEqual({ fromHour: 10, toHour: 14 });
    expect(hours()).toEqual([10, 12, 13, 14]);
    expect(store.read.hoursBetween(placeId, model, 12, 12)).toEqual([sum(12, 0.25)]);
  });

  it('end where the readings end now', async () => {
    await store.write.saveHours([block(10, 20)], []);
    await store.write.saveHours([block(14, 15, { endsHere: true })], []);
    expect(range()).toEqual({ fromHour: 10, toHour: 15 });
    expect(hours()).toEqual([10, 11, 12, 13, 14, 15]);
  });

  it('are gone when no reading is left', async () => {
    await store.write.saveHours([block(10, 20)], []);
    await store.write.saveHours([block(0, -1, { endsHere: true })], []);
    expect(range()).toBeNull();
    expect(hours()).toEqual([]);
  });

  it('never cover hours that were not reckoned: a block apart replaces what was kept', async () => {
    await store.write.saveHours([block(10, 12)], []);
    await store.write.saveHours([block(20, 22)], []);
    expect(range()).toEqual({ fromHour: 20, toHour: 22 });
    expect(hours()).toEqual([20, 21, 22]);
    await store.write.saveHours([block(5, 6)], []);
    expect(range()).toEqual({ fromHour: 5, toHour: 6 });
    expect(hours()).toEqual([5, 6]);
    await store.write.saveHours([block(9, 8, { endsHere: true })], []);
    expect(range()).toBeNull();
  });

  it('of other places and models are left alone', async () => {
    await store.write.saveHours(
      [
        block(10, 12),
        block(10, 12, { placeId: 'other' }),
        block(10, 12, { model: 'arrhenius v1' }),
      ],
      [],
    );
    await store.write.saveHours([block(10, 9, { endsHere: true })], []);
    expect(range()).toBeNull();
    expect(store.read.hourRange('other', model)).toEqual({ fromHour: 10, toHour: 12 });
    await store.write.keepOnlyModels([model]);
    expect(store.read.hourRange(placeId, 'arrhenius v1')).toBeNull();
    expect(store.read.hoursBetween(placeId, 'arrhenius v1', 0, 100)).toEqual([]);
    expect(store.read.hoursBetween('other', model, 0, 100)).toHaveLength(3);
  });

  it('clear the marks they settle in the same transaction, and only those', async () => {
    const { write, read } = store;
    const room = place();
    await write.createPlace(room);
    await write.commitReadings(group(reading('n1', day1, 18), reading('n1', day1 + hourMs, 18)));
    const stay = { sensorKey: read.sensorById('n1')?.key ?? -1, placeId: room.id, fromAt: null };
    await write.placeSensor(stay, 'n1', day1);
    await write.commitReadings(group(reading('n1', day1 + 60_000, 18)));
    const [first, second] = read.dirtySpans();
    if (!first || !second) throw new Error('two marks were expected');

    const broken = block(10, 10, { sums: [{ ...sum(10), hour: 10.5 }] });
    await expect(write.saveHours([broken], [first.rank])).rejects.toThrow();
    expect(read.dirtySpans()).toEqual([first, second]);
    expect(read.hourRange(placeId, model)).toBeNull();

    await write.saveHours([block(10, 10)], [first.rank]);
    expect(read.dirtySpans()).toEqual([second]);
  });
});
