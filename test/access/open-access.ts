import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { v7 as newId } from 'uuid';
import { onTestFinished } from 'vitest';
import { accessFile, openAccessFile } from '../../daemon/access/access-file.ts';
import { mqttAccess } from '../../daemon/access/mqtt-access.ts';
import { secretHasher } from '../../daemon/access/secret-hash.ts';
import { type SiteAccessParts, siteAccess } from '../../daemon/access/site-access.ts';
import { type SensorsOfParts, sensorsOfMessage } from '../../daemon/ingest/sensors-of-message.ts';
import { addressGroup } from '../../daemon/rules/address-group.ts';

const hourMs = 3_600_000;

/** A time that stands still until a test moves it on, and the pauses that were asked for. */
export interface TestTime {
  ms: number;
  readonly pauses: number[];
}

/** Access on a file of its own. */
export function openAccess(
  given: Partial<SiteAccessParts> & {
    data?: string;
    decode?: SensorsOfParts['decode'];
  } = {},
) {
  const { data = dataFolder(), decode = () => ({ kind: 'not-ours' }), ...parts } = given;
  const time: TestTime = { ms: Date.UTC(2026, 4, 20, 12), pauses: [] };
  const file = openAccessFile(accessFile(data));
  const access = siteAccess({
    file,
    hasher: secretHasher(),
    // A hundredth of what a daemon takes: tests log in often.
    pinCost: { cost: 2 ** 10, block: 8, parallel: 1 },
    look: 'open',
    span: { idleMs: 24 * hourMs, longestMs: 30 * 24 * hourMs },
    now: () => time.ms,
    upMs: () => time.ms,
    pause: async (ms) => {
      time.pauses.push(ms);
    },
    newId,
    groupOf: addressGroup,
    ...parts,
  });
  const mqtt = mqttAccess({
    file,
    hasher: secretHasher(),
    site: 'shed',
    now: () => time.ms,
    upMs: () => time.ms,
    groupOf: addressGroup,
    sensorsOf: sensorsOfMessage({ site: 'shed', decode, now: () => time.ms }),
    broker: 'embedded',
  });
  return { access, mqttAccess: mqtt, file, data, time };
}

/** A folder that is gone when the test is over. */
export function dataFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'boardcure-access-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
