import { randomUUID } from 'node:crypto';
import { connect as connectTcp, isIP, type Socket } from 'node:net';
import { connect as connectTls } from 'node:tls';
import { generate, type Packet, parser } from 'mqtt-packet';
import { sentence } from '../wording/english.ts';
import { SaidError } from '../wording/said-error.ts';
import { forecastTopic } from './forecast-port.ts';
import type { IngestLog, MessagePort, TakeMessage } from './message-port.ts';
import { sentMessages } from './sent-messages.ts';
import { keepAliveSeconds, sessionConnect } from './session-connect.ts';
import { firstRefusal, subscriptions } from './subscriptions.ts';
import { messagesUnderWay } from './under-way.ts';

export interface SubscriberParts {
  /** `mqtt://` or `mqtts://`, with user and password where the broker wants them. */
  url: string;
  clientId: string;
  site: string;
  /** Where the topic rules look, to begin with. */
  filters?: readonly string[];
  take: TakeMessage;
  log: IngestLog;
}

const shortestRetryMs = 500;
const longestRetryMs = 30_000;
/** How long closing waits for commits, so that what is on disk is also acknowledged. */
const longestFarewellMs = 2000;
/** Messages that are not retained and wait for a connection; more are let go. */
const unsentKept = 1000;
/** CONNACK codes of a broker that does not speak MQTT 5: 3.1.1’s and 5’s own. */
const versionRefused = [1, 0x84];

/**
 * A lasting session at another broker, QoS 1. Each message is acknowledged once it is on disk, with
 * many under way at once; a message that could not be kept is not acknowledged and comes again.
 *
 * What waited at the broker while we were away comes before a marker that we send ourselves, and is
 * told apart by that.
 */
