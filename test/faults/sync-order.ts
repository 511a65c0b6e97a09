import { type Packet, parser } from 'mqtt-packet';
import { type SystemCall, straceWords, systemCalls } from './system-calls.ts';

const written = ['write', 'writev', 'sendto', 'sendmsg', 'pwrite64', 'pwritev'];
const heard = ['read', 'readv', 'recvfrom', 'recvmsg'];
const synced = ['fsync', 'fdatasync'];

/** What strace has to see. */
export const syncTrace = (file: string) => straceWords(file, [...heard, ...written, ...synced]);

/** One acknowledged message, and what was on disk when its acknowledgement began to be written. */
export interface TracedAck {
  sensor: string;
  /** The first write to the log that names the sensor; null when there was none before. */
  isWritten: boolean;
  /** A sync of the log began after the whole of that commit was written, and had returned. */
  isSynced: boolean;
}

/** Bytes of the header before each page in the log. **Source:** SQLite file format, section 4.1. */
const frameHeaderBytes = 24;

/**
 * Judges a trace: for every acknowledgement (PUBACK, PUBREC) that was written to a socket, whether
 * the database’s log had been written and synced with that very message by then.
 *
 * Each message must name a sensor that nobody has heard of before: its name is in the bytes of its
 * own commit and of none earlier.
 *
 * @param file - what strace wrote
 * @param protocolVersion - that is spoken on the sockets
 */
export function tracedAcks(file: string, protocolVersion: 4 | 5 = 4): TracedAck[] {
  const calls = systemCalls(file);
  const log = calls.filter(({ target }) => target.endsWith('-wal'));
  const writes = log.filter(({ name }) => written.includes(name));
  const syncs = log.filter(({ name, returned }) => synced.includes(name) && returned === 0);
  return acknowledgements(calls, protocolVersion).map(({ sensor, begin }) => {
    const named = writes.findIndex(({ bytes }) => bytes.includes(sensor));
    const commit = named < 0 ? undefined : commitEnd(writes, named);
    const isWritten = commit !== undefined && commit.end < begin;
    const isSynced = isWritten && syncs.some((sync) => sync.begin > commit.end && sync.end < begin);
    return { sensor, isWritten, isSynced };
  });
}

/** The write that ends the commit: its frame’s header tells the size of the database after it. */
function commitEnd(writes: readonly SystemCall[], from: number): SystemCall | undefined {
  // A page is written after its header, or with it.
  const first = (writes[from]?.bytes.length ?? 0) % 512 === 0 ? from - 1 : from;
  for (let i = Math.max(0, first); i < writes.length; i++) {
    const bytes = writes[i]?.bytes;
    if (!bytes || bytes.length % 512 !== frameHeaderBytes) continue;
    if (bytes.readUInt32BE(4) > 0) return writes[bytes.length === frameHeaderBytes ? i + 1 : i];
  }
  return undefined;
}

/** Acknowledgements of readings, with where the write of each began. */
function acknowledgements(calls: readonly SystemCall[], protocolVersion: 4 | 5) {
  const found: { sensor: string; begin: number }[] = [];
  const sockets = new Map<string, ReturnType<typeof conversation>>();
  for (const call of calls) {
    if (!/^TCP(v6)?:|^socket:/.test(call.target)) continue;
    const socket = sockets.get(call.target) ?? conversation(protocolVersion, found);
    sockets.set(call.target, socket);
    if (heard.includes(call.name)) socket.heard(call);
    else if (written.includes(call.name)) socket.said(call);
  }
  return found;
}

/** Both sides of what goes over one socket. */
function conversation(version: 4 | 5, found: { sensor: string; begin: number }[]) {
  const sensors = new Map<number, string>();
  const incoming = parser({ protocolVersion: version });
  const outgoing = parser({ protocolVersion: version });
  let begin = 0;
  incoming.on('packet', (packet: Packet) => {
    const sensor = packet.cmd === 'publish' && /\/sensor\/([^/]+)/.exec(packet.topic)?.[1];
    if (sensor) sensors.set(packet.messageId ?? 0, sensor);
  });
  outgoing.on('packet', (packet: Packet) => {
    if (packet.cmd !== 'puback' && packet.cmd !== 'pubrec') return;
    const sensor = sensors.get(packet.messageId ?? 0);
    if (sensor !== undefined) found.push({ sensor, begin });
  });
  // Pages go over sockets too.
  for (const side of [incoming, outgoing]) side.on('error', () => {});
  return {
    heard: (call: SystemCall) => void incoming.parse(call.bytes),
    said(call: SystemCall): void {
      begin = call.begin;
      outgoing.parse(call.bytes);
    },
  };
}
