import { expect, it } from 'vitest';
import { build, hourMs, moment, withCoat } from './built-site.ts';

it('GET records lists what was recorded of all batches, each once, also after a split', async () => {
  const site = await build();
  const { batch, room } = await withCoat(site);
  const at = (hoursAgo: number) => moment(site.now - hoursAgo * hourMs);
  const felt = { at: at(20), gate: 'turn', passed: true };
  await site.call('createTest', { id: batch.id, body: felt });
  await site.call('createRemark', {
    id: batch.id,
    body: { at: at(10), kind: 'other', text: '=HYPERLINK("x")' },
  });
  const twin = await site.call('splitBatch', { id: batch.id, body: { boards: 5, at: at(5) } });
  await site.call('createReading', {
    body: { placeId: room.id, quantity: 'wood-moisture', values: [13.1, 12.8], at: at(1) },
  });
  await site.call('changeBatch', { id: twin.child.id, body: { closed: true } });

  const { total, records } = await site.call('listRecords');
  const kinds = records.map(({ kind }) => kind).sort();
  expect(kinds).toEqual(
    ['batch', 'batch', 'coat', 'hand-reading', 'remark', 'split', 'test'].sort(),
  );
  expect(total).toBe(kinds.length);
  expect(records.find(({ kind }) => kind === 'coat')).toMatchObject({
    ...{ batchName: 'South gable', coat: 0, coatName: 'Primer', at: at(24) },
  });
  expect(records.find(({ kind }) => kind === 'test')).toMatchObject({
    ...{ gate: 'turn', passed: true, coatName: 'Primer' },
  });
  expect(records.find(({ kind }) => kind === 'hand-reading')).toMatchObject({
    ...{ batchId: null, placeName: 'Shed', values: [13.1, 12.8] },
  });

  const page = await site.call('listRecords', { query: { limit: '2', offset: '2' } });
  expect(page).toEqual({ total, offset: 2, records: records.slice(2, 4) });

  const csv = await site.ask({ method: 'GET', url: '/api/v1/records.csv?kind=remark,test' });
  expect(csv.headers['content-type']).toBe('text/csv; charset=utf-8');
  // What a spreadsheet would take for a formula is kept from being one.
  expect(csv.body).toContain(`"'=HYPERLINK(""x"")"`);
  expect(csv.body.trim().split('\r\n')).toHaveLength(3);
  const wrong = await site.ask({ method: 'GET', url: '/api/v1/records.csv?kind=tea' });
  expect(wrong.statusCode).toBe(400);
});

it('PATCH site names the site on its pages, and leaves its topics alone', async () => {
  const site = await build();
  expect(await site.call('readSite')).toMatchObject({ topicName: 'shed', name: null });
  await site.call('changeSite', { body: { name: '  Barn by the river ' } });
  expect(await site.call('readSite')).toMatchObject({
    topicName: 'shed',
    name: 'Barn by the river',
  });
  expect(await site.call('overview')).toMatchObject({
    ...{ site: 'shed', siteName: 'Barn by the river' },
  });
  await site.call('changeSite', { body: { name: null } });
  expect((await site.call('overview')).siteName).toBeNull();
  const problem = await site.refused('changeSite', { body: { name: ' ' } });
  expect(problem.code).toBe('BC_REQUEST_INVALID');
});
