import { existsSync } from 'node:fs';
import { mkdir, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { loadSettings } from '../settings/load.ts';
import { BackupRefusal } from '../store/backup-copy.ts';
import { type DatabaseSnapshot, isoTime, openSnapshot } from '../store/backup-tables.ts';
import { accessFault } from '../store/file-fault.ts';
import { databaseFile } from '../store/open.ts';
import { commandArguments } from './command-arguments.ts';
import type { CommandIo } from './command-io.ts';
import { unlessRefused } from './command-refusal.ts';
import { factFiles } from './export-facts.ts';
import { type ExportedFile, namesIn, writeExported } from './export-folder.ts';
import { outlineFiles } from './export-outlines.ts';
import { readingSeries } from './export-readings.ts';

const usage = `boardcure export <folder> [options]: writes everything as CSV and JSON, also while the daemon runs

  --into-used            write into a folder that already holds something
  --data, --config       of the daemon, as with serve

deploy/export-format.md describes the files. The list manifest.json is written last: without it
the export is not whole.`;

const manifestName = 'manifest.json';
/** Counted up when the files change so that programs reading them must change too. */
const formatVersion = 1;

/**
 * `boardcure export`: writes readings and facts into a folder, as they stood at one moment.
 *
 * @param args - what follows the word `export`
 * @param io - where lines go
 * @returns exit code: 0 when all is written, 1 when not, 2 for a wrong command line
 */
export async function exportSite(args: string[], io: CommandIo): Promise<number> {
  const given = commandArguments(args, ['into-used']);
  if (given.kind === 'help') {
    io.stderr(usage);
    return 0;
  }
  const [name, ...more] = given.plain;
  if (name === undefined || more.length > 0) {
    io.stderr(`Name one folder for the export.\n\n${usage}`);
    return 2;
  }
  return unlessRefused(io, async () => {
    const settings = loadSettings({ args: given.settings, env: io.env, cwd: io.cwd });
    const source = databaseFile(settings.data);
    const folder = resolve(io.cwd, name);
    const refusal = await whyNot(source, folder, given.own.has('into-used'));
    if (refusal !== null) throw new BackupRefusal(refusal);
    return exportInto(folder, source, settings.site, io);
  });
}

async function exportInto(
  folder: string,
  source: string,
  site: string,
  io: CommandIo,
): Promise<number> {
  const exportedAt = Date.now();
  const snapshot = openSnapshot(source);
  try {
    const counts = await writeAll(snapshot, folder, { site, exportedAt }, io.stop);
    if (counts === null) {
      io.stderr(`Stopped before the end: ${folder} holds no whole export.`);
      return 1;
    }
    io.stdout(JSON.stringify({ event: 'exported', folder, ...counts }));
    io.stderr(`Exported to ${folder}; ${manifestName} lists the files.`);
    return 0;
  } finally {
    snapshot.close();
  }
}

async function whyNot(source: string, folder: string, intoUsed: boolean): Promise<string | null> {
  if (!existsSync(source)) {
    return (
      accessFault(source, 'read') ??
      `There is no database ${source} to export. Name the daemon's folder with --data.`
    );
  }
  let names: string[];
  try {
    names = await namesIn(folder);
  } catch (cause) {
    return `${folder} cannot be used: ${(cause as Error).message}. Name another folder.`;
  }
  if (names.length === 0 || intoUsed) return null;
  return `${folder} already holds something. Name an empty folder, or add --into-used.`;
}

/** Writes every file and the manifest last; null when it was asked to stop before. */
async function writeAll(
  snapshot: DatabaseSnapshot,
  folder: string,
  about: { site: string; exportedAt: number },
  stop: AbortSignal,
): Promise<Record<'files' | 'readings' | 'outlines' | 'facts', number> | null> {
  await mkdir(folder, { recursive: true });
  // An older list would vouch for files that are about to change.
  await rm(join(folder, manifestName), { force: true });
  const readings: (ExportedFile & Record<string, unknown>)[] = [];
  for (const { path, sensor, quantity, firstAt, lastAt, pieces } of readingSeries(snapshot)) {
    if (stop.aborted) return null;
    const file = await writeExported(folder, path, pieces());
    const times = { first: isoTime(firstAt), last: isoTime(lastAt) };
    readings.push({ ...file, ...{ sensor, quantity, ...times } });
  }
  const outlines: (ExportedFile & Record<string, unknown>)[] = [];
  for (const { path, sensor, quantity, pieces } of outlineFiles(snapshot)) {
    if (stop.aborted) return null;
    outlines.push({ ...(await writeExported(folder, path, pieces())), ...{ sensor, quantity } });
  }
  const facts: (ExportedFile & { table: string })[] = [];
  for (const { path, table, pieces } of factFiles(snapshot)) {
    if (stop.aborted) return null;
    facts.push({ ...(await writeExported(folder, path, pieces())), table });
  }
  const sum = (files: readonly ExportedFile[]) => files.reduce((all, { rows }) => all + rows, 0);
  const once = (files: readonly ExportedFile[]) =>
    sum(files.filter(({ path }) => path.endsWith('.json')));
  const counts = {
    files: readings.length + outlines.length + facts.length,
    readings: sum(readings),
    outlines: once(outlines),
    facts: once(facts),
  };
  const manifest = {
    ...{ format: 'boardcure-export', formatVersion, schema: snapshot.version },
    ...{ site: about.site, exportedAt: isoTime(about.exportedAt) },
    ...{ counts, readings, outlines, facts, leftOut: snapshot.leftOut },
  };
  const text = `${JSON.stringify(manifest, null, 2)}\n`;
  await writeExported(folder, manifestName, [{ text, rows: 0 }]);
  return counts;
}
