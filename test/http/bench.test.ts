import { describe, expect, it } from 'vitest';
import { boards, build, hourMs, moment, withCoat } from './built-site.ts';

describe('the mixing bench', () => {
  it('mixes for the next coat of a batch, as its plan has it', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    // By hand: face and edges of 40 boards are 31.752 m², at 10 m²/L 3.1752 L of 100 : 15.
    const reply = await site.call('mixture', {
      query: { batchId: batch.id, potDiameterMm: '200' },
    });
    expect(reply).toMatchObject({ coat: 1, coatName: 'Second coat', spreadingM2PerL: 10 });
    expect(reply.totalL).toBeCloseTo(3.1752, 3);
    expect(reply.pot?.marks.map(({ part }) => part)).toEqual(['paint', 'turpentine']);
    // 3.1752 L over 314.16 mL a centimetre.
    expect(reply.pot?.marks.at(-1)?.stickCm).toBe(10.1);
    expect(reply.boardsPerLitre?.planned).toBeCloseTo(40 / 3.1752, 2);
  });

  it('says how far a litre went so far, from what coats used', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const pots = { count: 2, litresEach: 2, lastLeftPercent: 25 };
    const coat = await site.call('createCoat', {
      id: batch.id,
      body: { coat: 1, finishedAt: moment(site.now), pots },
    });
    expect(coat.usedL).toBeCloseTo(3.5, 9);
    const { boardsPerLitre } = await site.call('mixture', {
      query: { batchId: batch.id, coat: '1' },
    });
    expect(boardsPerLitre?.soFar).toBeCloseTo(40 / 3.5, 6);
  });

  it('asks for area and spreading rate where there is no batch', async () => {
    const site = await build();
    const problem = await site.refused('mixture', { query: { spreadingM2PerL: '8' } });
    expect(problem).toMatchObject({ status: 400, pointer: '/areaM2' });
  });

  it('asks the tins that were recorded, where nobody types what is there', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const query = { batchId: batch.id };
    expect((await site.call('mixture', { query })).enough).toBeNull();
    await site.call('createTin', { body: { name: 'White', kind: 'paint', volumeL: 1 } });
    expect((await site.call('mixture', { query })).enough).toMatchObject({
      word: 'no',
      boards: 14,
    });
    const typed = await site.call('mixture', { query: { ...query, havePaintL: '9' } });
    expect(typed.enough).toMatchObject({ word: 'yes' });
  });
});

describe('fit to brush, at a place', () => {
  it('goes by its air, the meter, the shelf and the coat to come', async () => {
    const site = await build();
    const { room } = await withCoat(site);
    const rack = await site.call('createPlace', {
      body: { name: 'Rack', kind: 'rack', within: room.id, capacityM: 100 },
    });
    const bare = await site.call('createBatch', {
      body: { name: 'New', placeId: room.id, species: 'larch', surface: 'sawn', boards },
    });
    const ask = () => site.call('fitToBrush', { query: { placeId: room.id, batchId: bare.id } });
    expect((await ask()).word).toBe('cannot-tell');

    const at = moment(site.now);
    const values = [12, 13, 14, 12, 13];
    await site.call('createReading', {
      body: { batchId: bare.id, quantity: 'wood-moisture', values, at },
    });
    const fit = await ask();
    expect(fit.worstBoard).toMatchObject({ percent: 14, boards: 5, limitPercent: 16 });
    // By hand: 40 boards of 4.2 m are 168 m; the rack takes 100.
    expect(fit.shelf).toMatchObject({ capacityM: 100, freeM: 100, neededM: 168 });
    expect(fit.reasons.find(({ code }) => code === 'shelf')?.weight).toBe('poor');
    expect(fit.hours.length).toBeGreaterThan(20);
    expect(fit.word).toBe('poor');
    expect(rack.capacityM).toBe(100);
  });

  it('counts a rack that was told in boards', async () => {
    const site = await build();
    const { room } = await withCoat(site);
    const rack = await site.call('createPlace', {
      body: { name: 'Rack', kind: 'rack', within: room.id, capacityBoards: 50 },
    });
    const ofThree = { ...boards, count: 20, lengthMm: 3000 };
    const timber = { species: 'larch', surface: 'sawn' } as const;
    await site.call('createBatch', {
      body: { ...timber, name: 'There', placeId: rack.id, boards: ofThree },
    });
    const next = await site.call('createBatch', {
      body: { ...timber, name: 'Next', placeId: room.id, boards },
    });
    const query = { placeId: room.id, batchId: next.id };
    // By hand: 20 × 3 m lie there, 30 more boards of 4.2 m fit; 40 of them are 168 m.
    expect((await site.call('fitToBrush', { query })).shelf).toEqual({
      ...{ capacityM: 186, usedM: 60, freeM: 126, neededM: 168 },
    });
  });

  it('knows no place that is not there', async () => {
    const site = await build();
    const placeId = '019a0000-0000-7000-8000-000000000000';
    expect(await site.refused('fitToBrush', { query: { placeId } })).toMatchObject({ status: 404 });
  });
});

