import type { Packet } from 'mqtt-packet';

/** From this code on a broker says no. **Source:** MQTT 5.0 (2019), section 2.4. */
export const firstRefusal = 0x80;

export interface SubscriptionParts {
  /** Listened to always; without the first of them nothing works. */
  fixed: readonly string[];
  /** Where the topic rules look. */
  byRule: readonly string[];
  messageId: () => number;
}

/**
 * What a session at another broker listens to: its own topics, and those of the topic rules, which
 * change while it runs. A session outlasts its connection, so that what is no longer listened to has
 * to be said to the broker, at the latest with the next connection.
 */
export function subscriptions({ fixed, byRule, messageId }: SubscriptionParts) {
  let wanted = [...byRule];
  /** No longer wanted, and not yet said to the broker. */
  const unwanted = new Set<string>();
  let asked = new Map<number, readonly string[]>();

  function subscribe(filters: readonly string[]): Packet {
    const id = messageId();
    asked.set(id, filters);
    return {
      cmd: 'subscribe',
      messageId: id,
      subscriptions: filters.map((topic) => ({ topic, qos: 1 as const })),
    };
  }

  function farewell(): Packet[] {
    if (unwanted.size === 0) return [];
    const unsubscriptions = [...unwanted];
    unwanted.clear();
    return [{ cmd: 'unsubscribe', messageId: messageId(), unsubscriptions }];
  }

  return {
    /** What to send once a connection stands. */
    opening(): Packet[] {
      asked = new Map();
      // One by one for the rules: a broker that refuses one filter may refuse the packet.
      return [subscribe(fixed), ...farewell(), ...wanted.map((filter) => subscribe([filter]))];
    },
    /** Takes other rules into account; returns what to send where a connection stands. */
    changed(filters: readonly string[]): Packet[] {
      const added = filters.filter((filter) => !wanted.includes(filter));
      for (const filter of wanted) if (!filters.includes(filter)) unwanted.add(filter);
      for (const filter of filters) unwanted.delete(filter);
      wanted = [...filters];
      return added.map((filter) => subscribe([filter]));
    },
    farewell,
    /** What an answer refuses, and whether it is the answer to the fixed topics. */
    answered(id: number | undefined, granted: readonly unknown[]) {
      const filters = asked.get(id ?? 0) ?? [];
      asked.delete(id ?? 0);
      const refused = filters.filter((_, index) => Number(granted[index]) >= firstRefusal);
      return { isFixed: filters === fixed, refused };
    },
  };
}
