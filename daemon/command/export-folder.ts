import { createHash } from 'node:crypto';
import { mkdir, open, readdir, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** A file of an export, as the manifest names it. */
export interface ExportedFile {
  /** Relative to the folder, with forward slashes. */
  readonly path: string;
  readonly rows: number;
  readonly bytes: number;
  /** Hexadecimal. */
  readonly sha256: string;
}

/** One piece of a file's text, and how many rows it holds. */
export interface TextPiece {
  readonly text: string;
  readonly rows: number;
}

/** How much text is gathered before it is written, characters. */
const writtenAtOnce = 64 * 1024;

/**
 * What a folder holds already.
 *
 * @returns names, empty for a folder that is empty or does not exist
 * @throws Error of the file system when it is a file, or may not be read
 */
export async function namesIn(folder: string): Promise<string[]> {
  try {
    return await readdir(folder);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw cause;
  }
}

/**
 * Writes one file piece by piece; it has its name only when it is whole and on disk.
 *
 * @param folder - of the export
 * @param path - of the file, relative to the folder
 * @param pieces - in order, taken one after the other
 */
export async function writeExported(
  folder: string,
  path: string,
  pieces: Iterable<TextPiece>,
): Promise<ExportedFile> {
  const target = join(folder, path);
  const part = `${target}.part`;
  await mkdir(dirname(target), { recursive: true });
  const file = await open(part, 'w');
  const hash = createHash('sha256');
  let rows = 0;
  let bytes = 0;
  let gathered = '';
  const write = async () => {
    const next = Buffer.from(gathered);
    gathered = '';
    hash.update(next);
    bytes += next.length;
    await file.writeFile(next);
  };
  try {
    for (const piece of pieces) {
      gathered += piece.text;
      rows += piece.rows;
      if (gathered.length >= writtenAtOnce) await write();
    }
    await write();
    await file.sync();
  } catch (cause) {
    await file.close();
    await rm(part, { force: true });
    throw cause;
  }
  await file.close();
  await rename(part, target);
  return { path, rows, bytes, sha256: hash.digest('hex') };
}
