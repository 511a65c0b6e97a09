import type { Socket } from 'node:net';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { Aedes, type AedesPublishPacket, type Client } from 'aedes';
import { type ListenerParts, listenForClients } from './broker-listeners.ts';
import { type ClientAccess, everyone, type Guest } from './client-access.ts';
import { exactlyOnce } from './exactly-once.ts';
import { type BrokerLimits, type CutOff, guardSockets } from './guard-sockets.ts';
import { incomingPublishes } from './incoming-publishes.ts';
import { passOnToListeners } from './listeners.ts';
import type { BrokerTraffic, IngestLog, MessagePort, TakeMessage } from './message-port.ts';
import { quickLane } from './quick-lane.ts';
import { retainedTopics } from './retained-topics.ts';
import { sparingLog } from './sparing-log.ts';
import { messagesUnderWay } from './under-way.ts';
import type { KeptMessages } from './unreleased-messages.ts';

export interface BrokerParts {
  host: string;
  /** Null for none without TLS. */
  port: number | null;
  tls?: ListenerParts['tls'];
  /** Those that are left out are as in `defaultBrokerLimits`. */
  limits?: Partial<BrokerLimits>;
  /** Who may use it; everyone when left out. */
  access?: ClientAccess;
  take: TakeMessage;
  /** QoS 2 messages of before that were not released; they end with the program when left out. */
  openMessages?: KeptMessages;
  log: IngestLog;
}

const noneKept: KeptMessages = {
  ...{ kept: [], letGo: async () => {} },
  upMs: () => performance.now(),
};

export const defaultBrokerLimits: BrokerLimits = {
  maxConnections: 1000,
  connectSeconds: 10,
  maxPacketBytes: 2_097_152,
  maxUnderWay: 5000,
  maxUnreadBytes: 1_048_576,
  maxRetained: 1000,
};

/** Subscriptions of one client. */
const mostSubscriptions = 100;

/** How long closing waits for commits, so that what is on disk is also acknowledged. */
const longestFarewellMs = 2000;

/**
 * The embedded broker. A publisher’s message is acknowledged only when `take` says that it is on
 * disk: `authorizePublish` is the one hook that runs before the acknowledgement is written. That
 * holds for QoS 1 (PUBACK) and QoS 2 (PUBREC) alike; at QoS 0 nobody is told.
 *
 * A session ends with its connection: what waits for a listener that is away would grow without
 * end. **Source:** MQTT 3.1.1 (2014), section 4.1, leaves the broker that choice.
 *
 * @throws Error saying what to do when the port is taken
 */
