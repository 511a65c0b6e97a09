import { describe, expect, it } from 'vitest';
import { type Decoded, decodeMessage } from '../../sensors/payload/decode-message.ts';
import { printedExamples } from './rfc8428-examples.ts';

const now = Date.UTC(2026, 4, 4, 7, 30);
const sensorTopic = 'boardcure/shed/sensor/node-1';

function decode(topic: string, text: string | null, byteLength = text?.length ?? 9): Decoded {
  return decodeMessage({ topic, text, byteLength }, { site: 'shed' }, { now });
}
const airTemperature = (text: string) => decode(`${sensorTopic}/air-temperature`, text);
const pack = (records: unknown, topic = sensorTopic) => decode(topic, JSON.stringify(records));

function values(decoded: Decoded): [string, number, number | null][] {
  if (decoded.kind !== 'readings') throw new Error(JSON.stringify(decoded));
  return decoded.readings.map(({ quantity, value, ownAt }) => [quantity, value, ownAt]);
}
function codes(decoded: Decoded): string[] {
  if (decoded.kind === 'not-ours') return ['not-ours'];
  if (decoded.kind === 'refused') return [decoded.refusal.code];
  return decoded.refused.map(({ code }) => code);
}
function detail(decoded: Decoded): string {
  return decoded.kind === 'refused' ? decoded.refusal.detail : '';
}

describe('a number as plain text', () => {
  it.each([
    ['21.5', 21.5],
    [' 21.5 ', 21.5],
    ['21.5\r\n', 21.5],
    ['\uFEFF21.5', 21.5],
    ['2.15e1', 21.5],
    ['215E-1', 21.5],
    ['-3', -3],
    ['+3', 3],
    ['.5', 0.5],
    ['5.', 5],
    ['-0', 0],
    ['21,5', 21.5],
    ['-0,5', -0.5],
    ['21.5 C', 21.5],
    ['21.5°C', 21.5],
    ['21,5 °C', 21.5],
    ['70.7 °F', 21.5],
    ['-40F', -40],
    ['294.65 K', 21.5],
    ['21,375', 21.375],
  ])('%j is %d °C', (text, value) => {
    expect(airTemperature(text)).toEqual({
      kind: 'readings',
      readings: [{ sensor: 'node-1', quantity: 'air-temperature', value, ownAt: null }],
      refused: [],
    });
  });

  it.each([
    ['NaN', 'value-not-finite', 'send nothing'],
    ['-inf', 'value-not-finite', 'send nothing'],
    ['Infinity', 'value-not-finite', 'send nothing'],
    ['1e999', 'value-not-finite', 'not a finite number'],
    ['1e9', 'value-out-of-range', 'check the sensor'],
    ['-127', 'value-out-of-range', '-127 °C'],
    ['0x10', 'payload-not-a-number', 'send a number such as'],
    ['warm', 'payload-not-a-number', '"warm"'],
    ['3.1 V', 'unit-does-not-fit', 'means a voltage and does not fit air temperature'],
    ['55 %', 'unit-does-not-fit', 'use °C or °F or K'],
    ['21.5 grad', 'unit-does-not-fit', '"grad" in the payload is not known here'],
    ['1,234.5', 'payload-not-a-number', 'no mark between thousands'],
    ['1.234,5', 'payload-not-a-number', 'not a decimal number'],
    ['21,5,3', 'payload-not-a-number', 'not a decimal number'],
    ['"21.5"', 'payload-not-a-number', 'without quotation marks'],
    ['true', 'payload-not-a-number', 'send a number'],
    ['null', 'payload-not-a-number', 'send a number'],
    ['1 2', 'payload-not-a-number', 'without anything after it'],
    ['21.5\u0000', 'payload-not-a-number', '\\u0000'],
    ['٢١', 'payload-not-a-number', 'send a number'],
    ['', 'payload-empty', 'empty'],
    [' \n', 'payload-empty', 'empty'],
  ])('%j is refused as %s and told what to do', (text, code, hint) => {
    expect(codes(airTemperature(text))).toEqual([code]);
    expect(detail(airTemperature(text))).toContain(hint);
  });
});

