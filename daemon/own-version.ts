import { readFileSync } from 'node:fs';

/** The version of this program; `unknown` where its package.json is gone. */
export function ownVersion(): string {
  // Two folders up from the compiled file, one from the source.
  for (const path of ['../../package.json', '../package.json']) {
    try {
      const own = JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));
      if (own.name === 'boardcure') return own.version;
    } catch {
      // Not there.
    }
  }
  return 'unknown';
}
