import { existsSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { type InstalledRoot, installedRoot } from './installed-root.ts';

let root: InstalledRoot;
beforeEach(() => {
  root = installedRoot();
});
afterEach(() => root.remove());

const data = 'var/lib/boardcure';

/** Readings in the database of the installed daemon; the database is begun where there is none. */
function record(...values: number[]): void {
  const db = openForWriting(databaseFile(root.path(data)));
  const readings = values.map((raw) => ({
    ...{ sensor: 'n1', quantity: 'air-temperature' as const, flags: 0 },
    ...{ at: Date.UTC(2026, 4, 4) + raw * 60_000, raw },
  }));
  storeWriter(db, 0).commitReadings({ readings, refused: [], arrivedAt: Date.UTC(2026, 4, 5) });
  db.close();
}

function recorded(file = databaseFile(root.path(data))): { values: number[]; tables: number } {
  const db = openForReading(file);
  const read = storeReader(db);
  const [sensor] = read.sensors();
  const readings = read.readingsBetween(sensor?.key ?? 0, 'air-temperature', 0, Date.now(), 100);
  const tables = Number(db.pragma('user_version', { simple: true }));
  db.close();
  return { values: readings.map(({ raw }) => raw), tables };
}

/** As a newer program would leave the database: with tables of a version that no other one knows. */
const migrate = `node -e 'const D = require(process.argv[1]); const db = new D(process.argv[2]); db.pragma("user_version = 900"); db.close()' "$DESTDIR/opt/boardcure/current/node_modules/better-sqlite3" "$DESTDIR/${data}/boardcure.sqlite"`;

const installed = (version = '1.0.0') => {
  const artefact = root.artefact(version);
  expect(root.install(artefact, 'install')).toMatchObject({ status: 0 });
  return artefact;
};

describe('an installation', () => {
  it('lays programs, unit, command and settings in their places, and starts the service', () => {
    installed();
    expect(root.version('current')).toBe('1.0.0');
    expect(root.text('etc/systemd/system/boardcure.service')).toContain('Type=notify');
    expect(root.text('etc/boardcure/boardcure.toml')).toMatch(/^data = "\/var\/lib\/boardcure"$/m);
    expect(statSync(root.path('etc/boardcure/boardcure.toml')).mode & 0o777).toBe(0o640);
    expect(statSync(root.path(data)).mode & 0o777).toBe(0o750);
    expect(statSync(root.path('usr/local/bin/boardcure')).mode & 0o777).toBe(0o755);
    expect(root.asked()).toEqual([
      'daemon-reload',
      'enable --quiet boardcure.service',
      'start boardcure.service',
      'is-active --quiet boardcure.service',
    ]);
  });

  it('done again mends what is missing and leaves settings and readings alone', () => {
    const artefact = installed();
    record(1, 2);
    writeFileSync(root.path('etc/boardcure/boardcure.toml'), 'site = "barn"\n');
    writeFileSync(root.path('etc/systemd/system/boardcure.service'), '');
    expect(root.install(artefact, 'install')).toMatchObject({ status: 0 });
    expect(root.text('etc/boardcure/boardcure.toml')).toBe('site = "barn"\n');
    expect(root.text('etc/systemd/system/boardcure.service')).toContain('Type=notify');
    expect(recorded().values).toEqual([1, 2]);
    expect(readdirSync(root.path('opt/boardcure/versions'))).toEqual(['1.0.0']);
  });

  it('that does not get ready is said with the place to look', () => {
    root.failing('1.0.0');
    const { status, stderr } = root.install(root.artefact('1.0.0'), 'install');
    expect(status).toBe(1);
    expect(stderr).toMatch(/did not get ready\n {2}what to do: journalctl/);
  });

  it.each([
    ['a system of 32 bits', 'uname', 'echo armv7l', /32 bits \(armv7l\)\n.*64-bit system/],
    ['a Node that is too old', 'node', 'echo 18', /needs 20 or newer\n.*--node/],
    ['a full card', 'df', 'printf "h\\nf 1 1 2048 1 /\\n"', /only 2 MiB are free.*\n.*make room/],
  ])('is refused on %s, before anything is changed', (_what, name, script, words) => {
    root.program(name, `#!/bin/sh\n${script}\n`);
    const { status, stderr } = root.install(root.artefact('1.0.0'), 'install');
    expect(status).toBe(1);
    expect(stderr).toMatch(words);
    expect(root.version('current')).toBeNull();
    expect(existsSync(root.path('etc'))).toBe(false);
  });

  it('is refused from an artefact that is damaged, or none', () => {
    const artefact = root.artefact('1.0.0');
    const file = join(root.folder, 'boardcure-1.0.0.tar.gz');
    writeFileSync(file, 'not a tarball');
    writeFileSync(`${file}.sha256`, `${'0'.repeat(64)}  boardcure-1.0.0.tar.gz\n`);
    expect(root.install(artefact, 'install', file).stderr).toMatch(/not what its checksum says/);
    writeFileSync(file, 'x');
    expect(root.install(artefact, 'install', `${file}.none`).stderr).toMatch(/there is no file/);
    expect(root.install(artefact, 'upgrade').stderr).toMatch(/nothing is installed yet/);
    expect(root.install(artefact, 'rollback').stderr).toMatch(/no version to go back to/);
    expect(root.install(artefact, 'frobnicate').stderr).toMatch(/no command frobnicate/);
    expect(root.version('current')).toBeNull();
  });
});

describe('an upgrade', () => {
  it('keeps readings and settings, and a copy of the database from before', () => {
    installed();
    record(1, 2, 3);
    root.asked();
    expect(root.install(root.artefact('1.1.0'), 'upgrade')).toMatchObject({ status: 0 });
    expect(root.version('current')).toBe('1.1.0');
    expect(root.version('previous')).toBe('1.0.0');
    expect(recorded().values).toEqual([1, 2, 3]);
    expect(recorded(root.text('opt/boardcure/before-upgrade').trim()).values).toEqual([1, 2, 3]);
    expect(root.asked()[0]).toBe('stop boardcure.service');
  });

  it('that does not get ready is taken back, with the unit and the database of before', () => {
    installed();
    record(1, 2);
    const before = recorded().tables;
    root.failing('1.1.0', migrate);
    const { status, stderr } = root.install(root.artefact('1.1.0', '[Service]\n'), 'upgrade');
    expect(status).toBe(1);
    expect(stderr).toMatch(/going back to 1\.0\.0/);
    expect(stderr).toMatch(/the upgrade to 1\.1\.0 was taken back/);
    expect(root.version('current')).toBe('1.0.0');
    expect(root.text('etc/systemd/system/boardcure.service')).toContain('Type=notify');
    expect(recorded()).toEqual({ values: [1, 2], tables: before });
    const aside = readdirSync(root.path(data)).filter((name) => /sqlite.+\d{4}/.test(name));
    expect(aside.length, 'the newer database is kept').toBeGreaterThan(0);
    expect(root.asked().slice(-2)).toEqual([
      'start boardcure.service',
      'is-active --quiet boardcure.service',
    ]);
  });

  it('is changed nothing by when the database cannot be copied', () => {
    installed();
    writeFileSync(
      databaseFile(root.path(data)),
      'this is no database, but it is long enough to be read',
    );
    const { status, stderr } = root.install(root.artefact('1.1.0'), 'upgrade');
    expect(status).toBe(1);
    expect(stderr).toMatch(/nothing was changed\n.*doctor/);
    expect(root.version('current')).toBe('1.0.0');
  });

  it('taken back later keeps the readings since, where the earlier version can read them', () => {
    const artefact = installed();
    record(1);
    root.install(root.artefact('1.1.0'), 'upgrade');
    record(2);
    expect(root.install(artefact, 'rollback')).toMatchObject({ status: 0 });
    expect(root.version('current')).toBe('1.0.0');
    expect(recorded().values).toEqual([1, 2]);
  });

  it('leaves the programs of the last two versions', () => {
    installed();
    root.install(root.artefact('1.1.0'), 'upgrade');
    root.install(root.artefact('1.2.0'), 'install');
    expect(readdirSync(root.path('opt/boardcure/versions'))).toEqual(['1.1.0', '1.2.0']);
    expect(root.version('previous')).toBe('1.1.0');
  });
});

describe('what is removed', () => {
  it('leaves readings and settings, unless they are to go too', () => {
    const artefact = installed();
    record(1);
    expect(root.install(artefact, 'uninstall')).toMatchObject({ status: 0 });
    expect(existsSync(root.path('opt/boardcure'))).toBe(false);
    expect(existsSync(root.path('etc/systemd/system/boardcure.service'))).toBe(false);
    expect(recorded().values).toEqual([1]);
    expect(existsSync(root.path('etc/boardcure/boardcure.toml'))).toBe(true);
    installed();
    expect(recorded().values).toEqual([1]);
    root.install(artefact, 'uninstall', '--purge');
    expect(existsSync(root.path(data))).toBe(false);
    expect(existsSync(root.path('etc/boardcure'))).toBe(false);
  });
});
