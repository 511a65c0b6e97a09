import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

// A person's PATH often lacks the folder that Debian puts its servers in.
const FOLDERS = [...(process.env.PATH ?? '').split(delimiter), '/usr/sbin', '/usr/local/sbin'];

/**
 * @param {string} program
 * @returns {string | null} where it is, or null when it is not on this machine
 */
export function programPath(program) {
  for (const folder of FOLDERS) {
    const file = join(folder, program);
    try {
      accessSync(file, constants.X_OK);
      return file;
    } catch {
      // Not in this folder.
    }
  }
  return null;
}
