/** A message that asks for nothing but to be taken and acknowledged. */
export interface PlainPublish {
  topic: string;
  /** A view of the bytes it was read from. */
  payload: Buffer;
  /** 1 to 65,535. */
  messageId: number;
  qos: 1;
  retain: false;
  /** Where the next packet begins. */
  end: number;
}

/** PUBLISH at QoS 1, not to be kept: sent first, and sent again. **Source:** section 3.3.1. */
const sentFirst = 0x32;
const sentAgain = 0x3a;
/** A remaining length has at most four bytes of seven bits each. **Source:** section 2.2.3. */
const longestLengthBits = 28;

/**
 * Reads such a message where it begins. What is not whole, is of another kind or breaks a rule is
 * left to the broker’s codec.
 *
 * **Source:** MQTT 3.1.1 (2014), section 3.3; 3.1 has the same packet.
 *
 * @param bytes - of a connection
 * @param at - where a packet begins
 */
export function plainPublishAt(bytes: Buffer, at: number): PlainPublish | null {
  const header = bytes[at];
  if (header !== sentFirst && header !== sentAgain) return null;
  let length = 0;
  let next = at + 1;
  for (let bits = 0; ; bits += 7) {
    const byte = bytes[next++];
    if (byte === undefined || bits === longestLengthBits) return null;
    length |= (byte & 0x7f) << bits;
    if (byte < 0x80) break;
  }
  const end = next + length;
  if (end > bytes.length || length < 2) return null;
  const topicAt = next + 2;
  const idAt = topicAt + numberAt(bytes, next);
  const payloadAt = idAt + 2;
  if (idAt === topicAt || payloadAt > end) return null;
  const messageId = numberAt(bytes, idAt);
  // **Source:** section 2.3.1.
  if (messageId === 0) return null;
  const topic = bytes.toString('utf8', topicAt, idAt);
  return { topic, payload: bytes.subarray(payloadAt, end), messageId, qos: 1, retain: false, end };
}

const numberAt = (bytes: Buffer, at: number): number =>
  ((bytes[at] as number) << 8) | (bytes[at + 1] as number);

/** The acknowledgement of a message at QoS 1. **Source:** MQTT 3.1.1 (2014), section 3.4. */
export function puback(messageId: number): Buffer {
  const packet = Buffer.allocUnsafe(4);
  packet[0] = 0x40;
  packet[1] = 2;
  packet[2] = messageId >> 8;
  packet[3] = messageId & 0xff;
  return packet;
}
