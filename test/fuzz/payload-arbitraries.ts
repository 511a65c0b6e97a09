import fc from 'fast-check';
import { quantities, quantityFacts } from '../../daemon/contract/quantity.ts';
import type { Message } from '../../sensors/payload/decode-message.ts';

export const site = 'shed';

const sensorIds = fc.stringMatching(/^[A-Za-z0-9._-]{1,64}$/);
const anyQuantity = fc.constantFrom(...quantities);
const words = fc.oneof(
  fc.constantFrom(
    '__proto__',
    'constructor',
    'toString',
    '',
    'value',
    'time',
    'voltage',
    ...quantities,
  ),
  fc.constantFrom('\ud800', '\u202e', '\u0000'),
  fc.string({ unit: 'binary', maxLength: 20 }),
);

/** Topics: ours, nearly ours, and anything. */
const topics = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.tuple(sensorIds, anyQuantity).map(([s, q]) => `boardcure/shed/sensor/${s}/${q}`),
  },
  { weight: 4, arbitrary: sensorIds.map((s) => `boardcure/shed/sensor/${s}`) },
  {
    weight: 1,
    arbitrary: fc
      .array(words, { maxLength: 4 })
      .map((rest) => ['boardcure/shed/sensor', ...rest].join('/')),
  },
  { weight: 1, arbitrary: fc.string({ unit: 'binary' }) },
);

const numbers = fc.oneof(
  fc.double(),
  fc.integer(),
  fc.double({ min: -10, max: 110, noNaN: true }),
  fc.constantFrom(0, -0, 1e9, -127, 65535, 2 ** 28, 2 ** 28 - 1, 1e11, 8.64e15, 1e308, -1e308),
);
const strayValues = fc.oneof(
  { weight: 6, arbitrary: numbers },
  fc.jsonValue(),
  words,
  fc.constantFrom(null, true, '2026-05-04T07:30:00Z', '2026-05-04', 'NaN', '21.5'),
);

const units = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.constantFrom(...quantities.flatMap((q) => quantityFacts[q].senmlUnits)),
  },
  fc.constantFrom('V', 'lon', 'degF', '', '__proto__', 'constructor'),
  strayValues,
);
const names = fc.oneof(
  { weight: 5, arbitrary: anyQuantity },
  { weight: 2, arbitrary: anyQuantity.map((q) => `urn:dev:ow:10e2073a01080063:${q}`) },
  strayValues,
);

const senmlRecords = fc.oneof(
  {
    weight: 10,
    arbitrary: fc.record(
      {
        bn: fc.oneof(fc.constantFrom('rack1/', 'urn:dev:ow:10e2:', 'x'), strayValues),
        bt: strayValues,
        bu: units,
        bv: strayValues,
        bs: strayValues,
        bver: fc.oneof(
          { weight: 9, arbitrary: fc.constant(10) },
          fc.constantFrom(5, 11, 26),
          strayValues,
        ),
        n: names,
        u: units,
        v: fc.oneof({ weight: 5, arbitrary: numbers }, strayValues),
        vs: strayValues,
        vb: strayValues,
        vd: strayValues,
        s: strayValues,
        t: strayValues,
        ut: strayValues,
        odd_: strayValues,
        bodd_: strayValues,
      },
      { requiredKeys: [] },
    ),
  },
  // Mostly well formed, so that the paths behind the first checks are walked too.
  {
    weight: 10,
    arbitrary: fc.record(
      { n: names, u: units, v: numbers, t: numbers },
      { requiredKeys: ['n', 'v'] },
    ),
  },
  fc.jsonValue(),
);

const jsonTexts = fc.oneof(
  fc
    .record({ value: strayValues, time: strayValues, extra: fc.jsonValue() }, { requiredKeys: [] })
    .map((x) => JSON.stringify(x)),
  fc.array(senmlRecords, { maxLength: 8 }).map((x) => JSON.stringify(x)),
  fc.json(),
  fc.nat({ max: 3000 }).map((depth) => '['.repeat(depth) + ']'.repeat(depth)),
  fc.nat({ max: 3000 }).map((depth) => '{"value":'.repeat(depth)),
  fc.constantFrom(
    '{"__proto__":{"value":5}}',
    '{"value":1e999}',
    '{"value":NaN}',
    '[{"__proto__":{"v":1},"n":"battery"}]',
  ),
);

