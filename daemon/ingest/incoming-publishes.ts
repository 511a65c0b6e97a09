import type { Client, PublishPacket } from 'aedes';
import type { Guest } from './client-access.ts';
import type { exactlyOnce } from './exactly-once.ts';
import type { Acknowledge } from './group-commit.ts';
import type { guardSockets } from './guard-sockets.ts';
import type { Arrived } from './intake.ts';
import type { BrokerTraffic, TakeMessage } from './message-port.ts';
import type { retainedTopics } from './retained-topics.ts';
import type { messagesUnderWay } from './under-way.ts';

/** The little of a packet that is looked at; it may be changed, for the broker to go on with. */
export type Incoming = Pick<PublishPacket, 'topic' | 'payload' | 'qos' | 'retain'>;

export interface IncomingParts {
  guestOf: (client: Client) => Guest | undefined;
  counts: Pick<BrokerTraffic, 'bestEffort' | 'notAllowed' | 'retainDropped'>;
  warn: (text: string, facts?: object) => void;
  retained: ReturnType<typeof retainedTopics>;
  guard: Pick<ReturnType<typeof guardSockets>, 'begun' | 'done'>;
  underWay: ReturnType<typeof messagesUnderWay>;
  once: ReturnType<typeof exactlyOnce>['once'];
  take: TakeMessage;
  /** Nothing is taken any more. */
  isClosing: () => boolean;
}

/**
 * Judges what clients publish, and hands over what may be taken.
 *
 * @returns a function of client and packet that tells when the message may be acknowledged, or why
 *   its sender has to go
 */
export function incomingPublishes(parts: IncomingParts) {
  const { guestOf, counts, warn, retained, guard, underWay, once, take, isClosing } = parts;

  /** Apart from the rest, since whatever a function made within it names stays in memory with it. */
  function takeOnce(client: Client, packet: Incoming, arrived: Arrived, done: Acknowledge): void {
    const takeKept = (told: Acknowledge, keep?: Arrived['keep']) =>
      take(keep ? { ...arrived, keep } : arrived, told);
    once(client, packet as PublishPacket, arrived.payload, takeKept, done);
  }

  return (client: Client | null, packet: Incoming, told: Acknowledge): void => {
    const { topic, qos } = packet;
    if (topic.startsWith('$SYS/')) {
      told(new Error('Topics under $SYS belong to the broker.'));
      return;
    }
    // Neither taken nor acknowledged: the publisher sends it again when we are back.
    if (isClosing()) return;
    // Without a client it is a packet of our own, or the will of one that is long gone.
    if (!client) {
      told(null);
      return;
    }
    const payload =
      typeof packet.payload === 'string' ? Buffer.from(packet.payload) : packet.payload;
    const publishes = guestOf(client)?.publishes(topic, payload) ?? 'end';
    if (publishes === 'end') {
      counts.notAllowed++;
      warn('an MQTT client was cut off: it may not publish there', { client: client.id });
      told(new Error('It may not publish there.'));
      return;
    }
    if (publishes === 'let-go') {
      // MQTT 3.1.1, section 3.3.5: what is not allowed is acknowledged all the same, and goes nowhere.
      counts.notAllowed++;
      packet.topic = '$not-allowed';
      packet.retain = false;
      packet.payload = Buffer.of();
      told(null);
      return;
    }
    if (qos === 0) counts.bestEffort++;
    if (packet.retain && !retained.mayKeep(topic, payload.length)) {
      packet.retain = false;
      counts.retainDropped++;
      warn('a retained message is not kept: too many are; see mqtt.maxRetained');
    }
    const bytes = payload.length;
    guard.begun(bytes);
    underWay.begun();
    const acknowledge: Acknowledge = (failure) => {
      guard.done(bytes);
      told(failure);
      underWay.done();
    };
    // A publisher’s retain flag asks the broker to keep it; the message itself is of now.
    const from = qos > 0 ? client.id : undefined;
    const arrived: Arrived = { topic, payload, retained: false, backlog: false, from };
    if (qos === 2) takeOnce(client, packet, arrived, acknowledge);
    else take(arrived, acknowledge);
  };
}