describe('a value with its time as JSON', () => {
  const at = Date.UTC(2026, 4, 4, 7, 30);
  it.each([
    ['{"value":21.5}', null],
    ['{"value":21.5,"time":null}', null],
    ['{"value":21.5,"time":"2026-05-04T07:30:00Z"}', at],
    ['{"value":21.5,"time":"2026-05-04T09:30:00+02:00"}', at],
    [`{"value":21.5,"time":${at / 1000}}`, at],
    [`{"value":21.5,"time":${at}}`, at],
    ['{"value":21.5,"unit":"C","rssi":-70,"nested":{"a":[1]}}', null],
    // Years in which nobody measured are judged later; the decoder only reads them.
    ['{"value":21.5,"time":12}', 12_000],
    ['{"value":21.5,"time":"2100-01-01T00:00:00Z"}', Date.UTC(2100, 0, 1)],
  ])('%s is read', (text, ownAt) => {
    expect(values(airTemperature(text))).toEqual([['air-temperature', 21.5, ownAt]]);
  });

  // By the definitions of both scales (SI brochure): 21.5 °C is 70.7 °F and 294.65 K.
  it.each([
    '{"value":70.7,"unit":"°F"}',
    '{"value":294.65,"unit":" K "}',
    '{"value":21.5,"unit":""}',
  ])('%s is read in the unit it names', (text) => {
    expect(values(airTemperature(text))).toEqual([['air-temperature', 21.5, null]]);
  });

  it.each([
    ['{"value":21.5,"unit":"V"}', 'unit-does-not-fit', 'means a voltage'],
    ['{"value":21.5,"unit":"grad"}', 'unit-does-not-fit', '"grad" in the JSON object'],
    ['{"value":"21.5"}', 'payload-not-a-number', 'without quotation marks'],
    ['{"value":true}', 'payload-not-a-number', 'true'],
    ['{"value":[21.5]}', 'payload-not-a-number', 'an array'],
    ['{"value":null}', 'payload-shape', 'member named value'],
    ['{"temperature":21.5}', 'payload-shape', 'member named value'],
    ['{}', 'payload-shape', 'member named value'],
    ['{"__proto__":{"value":21.5}}', 'payload-shape', 'member named value'],
    ['{"value":1e999}', 'value-not-finite', 'Infinity'],
    ['{"value":NaN}', 'payload-not-json', 'NaN'],
    ['{"value":21.5', 'payload-not-json', 'closed'],
    ['{"value":1e9}', 'value-out-of-range', '1000000000 °C'],
    ['{"value":21.5,"time":"noon"}', 'time-not-understood', 'ISO 8601'],
    ['{"value":21.5,"time":"2026-05-04T07:30:00"}', 'time-not-understood', 'add Z for UTC'],
    ['{"value":21.5,"time":true}', 'time-not-understood', 'true'],
    ['{"value":21.5,"time":1e300}', 'time-not-understood', 'calendar'],
  ])('%s is refused as %s', (text, code, hint) => {
    expect(codes(airTemperature(text))).toEqual([code]);
    expect(detail(airTemperature(text))).toContain(hint);
  });
});