export async function startBroker(parts: BrokerParts): Promise<MessagePort> {
  const { host, port, access = everyone, take, log } = parts;
  const limits = { ...defaultBrokerLimits, ...parts.limits };
  const underWay = messagesUnderWay();
  const warn = sparingLog(log);
  const retained = retainedTopics(limits.maxRetained);
  const subscribed = new WeakMap<Client, number>();
  const guests = new WeakMap<Client, Guest>();
  const present = new Set<Client>();
  const counts: Omit<BrokerTraffic, 'connections'> = {
    bestEffort: 0,
    refused: 0,
    notAllowed: 0,
    retainDropped: 0,
    cutOff: {
      'too-many-connections': 0,
      'no-connect': 0,
      'packet-too-large': 0,
      unreadable: 0,
      'does-not-read': 0,
      'memory-short': 0,
    },
  };
  const guard = guardSockets(limits, (why) => {
    counts.cutOff[why]++;
    warn(whyCutOff[why]);
  });
  /** What each client said of how often it means to speak, seconds. */
  const keepAliveS = new WeakMap<Client, number>();
  /** Those that asked for a clean session. */
  const beginsAnew = new WeakSet<Client>();
  let closing = false;
  const broker = await Aedes.createBroker({
    // The guard cuts off first, and counts.
    connectTimeout: limits.connectSeconds * 2000,
    preConnect(client, packet, callback) {
      if (packet.clean !== false) beginsAnew.add(client);
      packet.clean = true;
      // The guard sees to it, for it also hears what passes by the broker.
      keepAliveS.set(client, packet.keepalive ?? 0);
      packet.keepalive = 0;
      callback(null, true);
    },
    authenticate(client, username, password, callback) {
      const address = (client.conn as Socket).remoteAddress ?? '';
      access.admit({ client: client.id, username, password, address }).then(
        (admission) => {
          if (admission.kind === 'in') {
            guests.set(client, admission.guest);
            present.add(client);
            if (beginsAnew.has(client)) qos2.beginsAnew(client.id);
            client.conn.once('close', () => {
              present.delete(client);
              listeners.gone(client);
            });
            callback(null, true);
            return;
          }
          counts.refused++;
          callback(refusal(admission.code), false);
        },
        (cause) => {
          log.warn({ error: String(cause) }, 'an MQTT client could not be looked up');
          callback(refusal(3), false);
        },
      );
    },
    authorizePublish: (client, packet, callback) => receive(client, packet, callback),
    authorizeSubscribe(client, subscription, callback) {
      const count = (subscribed.get(client) ?? 0) + 1;
      if (count > mostSubscriptions) {
        warn('a subscription was refused: its client has too many', { client: client.id });
        callback(null, null);
        return;
      }
      const guest = guests.get(client);
      if (!guest?.listens(subscription.topic)) {
        counts.notAllowed++;
        warn('an MQTT subscription was refused: it is not allowed', { client: client.id });
        callback(null, null);
        return;
      }
      access.listened(client.id, subscription.topic, guest);
      listeners.listens(client, subscription.topic);
      subscribed.set(client, count);
      callback(null, subscription);
    },
  });
  const qos2 = exactlyOnce(broker, parts.openMessages ?? noneKept);
  const listeners = passOnToListeners(broker);
  const receive = incomingPublishes({
    ...{ counts, warn, retained, guard, underWay, take, once: qos2.once },
    guestOf: (client) => guests.get(client),
    isClosing: () => closing,
  });
  broker.on('client', (client: Client) =>
    guard.known(client.conn as Socket, keepAliveS.get(client) ?? 0),
  );
  broker.on('clientReady', (client: Client) => {
    const socket = client.conn as Socket;
    const lane = quickLane({
      socket,
      isOurs: (topic) => !listeners.concernsBroker(topic),
      receive: (message, told) => receive(client, message, told),
      resume: () => guard.resume(socket),
    });
    guard.openLane(socket, lane);
  });
  const stopAccess = access.onChange((mayStay) => {
    for (const client of present) {
      const guest = guests.get(client);
      if (guest && !mayStay(guest)) client.close();
    }
  });
  broker.on('unsubscribe', (topics: string[], client: Client) => {
    subscribed.set(client, Math.max(0, (subscribed.get(client) ?? 0) - topics.length));
  });
  broker.on('clientError', (client: Client, error: Error) => {
    warn('an MQTT client was cut off', { client: client?.id, error: error.message });
  });
  broker.on('connectionError', (_client: Client, error: Error) => {
    warn('an MQTT connection failed', { error: error.message });
  });

  const doors = await listenForClients(
    {
      ...{ host, port, tls: parts.tls ?? null, handshakeMs: limits.connectSeconds * 1000 },
      maxConnections: limits.maxConnections,
    },
    (socket) => {
      if (guard.admit(socket)) broker.handle(socket);
    },
  );

  return {
    kind: 'embedded',
    port: doors.port,
    tlsPort: doors.tlsPort,
    renewTls: doors.renew,
    connected: () => true,
    traffic: () => ({ connections: guard.count(), ...counts, cutOff: { ...counts.cutOff } }),
    listenTo: () => {},
    publish(topic, payload, { retain }) {
      broker.publish(ownPacket(topic, payload, retain), (error?: Error) => {
        if (error) log.warn({ topic, error: error.message }, 'a message could not be published');
      });
    },
    deliver: (topic, payload) =>
      new Promise((done, lost) => {
        broker.publish(ownPacket(topic, payload, false), (error?: Error) =>
          error ? lost(error) : done(),
        );
      }),
    async close() {
      closing = true;
      stopAccess();
      await underWay.settled(longestFarewellMs);
      // Acknowledgements are written at the end of the turn; closing would throw them away.
      await nextTurn();
      const closed = doors.close();
      await new Promise<void>((resolve) => broker.close(() => resolve()));
      guard.closeAll();
      await closed;
    },
  };
}

const ownPacket = (topic: string, payload: string, retain: boolean) =>
  ({
    cmd: 'publish',
    topic,
    payload: Buffer.from(payload),
    qos: 1,
    retain,
    dup: false,
  }) as AedesPublishPacket;
/** As the broker wants it: its code goes into the CONNACK. */
const refusal = (returnCode: 3 | 4 | 5) =>
  Object.assign(new Error('It was not let in.'), { returnCode });

const whyCutOff: Record<CutOff, string> = {
  'too-many-connections':
    'an MQTT connection was refused: too many are open; see mqtt.maxConnections',
  'no-connect': 'an MQTT connection was cut: no CONNECT came in time',
  'packet-too-large': 'an MQTT connection was cut: a packet is too large; see mqtt.maxPacketBytes',
  unreadable: 'an MQTT connection was cut: what came is no MQTT',
  'does-not-read': 'an MQTT client was cut off: it does not read; see mqtt.maxUnreadBytes',
  'memory-short': 'an MQTT client was cut off: all together keep too much in memory',
};
