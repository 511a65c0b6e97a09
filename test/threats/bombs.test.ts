import { describe, expect, it } from 'vitest';
import { decodeMessage } from '../../sensors/payload/decode-message.ts';

const decode = (bytes: Buffer) => {
  let text: string | null = null;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    // CBOR is no text.
  }
  return decodeMessage(
    { topic: 'boardcure/shed/sensor/n1', text, byteLength: bytes.length, bytes },
    { site: 'shed' },
    { now: Date.UTC(2026, 4, 20) },
  );
};
const hex = (text: string) => Buffer.from(text.replaceAll(' ', ''), 'hex');

/* The first byte of an array of a given length, RFC 8949, section 3. */
describe('a small message that would become large (CBOR and JSON bombs)', () => {
  it.each([
    ['an array that says it has 4 thousand million entries', hex('9a ffffffff f6')],
    ['an array of 2⁶⁴−1', hex('9b ffffffffffffffff f6')],
    ['a map of 2³²−1', hex('81 ba ffffffff 00 01')],
    ['a byte string of 2 GB', hex('81 5a 7fffffff 00')],
    ['a text of 2⁶³', hex('81 7b 7fffffffffffffff 61')],
    ['arrays within arrays, 60,000 deep', Buffer.alloc(60_000, 0x81)],
    ['maps within maps', Buffer.concat([hex('81'), Buffer.alloc(60_000, 0xa1)])],
    ['tags within tags', Buffer.concat([hex('81'), Buffer.alloc(60_000, 0xc1)])],
    ['endless arrays, never ended', Buffer.alloc(60_000, 0x9f)],
    ['brackets within brackets', Buffer.from('['.repeat(60_000))],
    ['objects within objects', Buffer.from('{"a":'.repeat(12_000))],
  ])('%s is refused with a reason', (_what, bytes) => {
    const before = process.memoryUsage().heapUsed;
    const decoded = decode(bytes);
    const grown = process.memoryUsage().heapUsed - before;
    expect(decoded.kind === 'refused' || decoded.kind === 'readings').toBe(true);
    expect(decoded.kind === 'readings' ? decoded.readings : []).toEqual([]);
    expect(grown).toBeLessThan(64 * 1_048_576);
  });

  it('a pack of CBOR that is right is read: it is not refused for being CBOR', () => {
    // [{0: "air-temperature", 2: 20}], RFC 8428, section 6.
    const name = Buffer.from('air-temperature');
    const pack = Buffer.concat([hex('81 a2 00 6f'), name, hex('02 14')]);
    expect(decode(pack)).toMatchObject({ kind: 'readings', readings: [{ value: 20 }] });
  });
});
