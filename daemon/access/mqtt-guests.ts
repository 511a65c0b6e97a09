import { mayListen, mayPublish } from '../rules/mqtt-permission.ts';
import type { MqttLogins } from './mqtt-logins.ts';
import type { MqttSightings } from './mqtt-sightings.ts';

/** A client that was let in, and what it may do as things stand when it does it. */
export interface Guest {
  readonly name: string | null;
  publishes(topic: string, payload: Uint8Array): 'take' | 'let-go' | 'end';
  listens(filter: string): boolean;
}

interface GuestParts {
  logins: MqttLogins;
  sightings: MqttSightings;
  site: string;
  /** Whose readings a message carries; null where its topic is no sensor’s. */
  sensorsOf(topic: string, payload: Uint8Array, exact: boolean): readonly string[] | null;
}

/** Who may publish and listen, with a name and without. */
export function mqttGuests({ logins, sightings, site, sensorsOf }: GuestParts) {
  const { isClosed } = logins;

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
    // Asked for each message.
    const own = logins.following(name);
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

  /** Whether a guest may stay after names or the mode have changed. */
  const mayStay = (guest: Guest): boolean =>
    !isClosed() || (guest.name !== null && logins.of(guest.name) !== undefined);

  return { stranger, named, mayStay };
}
