import type { Aedes, Client, PublishPacket } from 'aedes';
import type { OpenMessage } from '../rules/facts.ts';
import type { Acknowledge } from './group-commit.ts';
import { type KeptMessages, unreleasedMessages } from './unreleased-messages.ts';

/** The part of the broker’s memory that knows which QoS 2 messages have come. */
interface IncomingMessages {
  incomingStorePacket(client: Client, packet: object): Promise<void>;
  incomingGetPacket(client: Client, packet: { cmd?: string; messageId?: number }): Promise<unknown>;
}

/**
 * Takes QoS 2 messages once, also where one is sent again over a new connection: the broker asks
 * before it looks whether it knows a message, and forgets with the connection.
 *
 * @param messages - what is on disk of those that were not released
 */
export function exactlyOnce(broker: Aedes, messages: KeptMessages) {
  const { persistence } = broker as unknown as { persistence: IncomingMessages };
  const unreleased = unreleasedMessages(messages);
  const get = persistence.incomingGetPacket.bind(persistence);
  // The only word of a release: there is no hook for it.
  persistence.incomingGetPacket = async (client, packet) => {
    const { cmd, messageId } = packet;
    if (cmd === 'pubrel' && messageId !== undefined) {
      try {
        await unreleased.released(client.id, messageId);
      } catch (cause) {
        // The broker completes it whatever is said here, and may not: it is to be released again.
        client.close();
        throw cause;
      }
    }
    return get(client, packet);
  };
  return {
    beginsAnew: unreleased.beginsAnew,
    /** @param take - takes a message that was not taken before, and tells when it is on disk */
    once(
      client: Client,
      packet: PublishPacket,
      payload: Uint8Array,
      take: (done: Acknowledge, keep?: () => OpenMessage) => void,
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
