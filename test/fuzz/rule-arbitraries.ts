import { encode } from 'cborg';
import fc from 'fast-check';
import { quantities } from '../../daemon/contract/quantity.ts';
import type { TopicRuleDraft } from '../../daemon/contract/topic-rule.ts';
import type { Message } from '../../sensors/payload/decode-message.ts';

const strange = fc.constantFrom('__proto__', 'constructor', 'toString', 'length', '', '\u202e');
const level = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom('farm', 'attic', 'n1', 'temp', 'data', '') },
  { weight: 4, arbitrary: fc.constantFrom('+', '{sensor}', '{room}', 'n-{sensor}', '{stamp}.x') },
  { weight: 1, arbitrary: fc.constantFrom('#', '$SYS', 'boardcure', 'shed', 'a+', '{', '{{a}}') },
  { weight: 1, arbitrary: fc.oneof(strange, fc.string({ unit: 'binary', maxLength: 6 })) },
);

/** Topic patterns: mostly right, and anything. */
export const anyPattern = fc
  .tuple(fc.array(level, { minLength: 1, maxLength: 6 }), fc.boolean())
  .map(([levels, open]) => [...levels, ...(open ? ['#'] : [])].join('/'));

/** Topics that often fit such patterns. */
export const anyTopic = fc.oneof(
  {
    weight: 5,
    arbitrary: fc
      .array(fc.constantFrom('farm', 'attic', 'n1', 'n-7', '1.x', 'temp', 'data', ''), {
        minLength: 1,
        maxLength: 7,
      })
      .map((levels) => levels.join('/')),
  },
  fc.string({ unit: 'binary', maxLength: 30 }),
);

const pointers = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom('/t', '/h', '/d/0/t', '/0', '', '/a~1b', '/at') },
  { weight: 2, arbitrary: strange.map((name) => `/${name}`) },
  fc.constantFrom('t', '/~', '/~2', '/'.repeat(40)),
  fc.string({ unit: 'binary', maxLength: 10 }),
);
const unit = fc.oneof(
  { weight: 5, arbitrary: fc.constantFrom(null, '°C', '°F', 'K', '%', 'fraction', 'kΩ', 'GΩ') },
  fc.oneof(fc.constantFrom('V', 'ppm'), strange),
);
const template = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom('n1', '{sensor}', '{room}-{/id}', '{/t}', '{device}') },
  fc.oneof(
    strange,
    pointers.map((pointer) => `{${pointer}}`),
    fc.constantFrom('{', 'a}b', 'ü'),
  ),
);

export const anyDraft: fc.Arbitrary<TopicRuleDraft> = fc.record(
  {
    pattern: anyPattern,
    sensor: template,
    payload: fc.constantFrom('text' as const, 'json' as const, 'senml' as const),
    values: fc.array(
      fc.record(
        {
          quantity: fc.constantFrom(...quantities),
          pointer: pointers,
          name: fc.constantFrom('', 'temp', 'humidity', 'a/b', '__proto__'),
          unit,
          scale: fc.oneof(fc.constantFrom(1, 0.1, 0.01, -1), fc.double()),
          sensor: fc.option(template),
        },
        { requiredKeys: ['quantity'] },
      ),
      { maxLength: 4 },
    ),
    time: fc.option(
      fc.record({
        from: fc.oneof(pointers, fc.constantFrom('{stamp}', '{nobody}')),
        format: fc.constantFrom(
          ...(['any', 'iso', 'epoch-s', 'epoch-ms', 'age-s', 'age-ms'] as const),
        ),
      }),
    ),
  },
  { requiredKeys: ['pattern', 'sensor', 'payload', 'values'] },
);

