import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import type { MqttMode } from '../contract/mqtt-access.ts';
import { BoardcureError } from '../contract/problem.ts';
import { sentence } from '../wording/english.ts';
import { type AccessFile, asKept, type KeptLogin } from './access-file.ts';
import { randomCode } from './one-time-codes.ts';
import { passwordCost, type SecretHasher } from './secret-hash.ts';
import { tryCounter } from './try-counter.ts';

/** 30 signs to the power of this: 98 random bits. */
const passwordSigns = 20;
/** How often the use of a name is written down. */
const noteUseMs = 86_400_000;
const mostLogins = 5000;

export interface MqttLoginParts {
  file: AccessFile;
  hasher: SecretHasher;
  /** UTC epoch ms. */
  now(): number;
  /** Milliseconds that only run forward. */
  upMs(): number;
  groupOf(address: string): string;
}

/** Names and passwords at the embedded broker, as the access file keeps them. */
export function mqttLogins({ file, hasher, now, upMs, groupOf }: MqttLoginParts) {
  const tries = tryCounter({ upMs, pause: async () => {} });
  const proofKey = randomBytes(32);
  /** Passwords that were right before: a thousand nodes that come back cost no thousand hashes. */
  const proven = new Map<string, { of: string; proof: Buffer }>();
  // Only this process changes what is about MQTT, and it is asked for each message.
  const all = (): readonly KeptLogin[] => file.known().mqtt.logins;
  const of = (name: string) => all().find((login) => login.name === name);

  function change(edit: (logins: KeptLogin[]) => KeptLogin[]): Promise<unknown> {
    return file.change((kept) => ({
      ...kept,
      mqtt: { ...kept.mqtt, logins: edit(kept.mqtt.logins) },
    }));
  }

  return {
    all,
    of,
    isClosed: () => file.known().mqtt.mode === 'closed',
    /** Follows one name: looked up again only when something has changed. */
    following(name: string): () => KeptLogin | undefined {
      let knownFor: unknown = null;
      let known: KeptLogin | undefined;
      return () => {
        const { mqtt } = file.known();
        if (mqtt !== knownFor) {
          known = of(name);
          knownFor = mqtt;
        }
        return known;
      };
    },

    /** @throws HasherBusy where too many passwords wait to be looked at */
    async isRight(login: KeptLogin, password: Buffer, address: string): Promise<boolean> {
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
    },
    async noteUse({ name, usedAt }: KeptLogin): Promise<void> {
      const at = now();
      if (usedAt !== null && at - usedAt < noteUseMs) return;
      await change((kept) =>
        kept.map((login) => (login.name === name ? { ...login, usedAt: at } : login)),
      );
    },

    /** @throws BoardcureError where the name is taken, or there is no room for one more */
    async make(name: string, kind: KeptLogin['kind'], sensors: string[]) {
      if (of(name) !== undefined) throw taken(name);
      if (all().length >= mostLogins) {
        throw new BoardcureError(
          'BC_STATE_CONFLICT',
          sentence('broker-names-full', { names: mostLogins }),
        );
      }
      refuseKind(kind, sensors);
      const password = randomCode(passwordSigns);
      const login: KeptLogin = {
        ...{ name, kind, sensors, usedAt: null, createdAt: now() },
        secret: asKept(await hasher.make(password, passwordCost)),
      };
      await change((before) => {
        if (before.some((other) => other.name === name)) throw taken(name);
        return [...before, login];
      });
      return { login, password };
    },
    /** False when there is no such name. */
    async assign(name: string, sensors: string[]): Promise<boolean> {
      const login = of(name);
      if (login === undefined) return false;
      refuseKind(login.kind, sensors);
      await change((before) =>
        before.map((one) => (one.name === name ? { ...one, sensors } : one)),
      );
      return true;
    },
    /** False when there is no such name. */
    async remove(name: string): Promise<boolean> {
      if (of(name) === undefined) return false;
      await change((before) => before.filter((login) => login.name !== name));
      proven.delete(name);
      return true;
    },
    setMode: async (mode: MqttMode): Promise<void> => {
      await file.change((kept) => ({ ...kept, mqtt: { ...kept.mqtt, mode } }));
    },
  };
}
export type MqttLogins = ReturnType<typeof mqttLogins>;

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
