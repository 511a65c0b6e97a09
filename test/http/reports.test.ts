import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { build, hourMs, moment, mostPhotoBytes, withCoat } from './built-site.ts';

const dayMs = 24 * hourMs;
const jpeg = (bytes: number, fill = 7) =>
  Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.alloc(bytes - 4, fill)]);

describe('the report of a batch', () => {
  it('tells the air that each coat had, by hand', async () => {
    const site = await build();
    const { batch, coat } = await withCoat(site);
    const report = await site.call('batchReport', { id: batch.id });
    expect(report.site).toBe('shed');
    expect(report.batch.id).toBe(batch.id);
    const [figures] = report.coats;
    expect(figures?.coatId).toBe(coat.id);
    // A room held at 20 °C and 60 %: dew point 12.0 °C, so neither cold, damp nor near dew.
    expect(figures?.whileCuring).toEqual({
      hours: 24,
      tempC: { lowest: 20, mean: 20, highest: 20 },
      rhPercent: { lowest: 60, mean: 60, highest: 60 },
      coldHours: 0,
      dampHours: 0,
      nearDewHours: 0,
    });
    // Turning needs 0.45 of about 58.8 h at 20 °C, more than the 24 h that it has had.
    expect(figures?.reached.turn).toBeNull();
  });

  it('counts hours that were cold, damp and near dew', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const hours = [0, 1, 2].map((i) => site.now + (i + 1) * hourMs);
    await site.hear(
      'n1',
      'air-temperature',
      hours.map((at) => [at, 4]),
    );
    await site.hear(
      'n1',
      'relative-humidity',
      hours.map((at) => [at, 96]),
    );
    site.now += 3.5 * hourMs;
    const [figures] = (await site.call('batchReport', { id: batch.id })).coats;
    expect(figures?.whileCuring).toMatchObject({ coldHours: 3, dampHours: 3, nearDewHours: 3 });
  });

  it('says when a job became likely', async () => {
    const site = await build();
    const { batch, coat } = await withCoat(site);
    const hours = Array.from({ length: 72 }, (_, i) => site.now + (i + 1) * hourMs);
    await site.hear(
      'n1',
      'air-temperature',
      hours.map((at) => [at, 20]),
    );
    site.now += 72 * hourMs;
    const [figures] = (await site.call('batchReport', { id: batch.id })).coats;
    const hoursTo = (gate: 'mount' | 'recoat') =>
      (Date.parse(figures?.reached[gate] ?? '') - Date.parse(coat.finishedAt)) / hourMs;
    // The middle of 2 to 3 days, by the gate’s multiple, to the hour; the spread between boards adds to it.
    expect(hoursTo('recoat')).toBeGreaterThan(58);
    expect(hoursTo('recoat')).toBeLessThan(66);
    expect(hoursTo('mount') / hoursTo('recoat')).toBeCloseTo(0.9, 1);
  });

  it('is a list for a spreadsheet too, and no text in it is a formula', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const at = moment(site.now);
    await site.call('createRemark', {
      id: batch.id,
      body: { at, kind: 'other', text: '=1+1, "dull"' },
    });
    const reply = await site.ask({ url: `/api/v1/batches/${batch.id}/report.csv` });
    expect(reply.headers['content-type']).toBe('text/csv; charset=utf-8');
    const rows = parse(reply.body, { columns: true }) as Record<string, string>[];
    expect(rows.map((row) => row.kind)).toEqual(
      expect.arrayContaining(['batch', 'coat', 'air', 'remark']),
    );
    expect(rows.find((row) => row.kind === 'remark')?.detail).toBe(`'=1+1, "dull"`);
    const times = rows.map((row) => Date.parse(row.at ?? ''));
    expect([...times].sort((a, b) => a - b)).toEqual(times);
  });
});

describe('the season', () => {
  it('sets the model against the tests', async () => {
    const site = await build();
    const { batch, coat } = await withCoat(site);
    const at = moment(site.now);
    await site.call('createTest', { id: batch.id, body: { at, gate: 'recoat', passed: false } });
    const season = await site.call('season');
    expect(season.rows).toMatchObject([
      { month: coat.finishedAt.slice(0, 7), coats: 1, placeName: 'Shed' },
    ]);
    expect(season.modelAgainstTests.tests).toBe(1);
    const [bin] = season.modelAgainstTests.bins;
    // A day at 20 °C for a coat that needs two to three: the model gave it next to no chance.
    expect(bin).toMatchObject({ from: 0, to: 0.1, tests: 1, passed: 0 });
    expect(season.modelAgainstTests.brier).toBeLessThan(0.01);
    const later = { from: moment(Date.parse(coat.finishedAt) + dayMs) };
    expect((await site.call('season', { query: later })).rows).toEqual([]);
  });
});

