/** Bits on their way into bytes, the highest first. */
export interface BitWriter {
  /** @param value - integer, 0 … 2^width − 1; @param width - 0 … 32 */
  write(value: number, width: number): void;
  /** What was written, filled up with zeros to a whole byte. */
  bytes(): Uint8Array;
}

export interface BitReader {
  /** @throws Error when fewer bits are left */
  read(width: number): number;
}

export function bitWriter(): BitWriter {
  let bytes = new Uint8Array(256);
  let bit = 0;
  return {
    write(value, width) {
      if (bit + width > bytes.length * 8) {
        const larger = new Uint8Array(bytes.length * 2);
        larger.set(bytes);
        bytes = larger;
      }
      let left = width;
      while (left > 0) {
        const room = 8 - (bit & 7);
        const taken = Math.min(room, left);
        const part = (value >>> (left - taken)) & ((1 << taken) - 1);
        bytes[bit >> 3] = (bytes[bit >> 3] ?? 0) | (part << (room - taken));
        bit += taken;
        left -= taken;
      }
    },
    bytes: () => bytes.slice(0, (bit + 7) >> 3),
  };
}

export function bitReader(bytes: Uint8Array): BitReader {
  let bit = 0;
  return {
    read(width) {
      let value = 0;
      let left = width;
      while (left > 0) {
        const byte = bytes[bit >> 3];
        if (byte === undefined) throw new Error('Packed readings end too early.');
        const room = 8 - (bit & 7);
        const taken = Math.min(room, left);
        value = (value << taken) | ((byte >> (room - taken)) & ((1 << taken) - 1));
        bit += taken;
        left -= taken;
      }
      return value >>> 0;
    },
  };
}
