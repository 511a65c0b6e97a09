import type { Socket } from 'node:net';
import { byteBudget } from './byte-budget.ts';
import { gatherWrites } from './gathered-writes.ts';
import { packetMeter } from './packet-meter.ts';
import type { QuickLane } from './quick-lane.ts';
import { readingGate } from './reading-gate.ts';

/** What clients of the embedded broker may ask of it. */
export interface BrokerLimits {
  /** Connections at once. */
  maxConnections: number;
  /** From connecting to CONNECT, seconds. */
  connectSeconds: number;
  /** Largest packet, header included. */
  maxPacketBytes: number;
  /** Messages that may wait for the disk. */
  maxUnderWay: number;
  /** Bytes that may wait for one client that does not read. */
  maxUnreadBytes: number;
  /** Topics that clients may have kept for later listeners. */
  maxRetained: number;
}

/** Why a connection was ended by us, or not begun. */
export type CutOff =
  | 'too-many-connections'
  | 'no-connect'
  | 'packet-too-large'
  | 'unreadable'
  | 'does-not-read'
  | 'memory-short';

/** A CONNECT carries names, a password and a will: enough for all of them. */
const largestConnectBytes = 16_384;
/** Of all connections together: unfinished packets, messages under way, what was not read. */
const unfinishedBytes = 8 * 1_048_576;
const underWayBytes = 8 * 1_048_576;
const unreadBytes = 16 * 1_048_576;
/** Less than this is on its way, and not left lying: three times for each acknowledgement. */
const worthCounting = 16_384;
/** A client is silent for too long after one and a half times what it said. **Source:** MQTT 3.1.1
 * (2014), section 3.1.2.10. */
const keepAliveMs = 1500;
/** A peer that lost its power is found by this, and then leaves the list. */
const probeAfterMs = 60_000;

/** The broker reads on what it takes for news of more bytes. */
const readOn = (socket: Socket): void => void socket.emit('readable');

/**
 * Stands between the sockets and the broker, which itself would keep a packet of 256 MB, and waits
 * for the slowest listener before it goes on with anybody’s next message.
 *
 * @param cutOff - told of each connection that was ended
 */
export function guardSockets(limits: BrokerLimits, cutOff: (why: CutOff) => void) {
  const sockets = new Set<Socket>();
  /** Those that have not said CONNECT, the oldest first. */
  const strangers = new Set<Socket>();
  /** Until CONNECT has come. */
  const timers = new WeakMap<Socket, NodeJS.Timeout>();
  const keepAlive = new WeakMap<Socket, NodeJS.Timeout>();
  const lanes = new WeakMap<Socket, QuickLane>();
  const unfinished = new WeakMap<Socket, () => number>();
  const halves = byteBudget<Socket>(
    unfinishedBytes,
    (socket) => unfinished.get(socket)?.() ?? 0,
    (socket) => cut(socket, 'memory-short'),
  );
  const unread = byteBudget<Socket>(
    unreadBytes,
    (socket) => socket.writableLength,
    (socket) => cut(socket, 'memory-short'),
  );
  const gate = readingGate<Socket>({ messages: limits.maxUnderWay, bytes: underWayBytes }, readOn);

  function cut(socket: Socket, why: CutOff): void {
    if (socket.destroyed) return;
    cutOff(why);
    socket.destroy();
  }

  /** Hands out whole packets only, and those the broker has something to do with. */
  function guardReading(socket: Socket): void {
    const meter = packetMeter(largestConnectBytes, limits.maxPacketBytes);
    unfinished.set(socket, meter.unfinished);
    const read: Socket['read'] = socket.read.bind(socket);
    let parts: Buffer[] = [];

    function whole(): Buffer {
      const all = parts.length === 1 ? (parts[0] as Buffer) : Buffer.concat(parts);
      const end = all.length - meter.unfinished();
      // A copy: a view would keep all that came before it.
      parts = end < all.length ? [Buffer.from(all.subarray(end))] : [];
      return all.subarray(0, end);
    }

    socket.read = (size?: number) => {
      // How the stream itself asks for more from the network; nothing is handed out by that.
      if (size === 0) return read(0);
      const lane = lanes.get(socket);
      if (lane?.isFull()) return null;
      const most = gate.mayRead(socket);
      if (most === 0) return null;
      let isWhole = false;
      // The broker reads on when a packet is done: a piece of one would be the last that it reads.
      while (!isWhole) {
        const bytes: Buffer | null = read(socket.readableLength > most ? most : undefined);
        if (bytes === null) break;
        const metered = meter.heard(bytes);
        if (metered === 'too-large' || metered === 'unreadable') {
          cut(socket, metered === 'too-large' ? 'packet-too-large' : 'unreadable');
          return null;
        }
        parts.push(bytes);
        isWhole = metered.whole > 0;
      }
      halves.changed(socket);
      if (!isWhole) return null;
      keepAlive.get(socket)?.refresh();
      const packets = lane ? lane.take(whole()) : whole();
      if (packets.length > 0) return packets;
      // Nothing will be done that the broker would read on after.
      if (socket.readableLength > 0) gate.later(socket);
      return null;
    };
  }

  function guardWriting(socket: Socket): void {
    gatherWrites(socket, () => {
      if (socket.writableLength <= worthCounting) return;
      unread.changed(socket);
      if (socket.writableLength > limits.maxUnreadBytes) cut(socket, 'does-not-read');
    });
  }

  function hasRoom(): boolean {
    if (sockets.size < limits.maxConnections) return true;
    const [oldest] = strangers;
    if (!oldest) return false;
    cut(oldest, 'no-connect');
    forget(oldest);
    return true;
  }

  function forget(socket: Socket): void {
    sockets.delete(socket);
    strangers.delete(socket);
    halves.forget(socket);
    unread.forget(socket);
    gate.forget(socket);
  }

  return {
    /** Takes a new connection under guard; false when there is no room for it. */
    admit(socket: Socket): boolean {
      if (!hasRoom()) {
        cut(socket, 'too-many-connections');
        return false;
      }
      sockets.add(socket);
      strangers.add(socket);
      const late = setTimeout(() => cut(socket, 'no-connect'), limits.connectSeconds * 1000);
      socket.once('close', () => {
        clearTimeout(late);
        clearTimeout(keepAlive.get(socket));
        forget(socket);
      });
      timers.set(socket, late);
      socket.setNoDelay(true);
      socket.setKeepAlive(true, probeAfterMs);
      guardReading(socket);
      guardWriting(socket);
      return true;
    },
    /**
     * The client has said CONNECT.
     *
     * @param keepAliveS - how often it means to speak, seconds; 0 for never
     */
    known(socket: Socket, keepAliveS: number): void {
      strangers.delete(socket);
      clearTimeout(timers.get(socket));
      if (keepAliveS === 0) return;
      const silent = () => socket.destroy(new Error('keep alive timeout'));
      keepAlive.set(socket, setTimeout(silent, keepAliveS * keepAliveMs));
    },
    /** From now on what it can take of a connection passes by the broker. */
    openLane(socket: Socket, lane: QuickLane): void {
      lanes.set(socket, lane);
    },
    resume: readOn,
    begun: gate.begun,
    done: gate.done,
    count: () => sockets.size,
    closeAll(): void {
      for (const socket of sockets) socket.destroy();
    },
  };
}
