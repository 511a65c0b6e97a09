import { describe, expect, it } from 'vitest';
import { hourMs, moment } from '../http/built-site.ts';
import { ago, batchAt, builtShed } from './built-shed.ts';

const id = (n: number) => `019a0000-0000-7000-8000-${String(n).padStart(12, '0')}`;

async function splitShed() {
  const shed = await builtShed();
  const { site, north } = shed;
  const batch = await batchAt(site, north.id);
  await site.call('createCoat', { id: batch.id, body: { coat: 0, finishedAt: ago(site, 72) } });
  const test = { at: ago(site, 48), gate: 'recoat', passed: false };
  await site.call('createTest', { id: batch.id, body: test });
  return { ...shed, batch };
}

describe('boards that are split off', () => {
  it('have the sums of their parent up to the split, and their own after it', async () => {
    const { site, south, batch } = await splitShed();
    const at = ago(site, 24);
    const body = { boards: 20, at, placeId: south.id };
    const { parent, child } = await site.call('splitBatch', { id: batch.id, body });
    expect([parent.boards.count, child.boards.count]).toEqual([40, 20]);
    expect(child.coats[0]).toMatchObject({ id: parent.coats[0]?.id, inherited: true });
    expect(child.tests).toEqual(parent.tests);
    const felt = { at, gate: 'turn', passed: true };
    const [here, there] = [
      await site.call('createTest', { id: batch.id, body: felt }),
      await site.call('createTest', { id: child.id, body: felt }),
    ];
    expect(there.degreeHours).toBeCloseTo(here.degreeHours, 9);
    expect(here.degreeHours).toBeCloseTo(720, 9);
    // 48 h at 20 °C over 5 °C, then a day at 20 and at 12 °C: 720 + 360 and 720 + 168 °C·h.
    const [stayed, went] = [
      await site.call('readBatch', { id: batch.id }),
      await site.call('readBatch', { id: child.id }),
    ];
    expect(stayed.coats[0]?.degreeHours).toBeCloseTo(1080, 9);
    expect(went.coats[0]?.degreeHours).toBeCloseTo(888, 9);
    expect(went.lies).toEqual({
      ...{ placeId: south.id, placeName: 'South rack', since: body.at },
    });
    expect(went.splitFrom).toEqual({ batchId: batch.id, at: body.at });
  });

  it('are reckoned with the area that was coated when all lay together', async () => {
    const { site, batch } = await splitShed();
    const before = (await site.call('listCoats', { id: batch.id }))[0]?.areaM2;
    const body = { boards: 20, at: ago(site, 1) };
    const { parent, child } = await site.call('splitBatch', { id: batch.id, body });
    expect(parent.coats[0]?.areaM2).toBe(before);
    expect(child.coats[0]?.areaM2).toBe(before);
  });

  it('are split once, however often it is sent', async () => {
    const { site, south, batch } = await splitShed();
    const body = { id: id(1), childId: id(2), boards: 20, at: ago(site, 2), placeId: south.id };
    const first = await site.call('splitBatch', { id: batch.id, body });
    const again = await site.call('splitBatch', { id: batch.id, body });
    expect(again.child.id).toBe(first.child.id);
    expect(again.parent.boards.count).toBe(40);
    expect(await site.call('listBatches')).toHaveLength(2);
  });

  it('keep what they share when the parent goes on, and take none of it', async () => {
    const { site, batch } = await splitShed();
    const { child } = await site.call('splitBatch', {
      id: batch.id,
      body: { boards: 20, at: ago(site, 10) },
    });
    await site.call('createCoat', { id: batch.id, body: { coat: 1, finishedAt: ago(site, 5) } });
    await site.call('createRemark', { id: batch.id, body: { at: ago(site, 1), kind: 'runs' } });
    const apart = await site.call('readBatch', { id: child.id });
    expect(apart.coats).toHaveLength(1);
    expect(apart.remarks).toEqual([]);
    const coatId = apart.coats[0]?.id ?? '';
    expect(await site.refused('removeCoat', { id: child.id, part: coatId })).toMatchObject({
      code: 'BC_STATE_CONFLICT',
    });
  });

  it('leave at least one board behind, then and after every later split', async () => {
    const { site, batch } = await splitShed();
    const split = (boards: number, hours: number) => ({
      id: batch.id,
      body: { boards, at: ago(site, hours) },
    });
    await site.call('splitBatch', split(40, 2));
    const problem = { code: 'BC_SPLIT_TOO_MANY', pointer: '/boards' };
    expect(await site.refused('splitBatch', split(20, 1))).toMatchObject(problem);
    expect(await site.refused('splitBatch', split(20, 9))).toMatchObject(problem);
    await site.call('splitBatch', split(19, 9));
  });
});

