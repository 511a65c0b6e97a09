import fc from 'fast-check';
import { generate, type Packet, parser } from 'mqtt-packet';
import { describe, expect, it } from 'vitest';
import { plainPublishAt, puback } from '../../daemon/ingest/plain-publish.ts';

/* Checked against mqtt-packet, which the broker reads with. */

const publishes = fc.record({
  topic: fc.string({ minLength: 1, maxLength: 80, unit: 'grapheme' }),
  payload: fc.uint8Array({ maxLength: 300 }).map((bytes) => Buffer.from(bytes)),
  qos: fc.constantFrom(0 as const, 1 as const, 2 as const),
  messageId: fc.integer({ min: 1, max: 65_535 }),
  retain: fc.boolean(),
  dup: fc.boolean(),
});

function byCodec(bytes: Uint8Array): Packet[] {
  const packets: Packet[] = [];
  const codec = parser({ protocolVersion: 4 });
  codec.on('packet', (packet: Packet) => packets.push(packet));
  codec.on('error', () => {});
  codec.parse(Buffer.from(bytes));
  return packets;
}

describe('a message that only has to be taken and acknowledged', () => {
  it('is read as the codec reads it, wherever it stands; what asks for more is not read', () => {
    fc.assert(
      fc.property(publishes, fc.uint8Array({ maxLength: 9 }), (fields, before) => {
        const packet = generate({ cmd: 'publish', ...fields, dup: fields.qos > 0 && fields.dup });
        const read = plainPublishAt(Buffer.concat([before, packet, before]), before.length);
        if (fields.qos !== 1 || fields.retain) {
          expect(read).toBeNull();
          return;
        }
        const { topic, payload, messageId, qos, retain } = byCodec(packet)[0] as typeof fields;
        const end = before.length + packet.length;
        expect({ ...read }).toEqual({ topic, payload, messageId, qos, retain, end });
      }),
    );
  });

  it('is not read before it is whole', () => {
    fc.assert(
      fc.property(publishes, fc.nat(), (fields, at) => {
        const packet = generate({ cmd: 'publish', ...fields, qos: 1, retain: false });
        expect(plainPublishAt(packet.subarray(0, at % packet.length), 0)).toBeNull();
      }),
    );
  });

  it('is not made of bytes that the codec makes no message at QoS 1 of', () => {
    const heads = fc.constantFrom(0x32, 0x3a, 0x33, 0x30, 0x82);
    fc.assert(
      fc.property(heads, fc.uint8Array({ maxLength: 40 }), (head, rest) => {
        const bytes = Buffer.from([head, ...rest]);
        if (!plainPublishAt(bytes, 0)) return;
        expect(byCodec(bytes)[0]).toMatchObject({ cmd: 'publish', qos: 1, retain: false });
      }),
      { numRuns: 2000 },
    );
  });

  // MQTT 3.1.1 (2014), section 2.3.1: a number is never 0; 4.7.3: a topic has one character at least.
  it.each([
    ['without a number', [0x32, 5, 0, 1, 0x61, 0, 0]],
    ['without a topic', [0x32, 5, 0, 0, 0, 1, 0x31]],
    ['whose topic is longer than it is', [0x32, 5, 0, 9, 0x61, 0, 1]],
    ['of no length at all', [0x32, 0]],
    ['with a length of five bytes', [0x32, 0x85, 0x80, 0x80, 0x80, 0, 0, 1, 0x61, 0, 1]],
  ])('is left to the broker %s', (_, bytes) => {
    expect(plainPublishAt(Buffer.from(bytes), 0)).toBeNull();
  });

  it('is acknowledged as the codec does', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 65_535 }), (messageId) => {
        expect(puback(messageId)).toEqual(generate({ cmd: 'puback', messageId }));
      }),
    );
  });
});
