import fc from 'fast-check';
import { generate } from 'mqtt-packet';
import { describe, expect, it } from 'vitest';
import { type Metered, packetMeter } from '../../daemon/ingest/packet-meter.ts';

/** What the meter makes of bytes that come in pieces of these lengths, over and over. */
function metered(bytes: Uint8Array, pieces: readonly number[], most = 1_000_000): Metered {
  const meter = packetMeter(most, most);
  let whole = 0;
  for (let from = 0, i = 0; from < bytes.length; i++) {
    const to = from + (pieces[i % pieces.length] ?? 1);
    const heard = meter.heard(bytes.subarray(from, to));
    if (typeof heard === 'string') return heard;
    whole += heard.whole;
    from = to;
  }
  return { whole };
}

const publish = (payload: Buffer) =>
  generate({
    cmd: 'publish',
    topic: 'a/b',
    payload,
    qos: 1,
    messageId: 1,
    dup: false,
    retain: false,
  });

describe('packets are told apart by their fixed headers (MQTT 3.1.1, section 2.2)', () => {
  it('however the bytes come, as many as a codec wrote', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40_000 }), { minLength: 1, maxLength: 8 }),
        fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 5 }),
        (sizes, pieces) => {
          const bytes = Buffer.concat([
            ...sizes.map((size) => publish(Buffer.alloc(size))),
            generate({ cmd: 'pingreq' }),
          ]);
          expect(metered(bytes, pieces)).toEqual({ whole: sizes.length + 1 });
        },
      ),
    );
  });

  // MQTT 3.1.1 (2014), table 2.4: the limits of one to four bytes of remaining length.
  it.each([
    [[0x00], 0],
    [[0x7f], 127],
    [[0x80, 0x01], 128],
    [[0xff, 0x7f], 16_383],
    [[0x80, 0x80, 0x01], 16_384],
    [[0xff, 0xff, 0x7f], 2_097_151],
    [[0x80, 0x80, 0x80, 0x01], 2_097_152],
    [[0xff, 0xff, 0xff, 0x7f], 268_435_455],
  ])('a remaining length of %j is %i bytes', (length, bytes) => {
    const head = Uint8Array.of(0x30, ...length);
    const packet = head.length + bytes;
    expect(metered(head, [1], packet)).toEqual({ whole: bytes === 0 ? 1 : 0 });
    expect(metered(head, [1], packet - 1)).toBe('too-large');
  });

  it('a remaining length of five bytes is no MQTT', () => {
    expect(metered(Uint8Array.of(0x30, 0xff, 0xff, 0xff, 0xff, 0x01), [1])).toBe('unreadable');
  });

  it('the first packet has a limit of its own', () => {
    const bytes = publish(Buffer.alloc(500));
    const strict = packetMeter(100, 1000);
    expect(strict.heard(bytes)).toBe('too-large');
    const meter = packetMeter(100, 1000);
    expect(meter.heard(generate({ cmd: 'pingreq' }))).toEqual({ whole: 1 });
    expect(meter.heard(bytes)).toEqual({ whole: 1 });
  });

  it('knows what it has heard of a packet that is not whole', () => {
    const meter = packetMeter(1000, 1000);
    const bytes = publish(Buffer.alloc(100));
    meter.heard(bytes.subarray(0, 60));
    expect(meter.unfinished()).toBe(60);
    meter.heard(bytes.subarray(60));
    expect(meter.unfinished()).toBe(0);
  });
});