export function startSubscriber(parts: SubscriberParts): MessagePort {
  const { url, clientId, site, filters = [], take, log } = parts;
  const { hostname, port, protocol, username, password } = new URL(url);
  const secure = protocol === 'mqtts:';
  // A literal IPv6 address stands in brackets in a URL only.
  const host = hostname.replace(/^\[|\]$/g, '');
  const target = { host, port: Number(port || (secure ? 8883 : 1883)) };
  const markerTopic = `boardcure/${site}/daemon/marker`;
  const statusTopic = `boardcure/${site}/status`;
  let version: 4 | 5 = 5;
  let socket: Socket | null = null;
  let ready = false;
  let closing = false;
  let retryMs = shortestRetryMs;
  let retry: NodeJS.Timeout | null = null;
  let nextId = 0;
  const topics = subscriptions({
    fixed: [`boardcure/${site}/sensor/#`, forecastTopic(site), markerTopic],
    byRule: filters,
    messageId,
  });
  const underWay = messagesUnderWay();
  const sent = sentMessages();
  /** The newest retained payload of each topic: a broker that started anew has forgotten them. */
  const retained = new Map<string, string>();
  const unsent: { topic: string; payload: string }[] = [];

  function send(to: Socket, packet: Packet): void {
    if (to.writable) to.write(generate(packet, { protocolVersion: version }));
  }

  function messageId(): number {
    nextId = (nextId % 65_535) + 1;
    return nextId;
  }

  function connect(): void {
    retry = null;
    const nonce = randomUUID();
    let backlog = true;
    let heardAt = performance.now();
    const own = secure
      ? connectTls({ ...target, ...(isIP(host) ? {} : { servername: host }) })
      : connectTcp({ ...target });
    socket = own;
    own.setNoDelay(true);
    const packets = parser({ protocolVersion: version });
    const alive = setInterval(() => {
      if (performance.now() - heardAt > keepAliveSeconds * 1500) own.destroy();
      else if (ready) send(own, { cmd: 'pingreq' });
    }, keepAliveSeconds * 500);

    own.once(secure ? 'secureConnect' : 'connect', () => {
      send(own, sessionConnect({ version, clientId, username, password, statusTopic }));
    });
    own.on('data', (bytes: Buffer) => {
      heardAt = performance.now();
      packets.parse(bytes);
    });
    own.on('error', (error) =>
      log.warn({ error: error.message }, 'the MQTT broker is out of reach'),
    );
    packets.on('error', (error: Error) => {
      log.warn({ error: error.message }, 'the MQTT broker sent something unreadable');
      own.destroy();
    });
    own.once('close', () => {
      clearInterval(alive);
      sent.connectionLost();
      const wasReady = ready;
      ready = false;
      if (closing) return;
      if (wasReady) {
        log.warn(
          { clientId },
          'the connection to the MQTT broker was lost; if that goes on, see that no other client uses our client id',
        );
      }
      retry = setTimeout(connect, retryMs);
      retryMs = Math.min(longestRetryMs, retryMs * 2);
    });

    packets.on('packet', (packet: Packet) => {
      switch (packet.cmd) {
        case 'connack': {
          const code = packet.reasonCode ?? packet.returnCode ?? 0;
          if (code === 0) {
            backlog = packet.sessionPresent;
            for (const one of topics.opening()) send(own, one);
          } else {
            if (version === 5 && versionRefused.includes(code)) {
              version = 4;
              retryMs = shortestRetryMs;
            } else {
              log.warn({ code }, 'the MQTT broker refused the session; check name and password');
            }
            own.destroy();
          }
          return;
        }
        case 'suback': {
          const { isFixed, refused } = topics.answered(packet.messageId, packet.granted);
          if (refused.length > 0) {
            log.warn(
              { topics: refused },
              'the MQTT broker does not let us listen to these topics; allow them for our user',
            );
          }
          if (!isFixed || refused.includes(`boardcure/${site}/sensor/#`)) return;
          ready = true;
          retryMs = shortestRetryMs;
          log.info({ ...target, version }, 'listening at the MQTT broker');
          sendPublish(own, markerTopic, nonce, false);
          for (const [topic, payload] of retained) {
            sendPublish(own, topic, payload, true);
            if (payload === '') retained.delete(topic);
          }
          for (const { topic, payload } of unsent.splice(0)) {
            sendPublish(own, topic, payload, false);
          }
          return;
        }
        case 'disconnect': {
          log.warn({ code: packet.reasonCode }, 'the MQTT broker ended the session');
          own.destroy();
          return;
        }
        case 'publish': {
          const payload =
            typeof packet.payload === 'string' ? Buffer.from(packet.payload) : packet.payload;
          const acknowledge = () => {
            if (packet.qos === 1 && packet.messageId !== undefined) {
              send(own, { cmd: 'puback', messageId: packet.messageId });
            }
          };
          if (packet.topic === markerTopic) {
            if (payload.toString() === nonce) backlog = false;
            acknowledge();
            return;
          }
          // Neither taken nor acknowledged: the broker keeps it until we are back.
          if (closing) return;
          underWay.begun();
          take({ topic: packet.topic, payload, retained: packet.retain, backlog }, (failure) => {
            if (failure) own.destroy();
            else acknowledge();
            underWay.done();
          });
          return;
        }
        case 'puback':
          sent.settle(
            packet.messageId ?? 0,
            (packet.reasonCode ?? 0) >= firstRefusal ? packet.reasonCode : 0,
          );
          return;
        default:
          return;
      }
    });
  }

  function sendPublish(to: Socket, topic: string, payload: string, retain: boolean): number {
    const id = messageId();
    send(to, { cmd: 'publish', topic, payload, qos: 1, retain, dup: false, messageId: id });
    return id;
  }

  connect();
  return {
    kind: 'external',
    port: null,
    connected: () => ready,
    traffic: () => null,
    listenTo(changed) {
      const added = topics.changed(changed);
      const own = socket;
      if (!ready || !own) return;
      for (const one of [...added, ...topics.farewell()]) send(own, one);
    },
    publish(topic, payload, { retain }) {
      const isSent = ready && socket !== null;
      if (isSent) sendPublish(socket as Socket, topic, payload, retain);
      if (retain && isSent && payload === '') retained.delete(topic);
      else if (retain) retained.set(topic, payload);
      else if (!isSent && unsent.length < unsentKept) unsent.push({ topic, payload });
    },
    async deliver(topic, payload) {
      if (!ready || !socket) throw new SaidError(sentence('broker-unconnected', {}));
      await sent.acknowledged(sendPublish(socket, topic, payload, false));
    },
    async close() {
      closing = true;
      if (retry) clearTimeout(retry);
      const own = socket;
      if (!own || own.destroyed) return;
      const closed = new Promise<void>((resolve) => own.once('close', () => resolve()));
      await underWay.settled(longestFarewellMs);
      send(own, { cmd: 'disconnect' });
      own.end();
      const late = setTimeout(() => own.destroy(), 1000);
      await closed;
      clearTimeout(late);
    },
  };
}
