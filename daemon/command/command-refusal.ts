import { SettingsError } from '../settings/load.ts';
import { BackupRefusal } from '../store/backup-copy.ts';
import { fileFault } from '../store/file-fault.ts';
import { UnopenedDatabase } from '../store/open.ts';
import type { CommandIo } from './command-io.ts';

/**
 * Runs a command that may be refused, and says why it was.
 *
 * @returns its exit code; 1 when nothing was done, 2 when the settings are at fault
 */
export async function unlessRefused(io: CommandIo, act: () => Promise<number>): Promise<number> {
  try {
    return await act();
  } catch (cause) {
    const isOurs =
      cause instanceof SettingsError ||
      cause instanceof BackupRefusal ||
      cause instanceof UnopenedDatabase;
    const text = isOurs ? cause.message : fileFault(cause);
    if (text === null) throw cause;
    io.stderr(text);
    return cause instanceof SettingsError ? 2 : 1;
  }
}
