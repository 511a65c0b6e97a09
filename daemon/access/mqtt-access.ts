import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import type { MqttAccess, MqttMode } from '../contract/mqtt-access.ts';
import { BoardcureError } from '../contract/problem.ts';
import { mayListen, mayPublish, pairingOf } from '../rules/mqtt-permission.ts';
import { sentence } from '../wording/english.ts';
import { type AccessFile, asKept, type KeptLogin } from './access-file.ts';
import { mqttSightings } from './mqtt-sightings.ts';
import { randomCode } from './one-time-codes.ts';
import { HasherBusy, passwordCost, type SecretHasher } from './secret-hash.ts';
import { tryCounter } from './try-counter.ts';

/** 30 signs to the power of this: 98 random bits. */
const passwordSigns = 20;
/** A sensor that was silent for longer is not asked about when the broker is closed. */
const inUseMs = 30 * 86_400_000;
/** How often the use of a name is written down. */
const noteUseMs = 86_400_000;
const mostLogins = 5000;

export interface MqttAccessParts {
  file: AccessFile;
  hasher: SecretHasher;
  site: string;
  /** UTC epoch ms. */
  now(): number;
  /** Milliseconds that only run forward. */
  upMs(): number;
  groupOf(address: string): string;
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

export interface Guest {
  readonly name: string | null;
  publishes(topic: string, payload: Uint8Array): 'take' | 'let-go' | 'end';
  listens(filter: string): boolean;
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
  const { file, hasher, site, now, groupOf, sensorsOf } = parts;
  const sightings = mqttSightings(now);
  const tries = tryCounter({ upMs: parts.upMs, pause: async () => {} });
  const proofKey = randomBytes(32);
  /** Passwords that were right before: a thousand nodes that come back cost no thousand hashes. */
  const proven = new Map<string, { of: string; proof: Buffer }>();
  const listeners = new Set<(mayStay: (guest: Guest) => boolean) => void>();
  // Only this process changes what is about MQTT, and it is asked for each message.
  const logins = () => file.known().mqtt.logins;
  const loginOf = (name: string) => logins().find((login) => login.name === name);
  const isClosed = () => file.known().mqtt.mode === 'closed';

  async function isRight(login: KeptLogin, password: Buffer, address: string): Promise<boolean> {
    const proof = createHmac('sha256', proofKey).update(password).digest();
    const before = proven.get(login.name);
    if (before?.of === login.secret.hash && timingSafeEqual(before.proof, proof)) return true;
    const trier = { source: `${groupOf(address)} ${login.name}`, isStranger: false };
    const tried = await tries.attempt(trier, () =>
      hasher.matches(password.toString('utf8'), login.secret),
    );
    if (tried.kind === 'wait' || !tried.right) return false;
    proven.set(login.name, { of: login.secret.hash, proof });
    return true;
  }

  async function noteUse({ name, usedAt }: KeptLogin): Promise<void> {
    const at = now();
    if (usedAt !== null && at - usedAt < noteUseMs) return;
    await change((kept) =>
      kept.map((login) => (login.name === name ? { ...login, usedAt: at } : login)),
    );
  }

  function change(edit: (logins: KeptLogin[]) => KeptLogin[]): Promise<unknown> {
    return file.change((kept) => ({
      ...kept,
      mqtt: { ...kept.mqtt, logins: edit(kept.mqtt.logins) },
    }));
  }

  function tell(): void {
    const mayStay = (guest: Guest) =>
      guest.name === null ? !isClosed() : loginOf(guest.name) !== undefined || !isClosed();
    for (const listener of listeners) listener(mayStay);
  }

  /** Until the broker is closed everything is taken, and only seen: nothing falls silent unasked. */
  const stranger: Guest = {
    name: null,
    publishes(topic, payload) {
      if (isClosed()) return 'end';
      for (const sensor of sensorsOf(topic, payload, false) ?? []) sightings.heard(sensor, null);
      return 'take';
    },
    listens: () => !isClosed(),
  };

  function named(name: string): Guest {
    let knownFor: unknown = null;
    let known: KeptLogin | undefined;

    /** Asked for each message: looked up again only when something has changed. */
    function own(): KeptLogin | undefined {
      const { mqtt } = file.known();
      if (mqtt !== knownFor) {
        known = loginOf(name);
        knownFor = mqtt;
      }
      return known;
    }

    return {
      name,
      publishes(topic, payload) {
        const login = own();
        const sensors = sensorsOf(topic, payload, isClosed());
        const may = login === undefined ? 'end' : mayPublish(login, topic, sensors, site);
        if (may === 'end') sightings.strayed(name, topic);
        for (const sensor of sensors ?? []) {
          sightings.heard(sensor, login?.sensors.includes(sensor) ? name : null);
        }
        return isClosed() ? may : 'take';
      },
      listens(filter) {
        const login = own();
        return !isClosed() || (login !== undefined && mayListen(login, filter, site));
      },
    };
  }

