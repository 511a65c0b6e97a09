import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { dirname } from 'node:path';

/** What keeps this user from a file, as whole sentences with what to do, by the system’s code. */
const sentences: Readonly<Record<string, (path: string) => string>> = {
  EACCES: notPermitted,
  EPERM: notPermitted,
  EROFS: (path) =>
    `${path} lies on a disk that is mounted for reading only. A failing card does that by itself: look at it, and mount it for writing again or name another folder.`,
  EEXIST: notAFolder,
  ENOTDIR: notAFolder,
  ENOSPC: (path) =>
    `The disk of ${path} is full. Make room there, or name a folder on another disk.`,
  EDQUOT: (path) =>
    `This user may not fill more of the disk of ${path}. Make room there, or name a folder on another disk.`,
};

function notPermitted(path: string): string {
  return `${path} may not be read or written by this user. Run this as the user that the daemon runs as (sudo -u), or give that user the folder (chown -R).`;
}

function notAFolder(path: string): string {
  return `${path} is a file, or lies below one, where a folder is to be. Name another folder.`;
}

/**
 * What a failure of the system to read or write a file means, and what to do about it.
 *
 * @param path - where the failure does not name a file itself
 * @returns null where it is something else
 */
export function fileFault(cause: unknown, path?: string): string | null {
  const { code, path: named } = cause as NodeJS.ErrnoException;
  const where = named ?? path;
  return where === undefined ? null : (sentences[code ?? '']?.(where) ?? null);
}

/**
 * What keeps this user from a database: SQLite says only that it cannot be opened.
 *
 * @param use - to read it, a look into its folder is enough
 * @returns null where nothing does
 */
export function accessFault(file: string, use: 'read' | 'write'): string | null {
  const { R_OK, W_OK, X_OK } = constants;
  const folder = dirname(file);
  try {
    accessSync(folder, use === 'read' ? X_OK : R_OK | W_OK | X_OK);
    if (!statSync(folder).isDirectory()) return notAFolder(folder);
    const beside = use === 'read' ? [''] : ['', '-wal', '-shm', '-lock'];
    for (const path of beside.map((tail) => `${file}${tail}`).filter(existsSync)) {
      accessSync(path, use === 'read' ? R_OK : R_OK | W_OK);
    }
    return null;
  } catch (cause) {
    return fileFault(cause);
  }
}