describe('the payload as a whole', () => {
  it('is refused unread beyond 65,536 bytes, or beyond what the rule allows', () => {
    const megabyte = '1'.repeat(1_000_000);
    expect(codes(airTemperature(megabyte))).toEqual(['payload-too-large']);
    expect(detail(airTemperature(megabyte)).length).toBeLessThan(200);
    expect(codes(decode(sensorTopic, null, 65_537))).toEqual(['payload-too-large']);
    expect(codes(decode(`${sensorTopic}/battery`, megabyte, 2))).toEqual(['payload-too-large']);
    const small = { site: 'shed', maxBytes: 3 };
    const topic = `${sensorTopic}/battery`;
    expect(codes(decodeMessage({ topic, text: '100', byteLength: 3 }, small, { now }))).toEqual([]);
    expect(codes(decodeMessage({ topic, text: '99.5', byteLength: 4 }, small, { now }))).toEqual([
      'payload-too-large',
    ]);
  });

  it('has to be text', () => {
    expect(codes(decode(`${sensorTopic}/battery`, null))).toEqual(['payload-not-text']);
  });

  it('may be nested as deep as it fits', () => {
    expect(codes(pack(0, sensorTopic))).toEqual(['payload-shape']);
    expect(codes(decode(sensorTopic, '['.repeat(60_000)))).toEqual(['payload-not-json']);
    expect(codes(decode(sensorTopic, '['.repeat(30_000) + ']'.repeat(30_000)))).toEqual([
      'payload-shape',
    ]);
  });

  it('needs a quantity somewhere', () => {
    expect(codes(decode(sensorTopic, '21.5'))).toEqual(['payload-shape']);
    expect(codes(decode(sensorTopic, '{"value":21.5}'))).toEqual(['payload-shape']);
  });
});

describe('a SenML pack on the topic of a sensor', () => {
  it.each([
    ['the quantity in the name', { n: 'air-temperature', v: 21.5 }],
    ['after a colon', { n: 'urn:dev:ow:10e2073a01080063:air-temperature', v: 21.5 }],
    ['after the base name', { bn: 'rack1/', n: 'air-temperature', v: 21.5 }],
    ['after a dot', { bn: 'rack1.', n: 'air-temperature', v: 21.5 }],
    ['in the base name alone', { bn: 'rack1/air-temperature', v: 21.5 }],
  ])('may have %s', (_where, record) => {
    expect(values(pack([record]))).toEqual([['air-temperature', 21.5, null]]);
  });

  it('names every record that it cannot use and keeps the rest', () => {
    const decoded = pack([
      { bn: 'rack1/', bt: 1777879800, n: 'air-temperature', u: 'Cel', v: 21.5 },
      { n: 'relative-humidity', u: '%RH', v: 55 },
      { n: 'voltage', u: 'V', v: 3.1 },
      { n: 'battery', u: 'V', v: 3.1 },
      { n: 'wood-moisture', vs: 'damp' },
      { n: 'bad name', v: 1 },
      { n: 'surface-temperature', v: 1e9 },
    ]);
    expect(values(decoded)).toEqual([
      ['air-temperature', 21.5, 1777879800000],
      ['relative-humidity', 55, 1777879800000],
    ]);
    expect(decoded.kind === 'readings' && decoded.refused).toMatchObject([
      { code: 'quantity-unknown', sensor: 'node-1' },
      { code: 'unit-does-not-fit', sensor: 'node-1', quantity: 'battery' },
      { code: 'senml-no-value', sensor: 'node-1', quantity: 'wood-moisture' },
      { code: 'senml-name', sensor: 'node-1' },
      { code: 'value-out-of-range', sensor: 'node-1', quantity: 'surface-temperature' },
    ]);
  });

  it('says what is wrong, where, and what to do', () => {
    const decoded = pack([
      { n: 'air-temperature', v: 1 },
      { n: 'air-temperature', u: 'V', v: 1 },
    ]);
    expect(decoded.kind === 'readings' && decoded.refused[0]?.detail).toBe(
      'The unit "V" in record 2 of the SenML pack does not fit air-temperature; use Cel or K, or leave the unit out for °C.',
    );
  });

  it('does not find a quantity that runs into the base name, nor in other letters', () => {
    for (const record of [
      { bn: 'rack1', n: 'air-temperature', v: 1 },
      { n: 'Air-Temperature', v: 1 },
      { n: 'air-temperature/', v: 1 },
      { n: 'constructor', v: 1 },
      { n: 'x:__proto__', v: 1 },
    ]) {
      expect(codes(pack([record]))).toEqual(['quantity-unknown']);
    }
    for (const n of ['', '_x/battery', 'bättery', '/battery', '__proto__']) {
      expect(codes(pack([{ n, v: 1 }]))).toEqual(['senml-name']);
    }
  });

  it('holds nothing when it has base fields only', () => {
    expect(codes(pack([{ bn: 'rack1/' }, {}]))).toEqual(['senml-no-value']);
    expect(codes(pack([]))).toEqual(['payload-shape']);
  });

  it('refuses the examples of RFC 8428 whose names are no quantities of ours, record by record', () => {
    expect(codes(pack(printedExamples['5.1.5']))).toEqual(Array(4).fill('quantity-unknown'));
    expect(codes(pack(printedExamples['5.1.7']))).toEqual(Array(3).fill('quantity-unknown'));
  });
});

