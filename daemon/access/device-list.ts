import { createHash } from 'node:crypto';
import type { Role } from '../contract/role.ts';
import { type DeviceSpan, deviceEndsAt } from '../rules/device-end.ts';
import type { AccessFile, Kept, KeptDevice } from './access-file.ts';
import { newKey } from './access-file.ts';
import { readToken, signedToken } from './signed-token.ts';

/** More log-ins than this end the oldest. */
const mostDevices = 500;
/** A token is renewed when it is older than this share of its idle time. */
const renewShare = 0.05;
const longestRenewMs = 3_600_000;

export interface DeviceListParts {
  file: AccessFile;
  span: DeviceSpan;
  /** UTC epoch ms. */
  now(): number;
  newId(): string;
}

/** Devices that are logged in or paired, and the tokens they carry. */
export function deviceList({ file, span, now, newId }: DeviceListParts) {
  /** Newer than what the file says: that is not written with each request. */
  const seen = new Map<string, number>();

  const told = (device: KeptDevice) => ({
    ...device,
    seenAt: seen.get(device.id) ?? device.seenAt,
  });
  const holds = (device: KeptDevice): boolean => {
    const endsAt = deviceEndsAt({ ...device, seenAt: told(device).seenAt ?? device.since }, span);
    return endsAt === null || endsAt > now();
  };
  const trimmed = (devices: KeptDevice[]): KeptDevice[] => {
    const held = devices.filter(holds).map(told);
    const logIns = held.filter(({ kind }) => kind === 'log-in');
    const over = new Set(logIns.slice(0, Math.max(0, held.length - mostDevices)));
    return held.filter((device) => !over.has(device));
  };

  return {
    cookieName: (): string =>
      `boardcure-${createHash('sha256').update(file.read().key).digest('hex').slice(0, 8)}`,
    /** The device of a session token; null when it is unknown or has run out. */
    carried(text: string | undefined) {
      const { key, devices } = file.read();
      const token = readToken('session', text, key);
      if (!token) return null;
      const device = devices.find(({ id }) => id === token.id);
      if (!device) return null;
      const at = now();
      const endsAt = deviceEndsAt({ ...device, seenAt: token.seenAt }, span);
      if (endsAt !== null && endsAt <= at) return null;
      seen.set(device.id, at);
      const renewAfter = Math.min(longestRenewMs, span.idleMs * renewShare);
      const isOld = at - token.seenAt > renewAfter || token.seenAt > at;
      return {
        ...told(device),
        expiresAt: deviceEndsAt({ ...device, seenAt: at }, span),
        renewed: isOld ? signedToken('session', { id: device.id, seenAt: at }, key) : null,
      };
    },
    /** A name for a device that was once logged in here; null for a stranger. */
    knownAs: (text: string | undefined): string | null =>
      readToken('known', text, file.read().key)?.id ?? null,
    /** Adds a device; `also` is changed in the same write. */
    async letIn(
      kind: KeptDevice['kind'],
      role: Role,
      name: string,
      also: (kept: Kept) => Kept = (kept) => kept,
    ) {
      const at = now();
      const device: KeptDevice = { id: newId(), kind, role, name, since: at, seenAt: at };
      const { key } = await file.change((kept) => {
        const changed = also(kept);
        return { ...changed, devices: trimmed([...changed.devices, device]) };
      });
      return {
        device,
        session: signedToken('session', { id: device.id, seenAt: at }, key),
        known: kind === 'log-in' ? signedToken('known', { id: newId(), seenAt: at }, key) : null,
      };
    },
    all: (): KeptDevice[] => file.read().devices.filter(holds).map(told),
    async end(ids: (device: KeptDevice) => boolean, newSigningKey = false): Promise<void> {
      await file.change((kept) => ({
        ...kept,
        key: newSigningKey ? newKey() : kept.key,
        devices: trimmed(kept.devices).filter((device) => !ids(device)),
      }));
    },
  };
}
