import { resolve } from 'node:path';
import { loadSettings } from '../settings/load.ts';
import { restoreDatabase } from '../store/backup-restore.ts';
import { commandArguments } from './command-arguments.ts';
import type { CommandIo } from './command-io.ts';
import { unlessRefused } from './command-refusal.ts';

const usage = `boardcure restore <file> [options]: puts a backup in the place of the database

  --replace              where there are data already: put them aside under a dated name
  --data, --config       of the daemon, as with serve

Stop the daemon first. What was read since the backup is not in it.`;

/**
 * `boardcure restore`: puts a backup in the place of the database, the old one aside.
 *
 * @param args - what follows the word `restore`
 * @param io - where lines go
 * @returns exit code: 0 when it was restored, 1 when nothing was changed, 2 for a wrong command line
 */
export async function restore(args: string[], io: CommandIo): Promise<number> {
  const given = commandArguments(args, ['replace']);
  if (given.kind === 'help') {
    io.stderr(usage);
    return 0;
  }
  const [name, ...more] = given.plain;
  if (name === undefined || more.length > 0) {
    io.stderr(`Name one backup to restore.\n\n${usage}`);
    return 2;
  }
  return unlessRefused(io, async () => {
    const settings = loadSettings({ args: given.settings, env: io.env, cwd: io.cwd });
    const restored = await restoreDatabase({
      from: resolve(io.cwd, name),
      dataFolder: settings.data,
      replace: given.own.has('replace'),
      now: Date.now(),
    });
    io.stdout(JSON.stringify({ event: 'restored', ...restored }));
    if (restored.aside !== null) io.stderr(`What was there before is kept as ${restored.aside}.`);
    io.stderr(`Restored to ${restored.file}. Start the daemon again.`);
    return 0;
  });
}