  function inUse(sensors: readonly HeardSensor[]): MqttAccess['sensors'] {
    const since = now() - inUseMs;
    return sensors
      .filter(({ latestAt }) => latestAt !== null && latestAt >= since)
      .map(({ id, name, latestAt }) => {
        const login = logins().find(({ sensors: own }) => own.includes(id)) ?? null;
        const seen = sightings.of(id);
        return {
          id,
          name,
          latestAt: moment(latestAt),
          login: login?.name ?? null,
          pairing: pairingOf({
            login: login?.name ?? null,
            usedAt: login?.usedAt ?? null,
            ...seen,
          }),
        };
      });
  }

  return {
    async admit({ client, username, password, address }: Knocking): Promise<Admission> {
      const login = username === undefined ? undefined : loginOf(username);
      try {
        if (login !== undefined && (await isRight(login, password ?? Buffer.of(), address))) {
          await noteUse(login);
          return { kind: 'in', guest: named(login.name) };
        }
      } catch (cause) {
        if (!(cause instanceof HasherBusy)) throw cause;
        return isClosed() ? { kind: 'refused', code: 3 } : { kind: 'in', guest: stranger };
      }
      if (login !== undefined) sightings.wrongPassword(login.name, client);
      if (!isClosed()) return { kind: 'in', guest: stranger };
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
        logins: logins().map(({ name, kind, sensors: own, createdAt, usedAt }) => ({
          ...{ name, kind, sensors: own },
          createdAt: moment(createdAt),
          usedAt: moment(usedAt),
        })),
        ...sightings.told(),
      };
    },

    async make(name: string, kind: KeptLogin['kind'], sensors: string[]) {
      refuseTaken(name, kind, sensors);
      const password = randomCode(passwordSigns);
      const login: KeptLogin = {
        ...{ name, kind, sensors, usedAt: null, createdAt: now() },
        secret: asKept(await hasher.make(password, passwordCost)),
      };
      await change((before) => {
        if (before.some((other) => other.name === name)) throw taken(name);
        return [...before, login];
      });
      return { name, kind, sensors, createdAt: moment(login.createdAt), usedAt: null, password };
    },
    /** False when there is no such name. */
    async assign(name: string, sensors: string[]): Promise<boolean> {
      const login = loginOf(name);
      if (login === undefined) return false;
      refuseKind(login.kind, sensors);
      await change((before) =>
        before.map((one) => (one.name === name ? { ...one, sensors } : one)),
      );
      tell();
      return true;
    },
    async remove(name: string): Promise<boolean> {
      if (loginOf(name) === undefined) return false;
      await change((before) => before.filter((login) => login.name !== name));
      proven.delete(name);
      tell();
      return true;
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
      await file.change((kept) => ({ ...kept, mqtt: { ...kept.mqtt, mode } }));
      tell();
    },
  };

  function refuseTaken(name: string, kind: KeptLogin['kind'], sensors: string[]): void {
    if (loginOf(name) !== undefined) throw taken(name);
    if (logins().length >= mostLogins) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        sentence('broker-names-full', { names: mostLogins }),
      );
    }
    refuseKind(kind, sensors);
  }
}
export type SiteMqttAccess = ReturnType<typeof mqttAccess>;

function refuseKind(kind: KeptLogin['kind'], sensors: readonly string[]): void {
  if ((kind === 'node') === sensors.length > 0) return;
  throw new BoardcureError(
    'BC_REQUEST_INVALID',
    kind === 'node' ? sentence('node-without-sensor', {}) : sentence('other-with-sensor', { kind }),
    { pointer: '/sensors' },
  );
}

const taken = (name: string) =>
  new BoardcureError('BC_ID_TAKEN', sentence('broker-name-taken', { name }), { pointer: '/name' });

/** The first of many names, and how many more there are. */
const fewOf = (names: readonly string[]) => ({
  names: names.slice(0, 20),
  more: Math.max(0, names.length - 20),
});

function moment(at: number): string;
function moment(at: number | null): string | null;
function moment(at: number | null): string | null {
  return at === null ? null : new Date(at).toISOString();
}
