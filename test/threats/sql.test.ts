import { describe, expect, it } from 'vitest';
import { codeOf } from '../http/access-site.ts';
import { boards, build, moment, withCoat } from '../http/built-site.ts';

const statements = [
  "'; drop table place; --",
  '" or 1=1 --',
  "x' union select key, value from meta --",
  '%_\\',
  '\u0000',
  "the painter's shed",
];

describe('SQL through a field', () => {
  it.each(statements)('is a text like any other: %j', async (text) => {
    const site = await build();
    const { room, batch } = await withCoat(site);
    const at = moment(site.now);
    const [plan] = await site.call('listPlans');
    const before = (await site.call('listPlaces')).length;
    const rack = { name: text, kind: 'rack', within: room.id };
    expect((await site.call('createPlace', { body: rack })).name).toBe(text);
    const named = { name: text, placeId: room.id, species: 'larch', surface: 'sawn', boards };
    expect((await site.call('createBatch', { body: named })).name).toBe(text);
    const ofPlan = { name: text, surface: 'sawn', coats: plan?.coats };
    expect((await site.call('createPlan', { body: ofPlan })).name).toBe(text);
    expect((await site.call('changeBatch', { id: batch.id, body: { name: text } })).name).toBe(
      text,
    );
    const remark = { at, kind: 'runs', text };
    expect((await site.call('createRemark', { id: batch.id, body: remark })).text).toBe(text);
    const coat = { coat: 1, finishedAt: at, colour: text, tin: text };
    expect(await site.call('createCoat', { id: batch.id, body: coat })).toMatchObject({
      colour: text,
      tin: text,
    });
    expect((await site.call('changeSensor', { id: 'n1', body: { name: text } })).name).toBe(text);
    expect(await site.call('listPlaces')).toHaveLength(before + 1);
    expect(await site.call('listBatches')).toHaveLength(2);
    expect(site.errors).toEqual([]);
  });

  it.each(statements)('is no id, no quantity and no moment: %j', async (text) => {
    const site = await build();
    await withCoat(site);
    const encoded = encodeURIComponent(text);
    for (const url of [
      `/api/v1/batches/${encoded}`,
      `/api/v1/sensors/${encoded}`,
      `/api/v1/series?sensor=${encoded}&quantity=air-temperature`,
      `/api/v1/series?sensor=n1&quantity=${encoded}`,
      `/api/v1/series?sensor=n1&quantity=air-temperature&from=${encoded}`,
    ]) {
      const reply = await site.ask({ url });
      expect(reply.statusCode, url).toBeGreaterThanOrEqual(400);
      expect(reply.statusCode, url).toBeLessThan(500);
      expect(codeOf(reply)).toMatch(/^BC_/);
    }
    expect(site.errors).toEqual([]);
  });
});
