import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, normalize } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import BetterSqlite3 from 'better-sqlite3';
import { parse } from 'csv-parse/sync';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { csvLine } from '../../daemon/rules/csv-line.ts';
import {
  exportedTables,
  holdsReadings,
  keptBack,
  openSnapshot,
} from '../../daemon/store/backup-tables.ts';
import { databaseFile, openForWriting } from '../../daemon/store/open.ts';
import { storeWriter } from '../../daemon/store/store.ts';
import { type RunningDaemon, runCommand, startDaemon } from '../journey/running-daemon.ts';
import { day1, group, reading } from '../store/site-of-facts.ts';
import { timeUnknown } from '../store/store-sides.ts';
import { fillSite, finished, readingsIn } from './backup-site.ts';

interface ManifestFile {
  path: string;
  rows: number;
  bytes: number;
  sha256: string;
  sensor?: string;
  quantity?: string;
  table?: string;
}
interface Manifest {
  format: string;
  formatVersion: number;
  schema: number;
  counts: { files: number; readings: number; outlines: number; facts: number };
  readings: ManifestFile[];
  outlines: ManifestFile[];
  facts: ManifestFile[];
  leftOut: { table: string; because: string }[];
}

let folder: string;
let data: string;
let target: string;
let daemon: RunningDaemon | null;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-export-'));
  data = join(folder, 'data');
  target = join(folder, 'out');
  daemon = null;
});
afterEach(async () => {
  await daemon?.kill();
  await rm(folder, { recursive: true, force: true });
});

const manifestIn = (where: string): Manifest =>
  JSON.parse(readFileSync(join(where, 'manifest.json'), 'utf8'));
const table = (path: string): Record<string, string>[] =>
  parse(readFileSync(join(target, path)), { columns: true, record_delimiter: '\r\n' });
const json = (name: string): Record<string, unknown>[] =>
  JSON.parse(readFileSync(join(target, `facts/${name}.json`), 'utf8'));

