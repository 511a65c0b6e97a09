import { readFileSync } from 'node:fs';

/**
 * @param {string} file
 * @returns {any} null when the file is absent or is not JSON
 */
export function readJson(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}
