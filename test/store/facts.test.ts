import { v7 as newId } from 'uuid';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { HandReadingFact, RemarkFact } from '../../daemon/rules/facts.ts';
import {
  batch,
  coat,
  day1,
  firstMove,
  hourMs,
  place,
  plan,
  ragsNotice,
  recordBatch,
  touchTest,
} from './site-of-facts.ts';
import { type OpenStore, storeSides } from './store-sides.ts';

const taken = { code: 'BC_ID_TAKEN', pointer: '/id' };

describe.each(storeSides)('what people record, $name', ({ open }) => {
  let store: OpenStore;
  beforeEach(async () => {
    store = await open();
  });
  afterEach(() => store.close());

  it('is there once, however often the same arrives', async () => {
    const { write, read } = store;
    const { batch: its, room } = await recordBatch(write);
    const done = coat(its.id);
    const felt = touchTest(done);
    const moved = { id: newId(), batchId: its.id, placeId: room.id, at: day1 + hourMs };
    const remark: RemarkFact = { id: newId(), batchId: its.id, at: day1, kind: 'runs', text: null };
    const hand: HandReadingFact = {
      id: newId(),
      placeId: room.id,
      batchId: null,
      quantity: 'wood-moisture',
      values: [14.5, 15],
      at: day1,
    };
    for (const later of [0, hourMs]) {
      await write.createPlace({ ...room, createdAt: day1 + later });
      await write.createCoat(done, day1 + later);
      await write.createTest(felt, day1 + later);
      await write.createMove(moved, day1 + later);
      await write.createRemark(remark, day1 + later);
      await write.createHandReading(hand, day1 + later);
    }
    expect(read.places()).toMatchObject([room]);
    expect(read.coats()).toMatchObject([done]);
    expect(read.tests()).toMatchObject([felt]);
    expect(read.moves()).toHaveLength(2);
    expect(read.remarks()).toMatchObject([remark]);
    expect(read.handReadings()).toEqual([hand]);
  });

  it('is refused under an id that something else has', async () => {
    const { write, read } = store;
    const { batch: its, room } = await recordBatch(write);
    const done = coat(its.id);
    const felt = touchTest(done);
    await write.createCoat(done, day1);
    await write.createTest(felt, day1);
    await expect(write.createPlace({ ...room, name: 'Barn' })).rejects.toMatchObject(taken);
    await expect(write.createCoat({ ...done, usedL: 3 }, day1)).rejects.toMatchObject(taken);
    await expect(write.createTest({ ...felt, passed: false }, day1)).rejects.toMatchObject(taken);
    expect(read.places()).toMatchObject([room]);
    expect(read.coats()).toMatchObject([done]);
    expect(read.tests()).toMatchObject([felt]);
  });

  it('takes a repeated batch for the same only when it lies at the same place', async () => {
    const { write, read } = store;
    const { batch: its, room } = await recordBatch(write);
    const other = place();
    await write.createPlace(other);
    await write.createBatch(its, firstMove(its.id, room.id));
    await expect(write.createBatch(its, firstMove(its.id, other.id))).rejects.toMatchObject(taken);
    expect(read.moves()).toHaveLength(1);
  });

  it('takes a repeated batch for the same after it was closed', async () => {
    const { write, read } = store;
    const { batch: its, room } = await recordBatch(write);
    await write.changeBatch({ id: its.id, name: its.name, closedAt: day1 + hourMs }, day1 + hourMs);
    await write.createBatch(its, firstMove(its.id, room.id));
    expect(read.batches()).toMatchObject([{ id: its.id, closedAt: day1 + hourMs }]);
  });

  it('leaves nothing of a batch whose place is not there', async () => {
    const { write, read } = store;
    const itsPlan = plan();
    await write.createPlan(itsPlan);
    const made = batch(itsPlan.id);
    await expect(write.createBatch(made, firstMove(made.id, newId()))).rejects.toThrow();
    expect(read.batches()).toEqual([]);
  });

  it('holds each coat of the plan once; taken back, it may be recorded anew', async () => {
    const { write, read } = store;
    const { batch: its } = await recordBatch(write);
    const first = coat(its.id);
    await write.createCoat(first, day1);
    await expect(write.createCoat(coat(its.id), day1)).rejects.toMatchObject({
      code: 'BC_STATE_CONFLICT',
      pointer: '/coat',
    });
    await write.removeCoat(first.id, day1 + hourMs);
    expect(read.coats()).toEqual([]);
    const second = coat(its.id, { usedL: 3 });
    await write.createCoat(second, day1 + hourMs);
    expect(read.coats()).toMatchObject([second]);
  });

  it('keeps the id of a coat that was taken back, and of its tests', async () => {
    const { write, read } = store;
    const { batch: its } = await recordBatch(write);
    const first = coat(its.id);
    const felt = touchTest(first);
    await write.createCoat(first, day1);
    await write.createTest(felt, day1);
    await write.removeCoat(first.id, day1);
    await write.removeCoat(first.id, day1 + hourMs);
    expect(read.tests()).toEqual([]);
    await expect(write.createCoat(first, day1)).rejects.toMatchObject(taken);
    const second = coat(its.id);
    await write.createCoat(second, day1);
    await expect(write.createTest({ ...felt, coatId: second.id }, day1)).rejects.toMatchObject(
      taken,
    );
  });

  describe('of a coat’s caution', () => {
    const open = () => store.read.notices().filter((notice) => notice.clearedAt === null);

    it('is raised with a new coat only', async () => {
      const { write, read } = store;
      const { batch: its } = await recordBatch(write);
      const first = coat(its.id);
      const caution = ragsNotice(its.id, day1);
      await write.createCoat(first, day1, caution);
      await write.seeNotice(caution.id, day1 + 1);
      await write.changeNotices([], [caution.id], day1 + 2);
      await write.createCoat(first, day1 + 3, ragsNotice(its.id, day1 + 3));
      expect(open()).toEqual([]);
      expect(read.notices()).toEqual([{ ...caution, seenAt: day1 + 1, clearedAt: day1 + 2 }]);
    });

    it('is not raised for a coat that is refused', async () => {
      const { write } = store;
      const { batch: its } = await recordBatch(write);
      await write.createCoat(coat(its.id), day1);
      const again = write.createCoat(coat(its.id), day1, ragsNotice(its.id, day1));
      await expect(again).rejects.toMatchObject({ code: 'BC_STATE_CONFLICT' });
      expect(open()).toEqual([]);
    });

    it('stands once while nobody has seen it, and comes again for the next coat after that', async () => {
      const { write } = store;
      const { batch: its } = await recordBatch(write);
      const [one, two, three] = [0, 1, 2].map((i) => ragsNotice(its.id, day1 + i));
      if (!one || !two || !three) throw new Error('three cautions were made');
      await write.createCoat(coat(its.id, { coat: 0 }), day1, one);
      await write.createCoat(coat(its.id, { coat: 1 }), day1, two);
      expect(open()).toEqual([one]);
      await write.seeNotice(one.id, day1 + 5);
      await write.createCoat(coat(its.id, { coat: 2 }), day1, three);
      expect(open()).toEqual([three]);
    });
  });

  it('is seen when it was first seen', async () => {
    const { write, read } = store;
    const notice = ragsNotice('batch', day1);
    await write.changeNotices([notice], [], notice.raisedAt);
    await write.seeNotice(notice.id, day1 + 1);
    await write.seeNotice(notice.id, day1 + 2);
    expect(read.notices()).toMatchObject([{ seenAt: day1 + 1 }]);
  });
});
