import { existsSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { loadSettings } from '../settings/load.ts';
import { BackupRefusal, copyDatabase } from '../store/backup-copy.ts';
import { accessFault } from '../store/file-fault.ts';
import { databaseFile } from '../store/open.ts';
import { commandArguments } from './command-arguments.ts';
import type { CommandIo } from './command-io.ts';
import { unlessRefused } from './command-refusal.ts';

const usage = `boardcure backup <file> [options]: copies the database, also while the daemon runs

  --replace              put the new copy in the place of a file of that name
  --data, --config       of the daemon, as with serve

The copy gets its name only when it is on disk and was found whole.`;

/**
 * `boardcure backup`: copies the database into one file, beside a running daemon or without one.
 *
 * @param args - what follows the word `backup`
 * @param io - where lines go
 * @returns exit code: 0 when the copy is there, 1 when it was not made, 2 for a wrong command line
 */
export async function backup(args: string[], io: CommandIo): Promise<number> {
  const given = commandArguments(args, ['replace']);
  if (given.kind === 'help') {
    io.stderr(usage);
    return 0;
  }
  const [name, ...more] = given.plain;
  if (name === undefined || more.length > 0) {
    io.stderr(`Name one file for the backup.\n\n${usage}`);
    return 2;
  }
  return unlessRefused(io, async () => {
    const settings = loadSettings({ args: given.settings, env: io.env, cwd: io.cwd });
    const source = databaseFile(settings.data);
    const target = resolve(io.cwd, name);
    refuseTarget(source, target, given.own.has('replace'));
    const copy = await copyDatabase(source, target);
    io.stdout(JSON.stringify({ event: 'backed-up', ...copy }));
    io.stderr(`Backed up to ${copy.file}, and found whole.`);
    return 0;
  });
}

function refuseTarget(source: string, target: string, replace: boolean): void {
  if (!existsSync(source)) {
    throw new BackupRefusal(
      accessFault(source, 'read') ??
        `There is no database ${source} to back up. Name the daemon's folder with --data.`,
    );
  }
  if (!existsSync(target)) return;
  const there = statSync(target);
  if (there.isDirectory()) {
    throw new BackupRefusal(
      `${target} is a folder. Name a file in it, for example boardcure.sqlite.`,
    );
  }
  if (there.ino === statSync(source).ino && there.dev === statSync(source).dev) {
    throw new BackupRefusal(`${target} is the database itself. Name another file.`);
  }
  if (!replace) {
    throw new BackupRefusal(`${target} is there already. Name another file, or add --replace.`);
  }
}
