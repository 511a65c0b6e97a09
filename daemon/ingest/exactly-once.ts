import type { Aedes, Client, PublishPacket } from 'aedes';
import type { Acknowledge } from './group-commit.ts';
import { unreleasedMessages } from './unreleased-messages.ts';

/** The part of the broker’s memory that knows which QoS 2 messages have come. */
interface IncomingMessages {
  incomingStorePacket(client: Client, packet: object): Promise<void>;
  incomingGetPacket(client: Client, packet: { cmd?: string; messageId?: number }): Promise<unknown>;
}

/**
 * Takes QoS 2 messages once, also where one is sent again over a new connection: the broker asks
 * before it looks whether it knows a message, and forgets with the connection.
 */
export function exactlyOnce(broker: Aedes) {
  const { persistence } = broker as unknown as { persistence: IncomingMessages };
  const unreleased = unreleasedMessages();
  const get = persistence.incomingGetPacket.bind(persistence);
  // The only word of a release: there is no hook for it.
  persistence.incomingGetPacket = (client, packet) => {
    const { cmd, messageId } = packet;
    if (cmd === 'pubrel' && messageId !== undefined) unreleased.released(client.id, messageId);
    return get(client, packet);
  };
  return {
    beginsAnew: unreleased.beginsAnew,
    /** @param take - takes a message that was not taken before, and tells when it is on disk */
    once(
      client: Client,
      packet: PublishPacket,
      payload: Uint8Array,
      take: (done: Acknowledge) => void,
      acknowledge: Acknowledge,
    ): void {
      const { messageId } = packet as { messageId?: number };
      if (packet.qos !== 2 || messageId === undefined) {
        take(acknowledge);
        return;
      }
      unreleased.once({ client: client.id, messageId, topic: packet.topic, payload }, take, {
        taken: acknowledge,
        again(failure) {
          // What the broker knows to have come it does not pass on to listeners again.
          if (failure) acknowledge(failure);
          else {
            const noted = persistence.incomingStorePacket(client, packet);
            noted.then(() => acknowledge(null), acknowledge);
          }
        },
      });
    },
  };
}
