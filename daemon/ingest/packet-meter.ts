/** What a stretch of bytes brought: whole packets, or what is wrong with one. */
export type Metered = { whole: number } | 'too-large' | 'unreadable';

/** A remaining length has at most four bytes. **Source:** MQTT 3.1.1 (2014), section 2.2.3. */
const longestLengthBytes = 4;

/** First bytes of all packets but PUBLISH. **Source:** MQTT 3.1.1 (2014), tables 2.1 and 2.2. */
const firstBytes: ReadonlySet<number> = new Set([
  ...[0x10, 0x20, 0x40, 0x50, 0x62, 0x70, 0x82, 0x90, 0xa2, 0xb0, 0xc0, 0xd0, 0xe0],
]);
/** PUBLISH has flags of its own; both bits of QoS are never set. **Source:** section 3.3.1. */
const beginsPacket = (byte: number): boolean =>
  byte >> 4 === 3 ? (byte & 0b110) !== 0b110 : firstBytes.has(byte);

/**
 * Follows the packets of one connection by their fixed headers, so that an oversized one is known
 * by its announced length, before its bytes have come.
 *
 * @param firstMaxBytes - largest first packet (CONNECT), its header included
 * @param maxBytes - largest packet after it
 */
export function packetMeter(firstMaxBytes: number, maxBytes: number) {
  let most = firstMaxBytes;
  /** Bytes of the packet that has begun; 0 between packets. */
  let begun = 0;
  /** Bytes that its body still lacks; null while its length is being read. */
  let lacking: number | null = null;
  let length = 0;

  return {
    /** Bytes heard of a packet that is not whole. */
    unfinished: (): number => begun,
    /** Counts what came; after a fault it is of no more use. */
    heard(bytes: Uint8Array): Metered {
      let whole = 0;
      for (let i = 0; i < bytes.length; ) {
        if (begun === 0) {
          if (!beginsPacket(bytes[i] ?? 0)) return 'unreadable';
          begun = 1;
          length = 0;
          i++;
          continue;
        }
        if (lacking === null) {
          const byte = bytes[i] ?? 0;
          if (begun > longestLengthBytes) return 'unreadable';
          length += (byte & 0x7f) * 128 ** (begun - 1);
          begun++;
          i++;
          if (byte >= 0x80) continue;
          lacking = length;
          if (begun + length > most) return 'too-large';
        } else {
          const taken = Math.min(lacking, bytes.length - i);
          lacking -= taken;
          begun += taken;
          i += taken;
        }
        if (lacking > 0) continue;
        whole++;
        begun = 0;
        lacking = null;
        most = maxBytes;
      }
      return { whole };
    },
  };
}