describe('what would help', () => {
  it('is only time in a warm, good room', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const answer = await site.call('whatHelps', { id: batch.id });
    expect(answer).toMatchObject({ gate: 'recoat', helps: [{ kind: 'only-time' }] });
  });

  it('is warmth in a cold one, but not on the first day of a coat with turpentine', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const cold = Array.from({ length: 60 }, (_, i) => site.now + (i + 1) * hourMs);
    await site.hear(
      'n1',
      'air-temperature',
      cold.map((at) => [at, 8]),
    );
    await site.hear(
      'n1',
      'relative-humidity',
      cold.map((at) => [at, 60]),
    );
    site.now += 60 * hourMs;
    const later = await site.call('whatHelps', { id: batch.id });
    expect(later.holdsBack.map(({ code }) => code)).toContain('cold');
    expect(later.helps[0]?.kind).toBe('warmer');
    expect(later.helps[0]?.gainHours).toBeGreaterThan(12);
    await site.call('createCoat', {
      id: batch.id,
      body: { coat: 1, finishedAt: moment(site.now) },
    });
    const fresh = await site.call('whatHelps', { id: batch.id });
    expect(fresh.helps.map(({ kind }) => kind)).toEqual(['warmer-later']);
  });
});

describe('a coat that stood on a wall', () => {
  it('is to be washed and scuffed first after two weeks, and is not too late', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const wall = await site.call('createPlace', { body: { name: 'South wall', kind: 'wall' } });
    await site.call('createMove', {
      id: batch.id,
      body: { at: moment(site.now), placeId: wall.id },
    });
    const codes = async () => {
      const [coat] = (await site.call('readBatch', { id: batch.id })).coats;
      return coat?.gates.recoat.reasons.map(({ code }) => code) ?? [];
    };
    site.now += 13 * dayMs;
    expect(await codes()).not.toContain('recoat-wash');
    site.now += 2 * dayMs;
    expect(await codes()).toContain('recoat-wash');
    expect(await codes()).not.toContain('recoat-winter');
    site.now += 300 * dayMs;
    expect(await codes()).toContain('recoat-winter');
  });
});

describe('photos of a batch', () => {
  it('are kept, listed, shown as they were, and taken away', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const picture = jpeg(500);
    const body = { at: moment(site.now), text: 'The knot', picture: picture.toString('base64') };
    const photo = await site.call('createPhoto', { id: batch.id, body });
    expect(photo).toMatchObject({ type: 'image/jpeg', bytes: 500, text: 'The knot' });
    expect(await site.call('listPhotos', { id: batch.id })).toEqual([photo]);
    const shown = await site.ask({ url: photo.address });
    expect(shown.headers['content-type']).toBe('image/jpeg');
    expect(shown.headers['x-content-type-options']).toBe('nosniff');
    expect(shown.rawPayload.equals(picture)).toBe(true);
    expect(await site.call('removePhoto', { id: batch.id, part: photo.id })).toEqual([]);
    expect((await site.ask({ url: photo.address })).statusCode).toBe(404);
  });

  it('arrive once under their id', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const id = '019a0000-0000-7000-8000-0000000000aa';
    const body = { id, at: moment(site.now), picture: jpeg(100).toString('base64') };
    await site.call('createPhoto', { id: batch.id, body });
    await site.call('createPhoto', { id: batch.id, body });
    expect(await site.call('listPhotos', { id: batch.id })).toHaveLength(1);
    const other = { ...body, picture: jpeg(100, 8).toString('base64') };
    expect((await site.refused('createPhoto', { id: batch.id, body: other })).code).toBe(
      'BC_ID_TAKEN',
    );
  });

  it('are pictures, and not too many', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const at = moment(site.now);
    const send = (picture: Buffer) => ({
      id: batch.id,
      body: { at, picture: picture.toString('base64') },
    });
    const page = Buffer.from('<script>alert(1)</script>');
    expect(await site.refused('createPhoto', send(page))).toMatchObject({ pointer: '/picture' });
    await site.call('createPhoto', send(jpeg(mostPhotoBytes - 100)));
    const full = await site.refused('createPhoto', send(jpeg(200)));
    expect(full).toMatchObject({ status: 409, code: 'BC_STATE_CONFLICT' });
    expect(full.detail).toMatch(/Take some away first/);
  });
});
