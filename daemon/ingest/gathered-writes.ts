import type { Socket } from 'node:net';

/** So much is passed on at once rather than gathered. */
const mostBytes = 16_384;

/**
 * Makes a socket pass on what is written within one turn in one piece: the broker writes an
 * acknowledgement in three, and hundreds of them follow each other when a group is on disk.
 *
 * @param written - called after something was passed on
 */
export function gatherWrites(socket: Socket, written: () => void): void {
  const write = socket.write.bind(socket) as (...args: unknown[]) => boolean;
  const end = socket.end.bind(socket) as (...args: unknown[]) => Socket;
  let parts: Buffer[] = [];
  let bytes = 0;

  function passOn(): void {
    const [first] = parts;
    if (!first) return;
    const all = parts.length === 1 ? first : Buffer.concat(parts, bytes);
    parts = [];
    bytes = 0;
    write(all);
    written();
  }

  // The codec would wait for the turn’s end once for each packet.
  Object.assign(socket, { cork: undefined, uncork: undefined });
  socket.write = (part: string | Uint8Array, ...more: unknown[]) => {
    if (parts.length === 0) process.nextTick(passOn);
    const [encoding] = more;
    const buffer =
      typeof part === 'string' ? Buffer.from(part, encoding as BufferEncoding) : (part as Buffer);
    parts.push(buffer);
    bytes += buffer.length;
    if (bytes >= mostBytes) passOn();
    // Never "wait": the broker would keep all others waiting with this one.
    return true;
  };
  socket.end = (...args: unknown[]) => {
    passOn();
    return end(...args);
  };
}
