import { toMoment } from '../contract/moment.ts';
import type { MqttAccess, MqttMode } from '../contract/mqtt-access.ts';
import { BoardcureError } from '../contract/problem.ts';
import { pairingOf } from '../rules/mqtt-permission.ts';
import { sentence } from '../wording/english.ts';
import type { KeptLogin } from './access-file.ts';
import { type Guest, mqttGuests } from './mqtt-guests.ts';
import { type MqttLoginParts, mqttLogins } from './mqtt-logins.ts';
import { mqttSightings } from './mqtt-sightings.ts';
import { HasherBusy } from './secret-hash.ts';

/** A sensor that was silent for longer is not asked about when the broker is closed. */
const inUseMs = 30 * 86_400_000;

export interface MqttAccessParts extends MqttLoginParts {
  site: string;
  /** Whose readings a message carries; null where its topic is no sensor’s. */
  sensorsOf(topic: string, payload: Uint8Array, exact: boolean): readonly string[] | null;
  broker: 'embedded' | 'external';
}

export interface Knocking {
  client: string;
  username: string | undefined;
  password: Buffer | undefined;
  address: string;
}

type Admission =
  | { readonly kind: 'in'; readonly guest: Guest }
  | { readonly kind: 'refused'; readonly code: 3 | 4 | 5 };

/** A sensor as the store knows it. */
export interface HeardSensor {
  id: string;
  name: string | null;
  latestAt: number | null;
}

/** Names and passwords at the embedded broker, and the way from open to closed. */
export function mqttAccess(parts: MqttAccessParts) {
  const { file, now, site, sensorsOf } = parts;
  const logins = mqttLogins(parts);
  const sightings = mqttSightings(now);
  const guests = mqttGuests({ logins, sightings, site, sensorsOf });
  const listeners = new Set<(mayStay: (guest: Guest) => boolean) => void>();
  const { isClosed } = logins;

  function tell(): void {
    for (const listener of listeners) listener(guests.mayStay);
  }

  function inUse(sensors: readonly HeardSensor[]): MqttAccess['sensors'] {
    const since = now() - inUseMs;
    return sensors
      .filter(({ latestAt }) => latestAt !== null && latestAt >= since)
      .map(({ id, name, latestAt }) => {
        const login = logins.all().find(({ sensors: own }) => own.includes(id)) ?? null;
        return {
          id,
          name,
          latestAt: toMoment(latestAt),
          login: login?.name ?? null,
          pairing: pairingOf({
            login: login?.name ?? null,
            usedAt: login?.usedAt ?? null,
            ...sightings.of(id),
          }),
        };
      });
  }

  return {
    async admit({ client, username, password, address }: Knocking): Promise<Admission> {
      const login = username === undefined ? undefined : logins.of(username);
      try {
        if (
          login !== undefined &&
          (await logins.isRight(login, password ?? Buffer.of(), address))
        ) {
          await logins.noteUse(login);
          return { kind: 'in', guest: guests.named(login.name) };
        }
      } catch (cause) {
        if (!(cause instanceof HasherBusy)) throw cause;
        return isClosed() ? { kind: 'refused', code: 3 } : { kind: 'in', guest: guests.stranger };
      }
      if (login !== undefined) sightings.wrongPassword(login.name, client);
      if (!isClosed()) return { kind: 'in', guest: guests.stranger };
      return { kind: 'refused', code: username === undefined ? 5 : 4 };
    },
    listened: (client: string, filter: string, guest: Guest): void => {
      if (guest.name === null) sightings.listened(client, filter);
    },
    onChange(listener: (mayStay: (guest: Guest) => boolean) => void): () => void {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },

    state(sensors: readonly HeardSensor[]): MqttAccess {
      const { mode } = file.read().mqtt;
      return {
        mode,
        broker: parts.broker,
        sensors: inUse(sensors),
        logins: logins.all().map(({ name, kind, sensors: own, createdAt, usedAt }) => ({
          ...{ name, kind, sensors: own },
          createdAt: toMoment(createdAt),
          usedAt: toMoment(usedAt),
        })),
        ...sightings.told(),
      };
    },

    async make(name: string, kind: KeptLogin['kind'], sensors: string[]) {
      const { login, password } = await logins.make(name, kind, sensors);
      return { name, kind, sensors, createdAt: toMoment(login.createdAt), usedAt: null, password };
    },
    /** False when there is no such name. */
    async assign(name: string, sensors: string[]): Promise<boolean> {
      const known = await logins.assign(name, sensors);
      if (known) tell();
      return known;
    },
    async remove(name: string): Promise<boolean> {
      const known = await logins.remove(name);
      if (known) tell();
      return known;
    },

    /** @throws BoardcureError naming what would fall silent without having been named */
    async setMode(
      mode: MqttMode,
      sensors: readonly HeardSensor[],
      allowed: { silence: readonly string[]; silenceListeners: boolean },
    ): Promise<void> {
      if (mode === 'closed' && !isClosed()) {
        const silent = inUse(sensors)
          .filter(({ id, pairing }) => pairing !== 'paired' && !allowed.silence.includes(id))
          .map(({ id }) => id);
        if (silent.length > 0) {
          throw new BoardcureError(
            'BC_SENSORS_WOULD_FALL_SILENT',
            sentence('sensors-would-fall-silent', fewOf(silent)),
            { pointer: '/silence' },
          );
        }
        const unnamed = sightings.told().listeners;
        if (unnamed.length > 0 && !allowed.silenceListeners) {
          throw new BoardcureError(
            'BC_SENSORS_WOULD_FALL_SILENT',
            sentence('listeners-would-fall-silent', fewOf(unnamed.map(({ client }) => client))),
            { pointer: '/silenceListeners' },
          );
        }
      }
      await logins.setMode(mode);
      tell();
    },
  };
}
export type SiteMqttAccess = ReturnType<typeof mqttAccess>;

/** The first of many names, and how many more there are. */
const fewOf = (names: readonly string[]) => ({
  names: names.slice(0, 20),
  more: Math.max(0, names.length - 20),
});
