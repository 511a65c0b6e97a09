import { encode } from 'cborg';
import { describe, expect, it } from 'vitest';
import { type Decoded, decodeMessage } from '../../sensors/payload/decode-message.ts';
import { looksLikeCbor, senmlCborPack } from '../../sensors/payload/senml-cbor.ts';
import { resolvedPack } from '../../sensors/payload/senml-pack.ts';
import { printedExamples } from './rfc8428-examples.ts';

const hex = (text: string) => Uint8Array.from(Buffer.from(text.replaceAll(/\s/g, ''), 'hex'));

/** The CBOR example of RFC 8428 (2018), section 6: the currents of section 5.1.2, as printed. */
const printedCurrents = hex(`
  87 a7 21 78 1b 75 72 6e 3a 64 65 76 3a 6f 77 3a 31 30 65 32 30 37 33 61 30 31 30 38 30 30 36 3a
  22 fb 41 d3 03 a1 5b 00 10 62 23 61 41 20 05 00 67 76 6f 6c 74 61 67 65 01 61 56 02 fb 40 5e 06
  66 66 66 66 66 a3 00 67 63 75 72 72 65 6e 74 06 24 02 fb 3f f3 33 33 33 33 33 33 a3 00 67 63 75
  72 72 65 6e 74 06 23 02 fb 3f f4 cc cc cc cc cc cd a3 00 67 63 75 72 72 65 6e 74 06 22 02 fb 3f
  f6 66 66 66 66 66 66 a3 00 67 63 75 72 72 65 6e 74 06 21 02 f9 3e 00 a3 00 67 63 75 72 72 65 6e
  74 06 20 02 fb 3f f9 99 99 99 99 99 9a a3 00 67 63 75 72 72 65 6e 74 06 00 02 fb 3f fb 33 33 33
  33 33 33`);

/** Integer labels, RFC 8428 section 6, table 4. */
const labels: Record<string, number> = {
  ...{ bver: -1, bn: -2, bt: -3, bu: -4, bv: -5, bs: -6 },
  ...{ n: 0, u: 1, v: 2, vs: 3, vb: 4, s: 5, t: 6, ut: 7, vd: 8 },
};
const inCbor = (records: readonly object[]) =>
  encode(
    records.map(
      (record) =>
        new Map(Object.entries(record).map(([key, value]) => [labels[key] ?? key, value])),
    ),
  );

const pack = (bytes: Uint8Array) => {
  const read = senmlCborPack(bytes);
  if (read.kind === 'refused') throw new Error(read.refusal.detail);
  return read.pack;
};
const refusal = (bytes: Uint8Array) => {
  const read = senmlCborPack(bytes);
  return read.kind === 'refused' ? `${read.refusal.code}: ${read.refusal.detail}` : 'read';
};
const now = Date.UTC(2026, 4, 4, 7, 30);
const decode = (bytes: Uint8Array, topic = 'boardcure/shed/sensor/node-1'): Decoded =>
  decodeMessage({ topic, text: null, byteLength: bytes.length, bytes }, { site: 'shed' }, { now });

