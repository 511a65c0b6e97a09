import { isJsonObject, member } from './json.ts';
import { because, type Refusal, sent } from './refusal.ts';

// RFC 8428 section 4.4 defines 10. RFC 9100 (from memory) counts features as powers of two on top
// of it; secondary units such as `/100` are feature 4, so 10 + 16.
const newestVersion = 10;
const versionWithSecondaryUnits = 26;

/**
 * Why the version of a SenML pack keeps it from being used: newer than what is understood here,
 * no version at all, or not the same throughout.
 * @param pack the parsed JSON array
 * @returns null when nothing is wrong
 *
 * **Source:** RFC 8428 (2018), section 4.4.
 */
export function refusedVersion(pack: readonly unknown[]): Refusal | null {
  let stated: number | undefined;
  for (const [index, json] of pack.entries()) {
    const version = isJsonObject(json) ? member(json, 'bver') : undefined;
    if (version === undefined) continue;
    const record = index + 1;
    if (!isKnown(version)) {
      return {
        code: 'senml-version',
        ...because('pack-version', { record, sent: sent(version), version: newestVersion }),
      };
    }
    if (stated !== undefined && stated !== version) {
      return {
        code: 'senml-version',
        ...because('pack-versions', { record, version, earlier: stated }),
      };
    }
    stated = version;
  }
  return null;
}

const isKnown = (version: unknown): version is number =>
  Number.isInteger(version) &&
  (version === versionWithSecondaryUnits ||
    ((version as number) >= 1 && (version as number) <= newestVersion));
