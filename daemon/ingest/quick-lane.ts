import type { Socket } from 'node:net';
import type { Acknowledge } from './group-commit.ts';
import { type PlainPublish, plainPublishAt, puback } from './plain-publish.ts';

export interface QuickLaneParts {
  socket: Socket;
  /** Whether the broker has nothing to do with messages of a topic. */
  isOurs: (topic: string) => boolean;
  /** Takes a message, and tells when it is on disk or why it is not. */
  receive: (message: PlainPublish, told: Acknowledge) => void;
  /** Called when there is room again after `isFull` was asked in vain. */
  resume: () => void;
}

/** What passes by the broker of one connection. */
export interface QuickLane {
  /**
   * Takes what it can.
   *
   * @param packets - whole ones
   * @returns what is left for the broker; empty for nothing
   */
  take(packets: Buffer): Buffer;
  /** Whether so much of this connection waits for the disk that it is to be read later. */
  isFull(): boolean;
}

/** Messages of one connection that wait for the disk: two groups’ worth of most publishers. */
const mostUnderWay = 256;
/** It is read on when so few are left. */
const readOnAt = mostUnderWay / 2;

/**
 * Takes readings from a connection before the broker sees them: most messages are heard by nobody
 * else, and passing through the broker’s codec and queues costs as much as all that is done with them
 * here. What comes after anything else in the same bytes goes the broker’s way with it, so that
 * messages are taken, and acknowledged, in the order in which they came.
 *
 * **Source:** MQTT 3.1.1 (2014), section 4.6.
 */
export function quickLane({ socket, isOurs, receive, resume }: QuickLaneParts): QuickLane {
  let underWay = 0;
  let waits = false;

  function takeOne(message: PlainPublish): void {
    const { messageId } = message;
    underWay++;
    receive(message, (failure) => {
      underWay--;
      if (waits && underWay <= readOnAt) {
        waits = false;
        setImmediate(resume);
      }
      if (socket.destroyed) return;
      if (failure) socket.destroy(failure);
      else socket.write(puback(messageId));
    });
  }

  return {
    take(packets) {
      let at = 0;
      while (at < packets.length && !socket.destroyed) {
        const message = plainPublishAt(packets, at);
        if (!message || !isOurs(message.topic)) break;
        at = message.end;
        takeOne(message);
      }
      return at === 0 ? packets : packets.subarray(at);
    },
    isFull() {
      waits = underWay >= mostUnderWay;
      return waits;
    },
  };
}
