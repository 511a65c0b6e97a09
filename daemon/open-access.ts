import { hostname } from 'node:os';
import { setTimeout as pause } from 'node:timers/promises';
import { v7 as newId } from 'uuid';
import { accessFile, openAccessFile } from './access/access-file.ts';
import { mqttAccess, type SiteMqttAccess } from './access/mqtt-access.ts';
import { pinCost, secretHasher } from './access/secret-hash.ts';
import { type SiteAccess, siteAccess } from './access/site-access.ts';
import { type SensorsOfParts, sensorsOfMessage } from './ingest/sensors-of-message.ts';
import { addressGroup } from './rules/address-group.ts';
import type { Settings } from './settings/schema.ts';

/**
 * Who may do what at this site, from the file in the data folder.
 *
 * @param decode - what becomes of topics beside the default layout
 * @throws Error saying what to do when that file cannot be read
 */
export function openSiteAccess(
  settings: Settings,
  decode: SensorsOfParts['decode'],
): {
  access: SiteAccess;
  mqttAccess: SiteMqttAccess;
} {
  const { data, access: given, site, mqtt } = settings;
  const file = openAccessFile(accessFile(data));
  const upMs = () => performance.now();
  const access = siteAccess({
    file,
    hasher: secretHasher(),
    pinCost,
    look: given.look,
    span: {
      idleMs: given.idleHours * 3_600_000,
      longestMs: given.longestDays * 86_400_000,
    },
    now: Date.now,
    upMs,
    pause,
    newId,
    groupOf: addressGroup,
  });
  const mqttAccessOfSite = mqttAccess({
    file,
    hasher: secretHasher(1, 100),
    site,
    now: Date.now,
    upMs,
    groupOf: addressGroup,
    sensorsOf: sensorsOfMessage({ site, decode, now: Date.now }),
    broker: mqtt.external === null ? 'embedded' : 'external',
  });
  return { access, mqttAccess: mqttAccessOfSite };
}

/** Names that the pages are opened under: the computer’s, and those of the settings. */
export const siteNames = ({ http }: Pick<Settings, 'http'>): string[] => [
  hostname(),
  ...http.names,
];