const numberTexts = fc.oneof(
  numbers.map(String),
  numbers.map((x) => ` ${x}\r\n`),
  numbers.map((x) => `${x} C`),
  numbers.map((x) => String(x).replace('.', ',')),
  fc.constantFrom('NaN', 'Infinity', '-inf', '0x10', '', ' ', '.', 'e5', '1e', '+', '١٢'),
);

/** A text with some characters taken out, doubled or swapped: what a bad line does to it. */
const damaged = fc
  .tuple(
    fc.oneof(jsonTexts, numberTexts),
    fc.nat(),
    fc.nat(),
    fc.string({ unit: 'binary', maxLength: 3 }),
  )
  .map(([text, from, length, put]) => {
    const start = from % (text.length + 1);
    return text.slice(0, start) + put + text.slice(start + (length % 5));
  });

const texts = fc.oneof(
  { weight: 4, arbitrary: jsonTexts },
  { weight: 2, arbitrary: numberTexts },
  { weight: 2, arbitrary: damaged },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }) },
);

/** A record that is right by itself, as its sender would write it. */
const goodRecord = fc
  .tuple(
    anyQuantity.chain((quantity) => {
      const { low, high } = quantityFacts[quantity];
      return fc
        .double({ min: low, max: high, noNaN: true })
        .map((v) => ({ n: quantity, v: v + 0 }));
    }),
    fc.constantFrom(undefined, -60, 0, 1_777_000_000, 1_777_000_000.25),
  )
  .map(([record, t]) => ({ ...record, u: quantityFacts[record.n].senmlUnits[0], t }));

/** Records that may be anything, but carry no base field that would reach beyond them. */
const strayRecord = fc
  .oneof(senmlRecords, fc.jsonValue())
  .map((record) =>
    typeof record === 'object' && record !== null && !Array.isArray(record)
      ? Object.fromEntries(Object.entries(record).filter(([label]) => !label.startsWith('b')))
      : record,
  );

/** A good pack, and the place at which a stray record is put into it. */
export const packWithStray = fc.record({
  good: fc.array(goodRecord, { minLength: 1, maxLength: 12 }),
  stray: strayRecord,
  place: fc.nat(12),
});

const goodPacks = packWithStray.map(({ good, stray, place }) =>
  JSON.stringify(good.toSpliced(place % (good.length + 1), 0, stray as never)),
);

/** Messages of every kind, most of them nearly right. */
export const anyMessage: fc.Arbitrary<Message> = fc.oneof(
  {
    weight: 40,
    arbitrary: fc
      .oneof(
        { weight: 3, arbitrary: fc.tuple(topics, texts) },
        fc.tuple(
          sensorIds.map((s) => `boardcure/shed/sensor/${s}`),
          goodPacks,
        ),
      )
      .map(([topic, text]) => ({ topic, text, byteLength: new TextEncoder().encode(text).length })),
  },
  fc.tuple(topics, fc.nat(100)).map(([topic, byteLength]) => ({ topic, text: null, byteLength })),
);

/** A quantity with a value inside its limits. */
export const goodValue = anyQuantity.chain((quantity) => {
  const { low, high } = quantityFacts[quantity];
  return (
    fc
      .oneof(fc.double({ min: low, max: high, noNaN: true }), fc.integer({ min: low, max: high }))
      // 0 and −0 are one reading.
      .map((value) => ({ quantity, value: value + 0 }))
  );
});

export const goodSensor = sensorIds;
/** Epoch ms from 1978-07-05 on, what SenML can name, up to the year 2199. */
export const goodMoment = fc.integer({ min: 268_500_000_000, max: 7_258_118_399_999 });
export const now = 1_777_000_000_000;