describe('boards that are put together', () => {
  it('go by the slower of them', async () => {
    const { site, south, batch } = await splitShed();
    const { child } = await site.call('splitBatch', {
      id: batch.id,
      body: { boards: 20, at: ago(site, 60), placeId: south.id, name: 'Cold ones' },
    });
    const alone = (await site.call('readBatch', { id: child.id })).coats[0];
    const warm = (await site.call('readBatch', { id: batch.id })).coats[0];
    const merged = await site.call('mergeBatch', {
      id: batch.id,
      body: { batchId: child.id, at: moment(site.now) },
    });
    const coat = merged.batch.coats[0];
    expect(merged.batch.boards.count).toBe(60);
    // 12 h at 20 °C, then 60 h at 12 °C: 180 + 420 °C·h, against 72 h at 20 °C: 1,080 °C·h.
    expect([alone?.degreeHours, warm?.degreeHours]).toEqual([
      expect.closeTo(600, 9),
      expect.closeTo(1080, 9),
    ]);
    expect(coat?.degreeHours).toBeCloseTo(600, 9);
    expect(coat?.speaksFor).toEqual({ batchId: child.id, name: 'Cold ones' });
    expect(coat?.gates.recoat.reasons.map(({ code }) => code)).toContain('slower-boards');
    const closed = await site.call('readBatch', { id: child.id });
    expect(closed).toMatchObject({ closed: true, mergedInto: { batchId: batch.id } });
    expect(
      await site.refused('changeBatch', { id: child.id, body: { closed: false } }),
    ).toMatchObject({ code: 'BC_STATE_CONFLICT', pointer: '/closed' });
  });

  it('are felt together afterwards', async () => {
    const { site, south, batch } = await splitShed();
    const { child } = await site.call('splitBatch', {
      id: batch.id,
      body: { boards: 20, at: ago(site, 60), placeId: south.id },
    });
    const at = moment(site.now);
    await site.call('mergeBatch', { id: batch.id, body: { batchId: child.id, at } });
    site.now += hourMs;
    const felt = { at: moment(site.now), gate: 'recoat', passed: true };
    const reply = await site.call('createTest', { id: batch.id, body: felt });
    expect(reply.changed.find(({ gate }) => gate === 'recoat')?.after.probability).toBe(1);
  });

  it('must be alike; else it is said what differs', async () => {
    const { site, north } = await builtShed();
    const spruce = await batchAt(site, north.id);
    const larch = await batchAt(site, north.id, { name: 'Larch', species: 'larch' });
    await site.call('createCoat', { id: larch.id, body: { coat: 0, finishedAt: ago(site, 5) } });
    const problem = await site.refused('mergeBatch', {
      id: spruce.id,
      body: { batchId: larch.id, at: ago(site, 0) },
    });
    expect(problem).toMatchObject({ code: 'BC_MERGE_UNLIKE', pointer: '/batchId' });
    expect(problem.detail).toContain('the timber (norway-spruce, larch)');
    expect(problem.detail).toContain('the coats that are on (0 and 1)');
    const itself = { batchId: spruce.id, at: ago(site, 0) };
    expect(await site.refused('mergeBatch', { id: spruce.id, body: itself })).toMatchObject({
      code: 'BC_MERGE_UNLIKE',
    });
  });
});

describe('a rack', () => {
  it('records what lies there beyond what it takes, and says so', async () => {
    const { site, north, south } = await builtShed();
    // 60 boards of 4.2 m are 252 m; the rack takes 150 m.
    const batch = await batchAt(site, north.id);
    const reply = await site.call('createMove', {
      id: batch.id,
      body: { at: ago(site, 0), placeId: south.id },
    });
    expect(reply.warnings.map(({ code }) => code)).toEqual(['rack-over-metres']);
    expect(reply.warnings[0]?.text).toContain('takes 150 m');
    expect(reply.warnings[0]?.text).toContain('252 m lie there now');
    expect((await site.call('readBatch', { id: batch.id })).placeId).toBe(south.id);
  });
});

describe('a test passed where nothing reads the air', () => {
  it('leaves the wall to be seen', async () => {
    const { site } = await builtShed();
    const wall = await site.call('createPlace', { body: { name: 'Gable', kind: 'wall' } });
    const batch = await batchAt(site, wall.id);
    await site.call('createCoat', { id: batch.id, body: { coat: 0, finishedAt: ago(site, 40) } });
    const felt = { at: ago(site, 1), gate: 'recoat', passed: true };
    await site.call('createTest', { id: batch.id, body: felt });
    const shown = (await site.call('overview')).places.find(({ id }) => id === wall.id);
    expect(shown?.batches[0]).toMatchObject({ id: batch.id, share: null });
  });
});
