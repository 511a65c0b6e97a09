import { readFileSync } from 'node:fs';

/** What this program’s package.json says of it. */
export interface OwnManifest {
  version: string;
  dependencies?: Record<string, string>;
  /** Where it lies, and the packages beside it. */
  folder: URL;
}

/** @returns null where its package.json is gone */
export function ownManifest(): OwnManifest | null {
  // Two folders up from the bundle and from the compiled file, one from the source.
  for (const path of ['../../', '../']) {
    const folder = new URL(path, import.meta.url);
    try {
      const own = JSON.parse(readFileSync(new URL('package.json', folder), 'utf8'));
      if (own.name === 'boardcure') return { ...own, folder };
    } catch {
      // Not there.
    }
  }
  return null;
}

/** The version of this program; `unknown` where its package.json is gone. */
export const ownVersion = (): string => ownManifest()?.version ?? 'unknown';