describe('boardcure export', () => {
  it('counts and checksums agree with the database and the files', async () => {
    const { readings } = fillSite(data, {
      readings: 12_001,
      sensors: ['rack-1', 'rack-2', 'roof'],
    });
    const { code, out, err } = await finished('export', target, '--data', data);
    expect(code, err).toBe(0);
    const manifest = manifestIn(target);
    expect(manifest.counts.readings).toBe(readings);
    expect(JSON.parse(out[0] ?? '')).toMatchObject({ event: 'exported', ...manifest.counts });
    for (const { path, rows, bytes, sha256 } of [
      ...manifest.readings,
      ...manifest.outlines,
      ...manifest.facts,
    ]) {
      const content = readFileSync(join(target, path));
      expect(content.length, path).toBe(bytes);
      expect(createHash('sha256').update(content).digest('hex'), path).toBe(sha256);
      const found = path.endsWith('.csv') ? table(path) : JSON.parse(content.toString());
      expect(found, path).toHaveLength(rows);
    }
    const db = new BetterSqlite3(databaseFile(data), { readonly: true });
    for (const [name, outside] of Object.entries(exportedTables)) {
      const count = db.prepare<[], number>(`select count(*) from ${name}`).pluck().get();
      expect(json(outside), outside).toHaveLength(count ?? -1);
    }
    db.close();
    const exported = manifest.readings.flatMap(({ path }) =>
      table(path).map((row) => ({
        sensor: row.sensor,
        at: Date.parse(row.time ?? ''),
        raw: Number(row.raw),
      })),
    );
    expect(exported).toEqual(readingsIn(databaseFile(data)));
  });

  it('every table is exported, holds readings, or is named with the reason why it is not', () => {
    fillSite(data);
    const snapshot = openSnapshot(databaseFile(data));
    const known = new Set([...Object.keys(exportedTables), ...Object.keys(keptBack)]);
    const strange = Object.keys(snapshot.counts).filter(
      (name) => !known.has(name) && !holdsReadings(name),
    );
    snapshot.close();
    // A new table belongs into exportedTables or, with its reason, into keptBack.
    expect(strange).toEqual([]);
  });

  it('facts are told with ISO times, unfolded lists and yes or no', async () => {
    fillSite(data, { remark: 'runs at the "lower" edge' });
    await finished('export', target, '--data', data);
    expect(json('batches')[0]).toMatchObject({
      createdAt: '2026-05-04T06:00:00.000Z',
      boards: { count: 40, lengthMm: 4200 },
      closedAt: null,
    });
    expect(json('tests')[0]).toMatchObject({ passed: true, gate: 'turn' });
    expect(json('hand-readings')[0]).toMatchObject({ figures: [14.5, 15] });
    expect(json('remarks')[0]).toMatchObject({ text: 'runs at the "lower" edge' });
  });

  it('raw and corrected stand side by side: 103 % of humidity was sent, 100 % is reckoned with', async () => {
    fillSite(data);
    const write = storeWriter(openForWriting(databaseFile(data)), timeUnknown);
    write.commitReadings(
      group(
        reading('rack-1', day1, 103, 'relative-humidity'),
        reading('rack-1', day1 + 1, 55, 'relative-humidity', 1),
      ),
    );
    write.close();
    await finished('export', target, '--data', data);
    const file = manifestIn(target).readings.find((each) => each.quantity === 'relative-humidity');
    expect(table(file?.path ?? '')).toEqual([
      {
        ...{ time: '2026-05-04T06:00:00.000Z', sensor: 'rack-1', quantity: 'relative-humidity' },
        ...{ raw: '103', corrected: '100', unit: '%', flags: '' },
      },
      {
        ...{ time: '2026-05-04T06:00:00.001Z', sensor: 'rack-1', quantity: 'relative-humidity' },
        ...{ raw: '55', corrected: '55', unit: '%', flags: 'time-replaced' },
      },
    ]);
  });

  it('of readings that were let go, the extremes and the mean of each hour or day are told', async () => {
    fillSite(data);
    const write = storeWriter(openForWriting(databaseFile(data)), timeUnknown);
    const hourMs = 3_600_000;
    const day0 = Math.floor(day1 / (24 * hourMs)) * 24 * hourMs;
    const dayMs = 24 * hourMs;
    // Three days of one reading an hour: 10, and within each day a low of 2 and a high of 30.
    const sent = Array.from({ length: 72 }, (_, i) => ({
      at: day0 + i * hourMs + 5000,
      raw: i % 24 === 3 ? 2 : i % 24 === 14 ? 30 : 10,
    }));
    write.commitReadings(group(...sent.map(({ at, raw }) => reading('roof', at, raw))));
    while (write.packClosedHours(day0 + 4 * dayMs, 1000).more);
    const untilNow = (level: 'readings' | 'hours', at: number) => {
      while (write.letGo(level, at).more);
    };
    untilNow('readings', day0 + 2 * dayMs);
    untilNow('hours', day0 + dayMs);
    write.close();
    expect((await finished('export', target, '--data', data)).code).toBe(0);
    const manifest = manifestIn(target);
    const roof = manifest.outlines.filter(({ sensor }) => sensor === 'roof');
    const [asJson = '', asCsv = ''] = roof.map(({ path }) => path);
    const rows = JSON.parse(readFileSync(join(target, asJson), 'utf8'));
    const iso = (at: number) => new Date(at).toISOString();
    expect(rows).toHaveLength(1 + 24);
    expect(rows[0]).toEqual({
      ...{ span: 'day', from: iso(day0), sensor: 'roof', quantity: 'air-temperature' },
      ...{ count: 24, first: iso(day0 + 5000), last: iso(day0 + 23 * hourMs + 5000) },
      ...{ low: 2, lowAt: iso(day0 + 3 * hourMs + 5000) },
      ...{ high: 30, highAt: iso(day0 + 14 * hourMs + 5000) },
      ...{ mean: (22 * 10 + 32) / 24, unit: '°C' },
    });
    expect(rows[4]).toMatchObject({ span: 'hour', from: iso(day0 + dayMs + 3 * hourMs), low: 2 });
    const texts = rows.map((row: object) =>
      Object.fromEntries(Object.entries(row).map(([name, value]) => [name, String(value)])),
    );
    expect(table(asCsv)).toEqual(texts);
    const all = manifest.outlines.filter(({ path }) => path.endsWith('.json'));
    expect(manifest.counts.outlines).toBe(all.reduce((sum, each) => sum + each.rows, 0));
    // The day that is kept is exported as readings, and only there.
    const kept = manifest.readings.find(({ sensor }) => sensor === 'roof');
    expect(kept?.rows).toBe(24);
  });

  it('sensors called .. or differing in capitals alone stay in the folder, each in its own file', async () => {
    fillSite(data, { sensors: ['..', 'Rack', 'rack', '-9'], readings: 3 });
    await finished('export', target, '--data', data);
    const paths = manifestIn(target).readings.map(({ path }) => path);
    expect(new Set(paths.map((path) => path.toLowerCase())).size).toBe(4);
    for (const path of paths) expect(normalize(path)).toMatch(/^readings\//);
    expect(readdirSync(folder).sort()).toEqual(['data', 'out']);
  });

  it('a folder that holds something is left alone unless told otherwise', async () => {
    fillSite(data);
    await mkdir(target);
    writeFileSync(join(target, 'mine.txt'), 'mine');
    const refused = await finished('export', target, '--data', data);
    expect(refused.code).toBe(1);
    expect(refused.err).toContain('--into-used');
    expect(readdirSync(target)).toEqual(['mine.txt']);
    expect((await finished('export', target, '--data', data, '--into-used')).code).toBe(0);
    expect(readFileSync(join(target, 'mine.txt'), 'utf8')).toBe('mine');
  });

  it('a database of an older version is not exported, and the way is told', async () => {
    fillSite(data);
    const db = new BetterSqlite3(databaseFile(data));
    db.pragma('user_version = 1');
    db.close();
    const refused = await finished('export', target, '--data', data);
    expect(refused.code).toBe(1);
    expect(refused.err).toMatch(/at version 1\. Start the daemon once/);
    expect(existsSync(target)).toBe(false);
  });

  it('killed half way (SIGKILL), it leaves no list that vouches for it', async () => {
    fillSite(data, { readings: 100_000 });
    const command = runCommand(['export', target, '--data', data]);
    while (!existsSync(join(target, 'readings'))) await pause(2);
    command.process.kill('SIGKILL');
    await command.ended;
    expect(existsSync(join(target, 'manifest.json'))).toBe(false);
    const again = await finished('export', target, '--data', data, '--into-used');
    expect(again.code, again.err).toBe(0);
    expect(manifestIn(target).counts.readings).toBe(200_000);
  });

  it('exported readings can be replayed into another shed, and are the same there', async () => {
    fillSite(data, { readings: 300, sensors: ['rack-1'] });
    await finished('export', target, '--data', data);
    const elsewhere = join(folder, 'elsewhere');
    daemon = await startDaemon(elsewhere);
    const file = join(target, manifestIn(target).readings[0]?.path ?? '');
    const replayed = await finished(
      ...['replay', file, '--mqtt', `127.0.0.1:${daemon.mqtt}`, '--value-column', 'raw'],
    );
    expect(replayed.code, replayed.err).toBe(0);
    await daemon.stop();
    expect(readingsIn(databaseFile(elsewhere))).toEqual(readingsIn(databaseFile(data)));
  });
});

describe('a line of a CSV file', () => {
  // RFC 4180 (2005), section 2: fields with line breaks, double quotes or commas are quoted, a
  // double quote within is doubled, lines end with CRLF.
  it('quotes what RFC 4180 says is to be quoted', () => {
    expect(csvLine(['aaa', 'b\r\nbb', 'c"c', 'd,d', '', null, -1.5, true])).toBe(
      'aaa,"b\r\nbb","c""c","d,d",,,-1.5,true\r\n',
    );
  });

  it('comes back from a CSV reader as it went in', () => {
    const values = ['plain', ' spaces ', 'a "quote"', 'two\nlines', 'semi;colon', 'ä°Ω', 'a,b'];
    expect(parse(csvLine(values), { record_delimiter: '\r\n' })).toEqual([values]);
  });

  // OWASP, CSV Injection (from memory): a cell that begins with one of these runs as a formula.
  for (const start of ['=', '+', '-', '@', '\t', '\r', '\n', '＝']) {
    it(`a text that begins with ${JSON.stringify(start)} is no formula`, () => {
      const text = `${start}1+2";=cmd`;
      const [[cell]] = parse(csvLine([text]), { record_delimiter: '\r\n' }) as [[string]];
      expect(cell).toBe(`'${text}`);
    });
  }

  it('a negative number stays a number', () => {
    expect(csvLine([-18.4])).toBe('-18.4\r\n');
  });
});
