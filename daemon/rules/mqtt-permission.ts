/** Whoever may connect to the broker under a name and a password. */
export interface Permit {
  readonly kind: 'node' | 'listener' | 'forecaster';
  /** Sensors that a node may publish as. */
  readonly sensors: readonly string[];
}

/**
 * What is done with a message: taken; let go unheard, since it is for nobody here; or the connection
 * is ended, since a reading must not be acknowledged that is not kept.
 */
export type Publishing = 'take' | 'let-go' | 'end';

/** What listeners may hear: what the daemon itself says. */
const listened = ['status', 'notice', 'batch', 'place'];

/**
 * Whether a client may publish to a topic.
 *
 * @param sensors - whose readings it carries; null where its topic is no sensor’s, none where
 *   nothing in it can be read
 */
export function mayPublish(
  permit: Permit,
  topic: string,
  sensors: readonly string[] | null,
  site: string,
): Publishing {
  if (sensors !== null) {
    const own = permit.kind === 'node' && sensors.every((one) => permit.sensors.includes(one));
    return own ? 'take' : 'end';
  }
  if (permit.kind === 'forecaster' && topic.startsWith(`boardcure/${site}/forecast/`))
    return 'take';
  return 'let-go';
}

/** Whether a client may listen to a topic filter. */
export function mayListen(permit: Permit, filter: string, site: string): boolean {
  const [root, ofSite, what, ...rest] = filter.split('/');
  if (root !== 'boardcure' || ofSite !== site) return false;
  // Whether the daemon is there is all that a node needs to know.
  if (what === 'status') return rest.length === 0;
  return permit.kind === 'listener' && what !== undefined && listened.includes(what);
}

/** How a sensor stands on the way to a closed broker; times are UTC epoch ms. */
export interface SensorPairing {
  /** The name it was given; null without one. */
  readonly login: string | null;
  /** When that name was last used; null when never. */
  readonly usedAt: number | null;
  /** When it last published under its name, and when without; null when not since the start. */
  readonly pairedAt: number | null;
  readonly anonymousAt: number | null;
}

/**
 * `paired`: it publishes under its name. `waiting`: it has a name that it has not used yet.
 * `unpaired`: it has none. `mixed`: something still publishes as it without the name.
 */
export type Pairing = 'paired' | 'waiting' | 'unpaired' | 'mixed';

/** How far a sensor is; all but `paired` would fall silent if the broker were closed now. */
export function pairingOf({ login, usedAt, pairedAt, anonymousAt }: SensorPairing): Pairing {
  if (login === null) return 'unpaired';
  if (anonymousAt !== null && (pairedAt === null || anonymousAt > pairedAt)) {
    return pairedAt === null ? 'waiting' : 'mixed';
  }
  return pairedAt !== null || usedAt !== null ? 'paired' : 'waiting';
}