/** Rules without a fault of form, so that what comes after the checks is walked too. */
export const likelyDraft: fc.Arbitrary<TopicRuleDraft> = fc
  .record({
    pattern: fc.constantFrom('{room}/{sensor}/#', '+/{sensor}', 'farm/#', '{stamp}/{sensor}/data'),
    payload: fc.constantFrom('text' as const, 'json' as const, 'senml' as const),
    quantity: fc.constantFrom(...quantities),
    pointer: fc.constantFrom('/t', '/d/0/t', '', '/__proto__', '/at'),
    other: fc.constantFrom('/h', '/1', '/constructor'),
    scale: fc.constantFrom(1, 0.1, 1e12, -1),
    sensor: fc.constantFrom('n1', '{/id}'),
    time: fc.constantFrom('any' as const, 'iso' as const, 'epoch-ms' as const, 'age-s' as const),
  })
  .map(({ pattern, payload, quantity, pointer, other, scale, sensor, time }) => ({
    pattern,
    payload,
    sensor: payload === 'json' ? sensor : payload === 'senml' ? '{device}' : 'n1',
    values:
      payload === 'senml'
        ? [{ quantity, name: 'temp' }]
        : [
            { quantity, ...(payload === 'json' ? { pointer } : {}), scale },
            ...(payload === 'json' ? [{ quantity, pointer: other, sensor: 'other' }] : []),
          ],
    ...(payload === 'json' ? { time: { from: '/at', format: time } } : {}),
  }));

const numbers = fc.oneof(fc.double(), fc.integer(), fc.constantFrom(0, -0, 21.5, 1e308, 2 ** 53));
const leaf = fc.oneof(
  { weight: 5, arbitrary: numbers },
  fc.constantFrom('21,5 °C', '1,234', '70.7 F', 'NaN', null, true, '', '1777879740', 'n1', '28:ff'),
  fc.string({ unit: 'binary', maxLength: 12 }),
);
const jsonPayloads = fc.oneof(
  fc
    .record(
      {
        t: leaf,
        h: leaf,
        id: leaf,
        at: leaf,
        d: fc.array(fc.record({ t: leaf }), { maxLength: 2 }),
      },
      { requiredKeys: [] },
    )
    .map((json) => JSON.stringify(json)),
  fc.json(),
  fc.constantFrom('{"__proto__":{"t":5}}', '{"constructor":{"prototype":{"t":1}}}', '[]', '{'),
  fc.nat({ max: 3000 }).map((depth) => '[{"d":'.repeat(depth)),
  leaf.map(String),
);

const senmlPack = fc.array(
  fc.record(
    {
      bn: fc.constantFrom('rack1/', 'urn:dev:1:', '2001:db8::2/'),
      bt: fc.oneof(fc.constant(1_777_000_000), numbers),
      n: fc.oneof(fc.constantFrom('temp', ...quantities), strange),
      u: fc.constantFrom('Cel', '%RH', '/', 'V'),
      v: fc.double({ noNaN: true, noDefaultInfinity: true }),
      t: fc.constantFrom(-60, 0, 1_777_000_000.25),
      vs: fc.string({ maxLength: 4 }),
    },
    { requiredKeys: [] },
  ),
  { minLength: 1, maxLength: 6 },
);
/** A pack as it may be sent in either encoding. */
export const packInBoth = senmlPack.map((pack) => ({ pack, bytes: encode(pack) }));

/** Bytes that are CBOR, nearly CBOR, and anything that begins like an array in it. */
export const cborBytes = fc.oneof(
  packInBoth.map(({ bytes }) => bytes),
  fc.tuple(packInBoth, fc.nat(), fc.nat(255), fc.nat(3)).map(([{ bytes }, at, byte, cut]) => {
    const damaged = bytes.slice(0, bytes.length - cut);
    if (damaged.length > 1) damaged[1 + (at % (damaged.length - 1))] = byte;
    return damaged;
  }),
  fc
    .tuple(fc.integer({ min: 0x80, max: 0x9f }), fc.uint8Array({ maxLength: 60 }))
    .map(([first, rest]) => Uint8Array.of(first, ...rest)),
  fc
    .tuple(fc.constantFrom(0x81, 0x9f, 0xa1, 0xbf, 0xc4, 0x5f, 0x7f), fc.nat({ max: 20_000 }))
    .map(([byte, length]) => Uint8Array.of(0x81, ...new Uint8Array(length).fill(byte))),
);

export const anyPayload: fc.Arbitrary<Omit<Message, 'topic'>> = fc.oneof(
  fc
    .oneof(
      jsonPayloads,
      senmlPack.map((pack) => JSON.stringify(pack)),
    )
    .map((text) => {
      const bytes = new TextEncoder().encode(text);
      return { text, byteLength: bytes.length, bytes };
    }),
  cborBytes.map((bytes) => ({ text: null, byteLength: bytes.length, bytes })),
);