describe('the lock-up list', () => {
  it('is there on a coating day, names the wet boards and the low of the night', async () => {
    const site = await build();
    const { batch, room } = await withCoat(site);
    expect((await site.call('readLockUp')).isCoatingDay).toBe(false);
    const body = { coat: 1, finishedAt: moment(site.now - hourMs) };
    await site.call('createCoat', { id: batch.id, body });
    const list = await site.call('readLockUp');
    expect(list).toMatchObject({ isCoatingDay: true, because: ['Coated: South gable.'] });
    expect(list.lines[0]).toMatchObject({ line: 'rags', done: false, repeats: true });
    expect(list.night[0]).toMatchObject({ placeId: room.id });
    expect(list.night[0]?.lowC).toBeCloseTo(20, 0);
  });

  it('keeps the rag line of an earlier day until somebody ticks it', async () => {
    const site = await build();
    await withCoat(site);
    site.now += 20 * hourMs;
    const list = await site.call('readLockUp');
    expect(list.lines.map(({ line }) => line)).toEqual(['rags']);
    const ticked = await site.call('tickLockUp', { body: { line: 'rags', by: 'K.' } });
    // Whoever ticked it sees that it is ticked; on the next day it is gone.
    expect(ticked.lines).toMatchObject([{ line: 'rags', done: true, by: 'K.' }]);
    site.now += 24 * hourMs;
    expect((await site.call('readLockUp')).lines).toEqual([]);
  });

  it('is whole after midnight for who coated in the evening, and takes their ticks', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    // Half past eleven at night, and an hour later, by the site’s clock: UTC here.
    const midnight = Math.ceil(site.now / (24 * hourMs)) * 24 * hourMs;
    const evening = midnight - hourMs / 2;
    site.now = midnight + hourMs / 2;
    const body = { coat: 1, finishedAt: moment(evening) };
    await site.call('createCoat', { id: batch.id, body });
    const list = await site.call('readLockUp');
    expect(list.day).toBe(moment(evening).slice(0, 10));
    expect(list.lines).toHaveLength(list.card.length);
    const { lines } = await site.call('tickLockUp', { body: { line: 'brushes' } });
    expect(lines.filter(({ done }) => done).map(({ line }) => line)).toEqual(['brushes']);
  });

  it('refuses a line, a day or a time that cannot be', async () => {
    const site = await build();
    expect(await site.refused('tickLockUp', { body: { line: 'roof' } })).toMatchObject({
      status: 400,
      pointer: '/line',
    });
    expect(
      await site.refused('tickLockUp', { body: { line: 'rags', day: '2030-01-01' } }),
    ).toMatchObject({ status: 400, pointer: '/day' });
    expect(await site.refused('readLockUp', { query: { day: '20-5-2026' } })).toMatchObject({
      status: 400,
      pointer: '/day',
    });
  });
});
