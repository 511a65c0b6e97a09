import { statfsSync } from 'node:fs';
import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';

export interface FreeSpace {
  freeBytes: number;
  totalBytes: number;
}

/**
 * The room on the disk that holds a folder, for one who is not its administrator.
 *
 * @throws Error when there is no such folder
 */
export function freeSpace(folder: string): FreeSpace {
  const { bavail, blocks, bsize } = statfsSync(folder);
  return { freeBytes: bavail * bsize, totalBytes: blocks * bsize };
}

/** A small disk is not short of room for being small. */
const leastShare = 1 / 20;

/**
 * Tells when there is little room left on the disk of the data folder.
 *
 * @param leastBytes - room that is little on a large disk; on a small one it is a twentieth of it
 * @param look - how the room is looked up; only tests give another
 * @returns what is to be said; nothing while there is enough
 */
export function spaceDoubts(folder: string, leastBytes: number, look = freeSpace): Said[] {
  let space: FreeSpace;
  try {
    space = look(folder);
  } catch {
    // Moved away or unmounted beneath the daemon, which writes on into what it has open.
    return [sentence('folder-gone', { name: folder })];
  }
  const { freeBytes, totalBytes } = space;
  if (freeBytes >= Math.min(leastBytes, totalBytes * leastShare)) return [];
  return [sentence('disk-low', { freeMiB: Math.floor(freeBytes / 1_048_576) })];
}