describe('the time of a SenML record (RFC 8428 section 4.5.3)', () => {
  const at = (record: object) => pack([{ n: 'air-temperature', v: 1, ...record }]);

  it('is absolute from 2^28 seconds on, and relative to now below', () => {
    expect(values(at({ t: 2 ** 28 }))).toEqual([['air-temperature', 1, 2 ** 28 * 1000]]);
    expect(values(at({ t: 2 ** 28 - 1 }))[0]?.[2]).toBe(now + (2 ** 28 - 1) * 1000);
    expect(values(at({ t: -5.5 }))[0]?.[2]).toBe(now - 5500);
    expect(values(at({ bt: 1777879800, t: -60 }))[0]?.[2]).toBe(1777879740000);
  });

  it('is marked when it was counted from the arrival', () => {
    const relative = at({ t: -5 });
    const absolute = at({ t: 1777879800 });
    expect(relative.kind === 'readings' && relative.readings[0]?.ownAtIsRelative).toBe(true);
    expect(absolute.kind === 'readings' && absolute.readings[0]).not.toHaveProperty(
      'ownAtIsRelative',
    );
  });

  it('is unknown to the sensor when it is missing or zero', () => {
    expect(values(at({}))[0]?.[2]).toBeNull();
    expect(values(at({ t: 0 }))[0]?.[2]).toBeNull();
    expect(values(at({ bt: 5, t: -5 }))[0]?.[2]).toBeNull();
  });

  it('is refused beyond any calendar', () => {
    expect(codes(at({ t: 1e18 }))).toEqual(['time-not-understood']);
    expect(codes(at({ t: -1e18 }))).toEqual(['time-not-understood']);
  });
});

