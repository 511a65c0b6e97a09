import { spawnSync } from 'node:child_process';

/**
 * Brings what was written onto the disk, where the system has the means: a stamp must not outlive
 * a power cut that the files it vouches for did not.
 *
 * @param {string} folder a folder on the file system concerned
 */
export function syncDisk(folder) {
  spawnSync('sync', ['-f', folder], { stdio: 'ignore' });
}