describe('SenML in CBOR', () => {
  it('as the RFC prints it holds what the RFC prints in JSON', () => {
    expect(resolvedPack(pack(printedCurrents))).toEqual(
      resolvedPack(printedExamples['5.1.2 currents']),
    );
  });

  it.each(Object.entries(printedExamples))('%s is the same in CBOR as in JSON', (_, records) => {
    expect(resolvedPack(pack(inCbor(records)))).toEqual(resolvedPack(records));
  });

  it('becomes readings on the default topic, with its times', () => {
    const decoded = decode(
      inCbor([
        { bn: 'node-1:', bt: 1_777_879_800, n: 'air-temperature', u: 'Cel', v: 21.5 },
        { n: 'relative-humidity', u: '%RH', v: 55, t: -60 },
        { n: 'battery', u: 'V', v: 3.1 },
      ]),
    );
    expect(decoded).toMatchObject({
      kind: 'readings',
      readings: [
        { sensor: 'node-1', quantity: 'air-temperature', value: 21.5, ownAt: 1_777_879_800_000 },
        { sensor: 'node-1', quantity: 'relative-humidity', value: 55, ownAt: 1_777_879_740_000 },
      ],
      refused: [{ code: 'unit-does-not-fit', quantity: 'battery' }],
    });
  });

  // RFC 8949 (2020), appendix A prints 4([-2, 27315]) as c4 82 21 19 6a b3: 273.15.
  it('may give numbers as decimal fractions', () => {
    const bytes = hex('81 a3 00 6f 6169722d74656d7065726174757265 01 61 4b 02 c4 82 21 19 6a b3');
    expect(decode(bytes)).toMatchObject({ readings: [{ quantity: 'air-temperature', value: 0 }] });
  });

  it('may be a stream, that is an array without a length (section 6), and may describe itself', () => {
    const record = 'a2 00 67 62617474657279 02 18 5d';
    for (const bytes of [hex(`9f ${record} ff`), hex(`d9d9f7 81 ${record}`)]) {
      expect(decode(bytes)).toMatchObject({ readings: [{ quantity: 'battery', value: 93 }] });
    }
  });

  it('is told apart from text by its first byte, which no UTF-8 text can begin with', () => {
    expect(looksLikeCbor(printedCurrents)).toBe(true);
    for (let first = 0x80; first <= 0x9f; first++) {
      expect(() =>
        new TextDecoder('utf-8', { fatal: true }).decode(Uint8Array.of(first)),
      ).toThrow();
    }
    for (const text of ['[1]', '21.5', '{}', '°C', '']) {
      expect(looksLikeCbor(new TextEncoder().encode(text))).toBe(false);
    }
  });

  it('keeps labels that we do not know as labels, whatever they are called', () => {
    const [record] = pack(
      encode([
        new Map<unknown, unknown>([
          ['__proto__', { v: 1 }],
          [99, 1],
          [2, 5],
        ]),
      ]),
    );
    expect(Object.keys(record as object).sort()).toEqual(['99', '__proto__', 'v']);
    expect(({} as { v?: number }).v).toBeUndefined();
  });
});

describe('CBOR that is no pack is refused and loses nothing', () => {
  it.each([
    ['cut off', printedCurrents.subarray(0, 60)],
    ['followed by more', Uint8Array.of(...printedCurrents, 0)],
    ['an array that claims four thousand million items', hex('9a ff ff ff ff 01')],
    ['text that claims to be longer than all', hex('81 7b 7f ff ff ff ff ff ff ff 61')],
    ['a map with a label twice', hex('81 a2 02 01 02 02')],
    ['a tag that nobody knows', hex('81 d9 03 e8 01')],
    ['a decimal fraction of words', hex('81 a1 02 c4 82 61 61 61 62')],
    ['nested thirty thousand deep', new Uint8Array(30_000).fill(0x81)],
    ['nested without lengths', new Uint8Array(60_000).fill(0x9f)],
    ['maps in maps', Uint8Array.from({ length: 3000 }, (_, i) => (i % 2 ? 0x01 : 0xa1))],
    ['tags upon tags', Uint8Array.of(0x81, ...new Uint8Array(5000).fill(0xc4))],
  ])('%s', (_, bytes) => {
    expect(refusal(bytes)).toMatch(
      /^payload-not-cbor: The payload begins like CBOR but cannot .*\.$/,
    );
  });

  it('says what else it is', () => {
    expect(refusal(hex('d9d9f7 18 2a'))).toContain('is no array');
    expect(decode(hex('82 01 02'))).toMatchObject({
      kind: 'readings',
      readings: [],
      refused: [{ code: 'payload-shape' }, { code: 'payload-shape' }],
    });
    expect(decode(hex('ff fe 00'))).toMatchObject({ refusal: { code: 'payload-not-text' } });
  });
});