describe('a SenML pack on a topic that names the quantity', () => {
  const on = (quantity: string, example: readonly unknown[]) =>
    pack(example, `${sensorTopic}/${quantity}`);

  it('reads the temperature of RFC 8428 section 5.1.1, whose name names no quantity', () => {
    expect(values(on('air-temperature', printedExamples['5.1.1']))).toEqual([
      ['air-temperature', 23.1, null],
    ]);
  });

  it('reads the humidity stream of section 5.1.2', () => {
    const read = values(on('relative-humidity', printedExamples['5.1.2 stream']));
    expect(read.map(([, value]) => value)).toEqual([
      21.2, 21.3, 21.4, 21.4, 21.5, 21.5, 21.5, 21.6, 21.7,
    ]);
    expect(read.map(([, , ownAt]) => ownAt)).toEqual(
      [0, 1, 2, 3, 4, 5, 6, 7, 8].map((i) => 1320067464000 + i * 10_000),
    );
  });

  it('takes the humidity of section 5.1.3 and leaves position and battery by their units', () => {
    const decoded = on('relative-humidity', printedExamples['5.1.3']);
    expect(values(decoded)).toEqual([
      ['relative-humidity', 20, 1320067464000],
      ['relative-humidity', 20.3, 1320067524000],
      ['relative-humidity', 20.7, 1320067584000],
      ['relative-humidity', 21.2, 1320067644000],
    ]);
    expect(codes(decoded)).toEqual(Array(9).fill('unit-does-not-fit'));
    expect(values(on('battery', printedExamples['5.1.3']))).toEqual([
      ['battery', 98, 1320067614000],
    ]);
  });

  it('reads 5.1.3 and its resolved form 5.1.4 alike', () => {
    expect(on('relative-humidity', printedExamples['5.1.4'])).toEqual(
      on('relative-humidity', printedExamples['5.1.3']),
    );
  });

  it('takes the temperature from section 5.1.5 and from both devices of 5.1.6', () => {
    expect(values(on('air-temperature', printedExamples['5.1.5']))).toEqual([
      ['air-temperature', 23.1, null],
    ]);
    expect(values(on('air-temperature', printedExamples['5.1.6']))).toEqual([
      ['air-temperature', 25.2, 1320078429000],
      ['air-temperature', 12.3, 1320078429000],
    ]);
    expect(values(on('relative-humidity', printedExamples['5.1.6']))).toEqual([
      ['relative-humidity', 30, 1320078429000],
      ['relative-humidity', 67, 1320078429000],
    ]);
  });

  it('needs no name, but may not be told another quantity', () => {
    expect(values(on('battery', [{ u: '%EL', v: 80 }]))).toEqual([['battery', 80, null]]);
    expect(codes(on('battery', [{ n: 'x/wood-moisture', v: 80 }]))).toEqual(['senml-name']);
  });
});

describe('where a message is addressed', () => {
  it.each([
    ['boardcure/other/sensor/a/battery', 'not-ours'],
    ['boardcure/shed/status', 'not-ours'],
    ['boardcure/shed/sensors/a/battery', 'not-ours'],
    ['boardcure/shed', 'not-ours'],
    ['/boardcure/shed/sensor/a/battery', 'not-ours'],
    ['$SYS/broker/uptime', 'not-ours'],
    ['', 'not-ours'],
    ['boardcure/shed/sensor', 'topic-not-understood'],
    ['boardcure/shed/sensor/a/battery/x', 'topic-not-understood'],
    ['boardcure/shed/sensor/a/battery/x/y/z', 'topic-not-understood'],
    ['boardcure/shed/sensor/a/', 'topic-not-understood'],
    ['boardcure/shed/sensor//battery', 'sensor-id-not-allowed'],
    ['boardcure/shed/sensor/', 'sensor-id-not-allowed'],
    ['boardcure/shed/sensor/a b/battery', 'sensor-id-not-allowed'],
    ['boardcure/shed/sensor/a\n/battery', 'sensor-id-not-allowed'],
    ['boardcure/shed/sensor/a', ''],
    [`boardcure/shed/sensor/${'a'.repeat(65)}/battery`, 'sensor-id-not-allowed'],
    ['boardcure/shed/sensor/nœud/battery', 'sensor-id-not-allowed'],
    ['boardcure/shed/sensor/a/Battery', 'quantity-unknown'],
    ['boardcure/shed/sensor/a/temperature', 'quantity-unknown'],
    ['boardcure/shed/sensor/a/toString', 'quantity-unknown'],
    [`boardcure/shed/sensor/${'a'.repeat(64)}/battery`, ''],
    ['boardcure/shed/sensor/__proto__/battery', ''],
    ['boardcure/shed/sensor/A.z_0-9/battery', ''],
  ])('%j: %s', (topic, code) => {
    const text = topic.endsWith('/a') ? '[{"n":"battery","v":50}]' : '50';
    expect(codes(decode(topic, text)).join()).toBe(code);
  });

  it('lists the quantities to one who names an unknown one', () => {
    expect(detail(decode(`${sensorTopic}/temperature`, '1'))).toContain(
      'air-temperature, relative-humidity, surface-temperature',
    );
  });
});
