import { hostname } from 'node:os';
import { setTimeout as pause } from 'node:timers/promises';
import { v7 as newId } from 'uuid';
import { accessFile, openAccessFile } from './access/access-file.ts';
import { secretHasher } from './access/secret-hash.ts';
import { type SiteAccess, siteAccess } from './access/site-access.ts';
import { addressGroup } from './rules/address-group.ts';
import type { Settings } from './settings/schema.ts';

/**
 * Who may do what at this site, from the file in the data folder.
 *
 * @throws Error saying what to do when that file cannot be read
 */
export function openSiteAccess({ data, access }: Pick<Settings, 'data' | 'access'>): SiteAccess {
  return siteAccess({
    file: openAccessFile(accessFile(data)),
    hasher: secretHasher(),
    look: access.look,
    span: {
      idleMs: access.idleHours * 3_600_000,
      longestMs: access.longestDays * 86_400_000,
    },
    now: Date.now,
    upMs: () => performance.now(),
    pause,
    newId,
    groupOf: addressGroup,
  });
}

/** Names that the pages are opened under: the computer’s, and those of the settings. */
export const siteNames = ({ http }: Pick<Settings, 'http'>): string[] => [
  hostname(),
  ...http.names,
];
