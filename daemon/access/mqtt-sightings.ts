import type { MqttAccess } from '../contract/mqtt-access.ts';

/** More sensors than this are not told apart: who floods the broker with names fills no memory. */
const mostSensors = 5000;
/** What is told of each kind. */
const mostTold = 50;
/** A listener that has not come back for so long is no longer told of. */
const listenerMs = 7 * 86_400_000;

interface Seen {
  pairedAt: number | null;
  anonymousAt: number | null;
}

/**
 * What was seen of clients since the start: which sensors publish under a name and which without,
 * who listens, whose password was wrong.
 *
 * @param now - UTC epoch ms
 */
export function mqttSightings(now: () => number) {
  const sensors = new Map<string, Seen>();
  const wrongPasswords = new Map<string, { name: string; client: string; at: number }>();
  const strays = new Map<string, { name: string; topic: string; at: number }>();
  const listening = new Map<string, { client: string; filter: string; at: number }>();

  function keep<T>(map: Map<string, T>, key: string, value: T): void {
    map.delete(key);
    map.set(key, value);
    if (map.size > mostTold) map.delete(map.keys().next().value as string);
  }
  const newest = <T extends { at: number }>(map: Map<string, T>) =>
    [...map.values()].reverse().map((one) => ({ ...one, at: new Date(one.at).toISOString() }));

  return {
    heard(sensor: string, name: string | null): void {
      let seen = sensors.get(sensor);
      if (seen === undefined) {
        if (sensors.size >= mostSensors) return;
        seen = { pairedAt: null, anonymousAt: null };
        sensors.set(sensor, seen);
      }
      if (name === null) seen.anonymousAt = now();
      else seen.pairedAt = now();
    },
    of: (sensor: string): Seen => sensors.get(sensor) ?? { pairedAt: null, anonymousAt: null },
    wrongPassword(name: string, client: string): void {
      keep(wrongPasswords, `${name} ${client}`, { name, client: short(client), at: now() });
    },
    strayed(name: string, topic: string): void {
      keep(strays, `${name} ${topic}`, { name, topic: short(topic), at: now() });
    },
    listened(client: string, filter: string): void {
      keep(listening, `${client} ${filter}`, {
        client: short(client),
        filter: short(filter),
        at: now(),
      });
    },
    told(): Pick<MqttAccess, 'listeners' | 'wrongPasswords' | 'strays'> {
      const since = now() - listenerMs;
      for (const [key, { at }] of listening) if (at < since) listening.delete(key);
      return {
        listeners: newest(listening),
        wrongPasswords: newest(wrongPasswords),
        strays: newest(strays),
      };
    },
  };
}
export type MqttSightings = ReturnType<typeof mqttSightings>;

const short = (text: string): string => text.slice(0, 200);
