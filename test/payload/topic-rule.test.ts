import { encode } from 'cborg';
import { describe, expect, it } from 'vitest';
import type { TopicRuleDraft } from '../../daemon/contract/topic-rule.ts';
import type { Decoded } from '../../sensors/payload/decode-message.ts';
import { ruleSet } from '../../sensors/payload/rule-set.ts';
import { printedExamples } from './rfc8428-examples.ts';
import { compiled, decodedBy, faultsOf } from './rule-of.ts';

const now = Date.UTC(2026, 4, 4, 7, 30);

function readings(decoded: Decoded): unknown[] {
  if (decoded.kind !== 'readings') throw new Error(JSON.stringify(decoded));
  return decoded.readings.map(({ sensor, quantity, value }) => [sensor, quantity, value]);
}
const refusals = (decoded: Decoded) =>
  decoded.kind === 'refused'
    ? [decoded.refusal]
    : decoded.kind === 'readings'
      ? decoded.refused
      : [];

describe('a rule for JSON', () => {
  const several: Partial<TopicRuleDraft> = {
    values: [
      { quantity: 'air-temperature', pointer: '/data/0/t', scale: 0.1 },
      { quantity: 'relative-humidity', pointer: '/data/0/h' },
      { quantity: 'surface-temperature', pointer: '/board', unit: '°F' },
      { quantity: 'battery', pointer: '/batt', unit: 'fraction' },
    ],
  };

  it('finds several values in one message, and converts their units', () => {
    const message = '{"data":[{"t":217,"h":"55,5 %"}],"board":70.7,"batt":0.93,"rssi":-70}';
    expect(readings(decodedBy(several, message))).toEqual([
      ['attic', 'air-temperature', 21.7],
      ['attic', 'relative-humidity', 55.5],
      ['attic', 'surface-temperature', 21.5],
      ['attic', 'battery', 93],
    ]);
  });

  it('passes over what a message leaves out, as long as something is there', () => {
    expect(readings(decodedBy(several, '{"batt":0.5,"board":null}'))).toEqual([
      ['attic', 'battery', 50],
    ]);
    const [refusal] = refusals(decodedBy(several, '{"other":1}'));
    expect(refusal?.code).toBe('payload-shape');
    expect(refusal?.detail).toContain('"/data/0/t", "/data/0/h"');
  });

  it('refuses by name what is there and wrong, and keeps the rest', () => {
    const decoded = decodedBy(several, '{"data":[{"t":true,"h":500}],"board":"cold","batt":0.5}');
    expect(readings(decoded)).toEqual([['attic', 'battery', 50]]);
    expect(refusals(decoded).map(({ code, detail }) => `${code} ${detail}`)).toEqual([
      expect.stringMatching(/^payload-not-a-number The value at \/data\/0\/t is true/),
      expect.stringMatching(/^value-out-of-range The value at \/data\/0\/h is 500 %/),
      expect.stringMatching(/^payload-not-a-number The value at \/board "cold"/),
    ]);
  });

  it('takes a number alone at the empty pointer', () => {
    const whole = { values: [{ quantity: 'battery', pointer: '' } as const] };
    expect(readings(decodedBy(whole, '93'))).toEqual([['attic', 'battery', 93]]);
  });

  it('makes the sensor’s name of text, topic and payload; colons and slashes become hyphens', () => {
    const named = { pattern: 'gateway/{room}/+', sensor: '{room}-{/id}' };
    expect(
      readings(decodedBy(named, '{"id":"28:ff:4a","temp":3}', 'gateway/North shed/up')),
    ).toEqual([['North-shed-28-ff-4a', 'air-temperature', 3]]);
    for (const id of ['{"x":1}', 'null', '""', '"ü"', '"///"', `"${'x'.repeat(65)}"`]) {
      const decoded = decodedBy({ sensor: '{/id}' }, `{"id":${id},"temp":3}`);
      expect(refusals(decoded).map(({ code }) => code)).toEqual(['sensor-id-not-allowed']);
    }
  });

  it('can make readings of several sensors of one message', () => {
    const two: Partial<TopicRuleDraft> = {
      values: [
        { quantity: 'surface-temperature', pointer: '/t1', sensor: '{sensor}-1' },
        { quantity: 'surface-temperature', pointer: '/t2', sensor: '{sensor}-2' },
      ],
    };
    expect(readings(decodedBy(two, '{"t1":4,"t2":5}'))).toEqual([
      ['attic-1', 'surface-temperature', 4],
      ['attic-2', 'surface-temperature', 5],
    ]);
  });

  it('is not led to what objects inherit', () => {
    for (const pointer of ['/__proto__', '/constructor/name', '/toString/length']) {
      const decoded = decodedBy({ values: [{ quantity: 'battery', pointer }] }, '{"a":1}');
      expect(refusals(decoded).map(({ code }) => code)).toEqual(['payload-shape']);
    }
  });
});

describe('the time of a message', () => {
  const at = now - 60_000;
  it.each<[NonNullable<TopicRuleDraft['time']>['format'], string, number | null, boolean]>([
    ['iso', '"2026-05-04T07:29:00Z"', at, false],
    ['iso', '"2026-05-04T09:29:00+02:00"', at, false],
    ['epoch-s', String(at / 1000), at, false],
    ['epoch-s', `"${at / 1000}"`, at, false],
    ['epoch-ms', String(at), at, false],
    ['any', String(at), at, false],
    ['any', String(at / 1000), at, false],
    ['any', '"20260504T072900Z"', at, false],
    ['age-s', '60', at, true],
    ['age-ms', '"60000"', at, true],
    ['epoch-s', 'null', null, false],
    ['age-s', '0', now, true],
  ])('%s %s', (format, sent, ownAt, isRelative) => {
    const decoded = decodedBy(
      { time: { from: '/at', format } },
      `{"temp":3,"at":${sent}}`,
      'farm/attic/data',
      now,
    );
    expect(decoded).toMatchObject({
      readings: [{ ownAt, ...(isRelative ? { ownAtIsRelative: true } : {}) }],
    });
    if (!isRelative) expect(decoded).not.toHaveProperty('readings[0].ownAtIsRelative');
  });

  it.each([
    ['iso', '1777879740', 'ISO 8601 text'],
    ['iso', '"2026-05-04T07:29:00"', 'add Z for UTC'],
    ['epoch-s', '"noon"', 'seconds since 1970'],
    ['age-s', '1777879740', 'time since 1970?'],
    ['age-s', '-5', 'from 0 to'],
    ['any', 'true', 'ISO 8601'],
  ] as const)('%s %s is refused', (format, sent, hint) => {
    const decoded = decodedBy({ time: { from: '/at', format } }, `{"temp":3,"at":${sent}}`);
    expect(refusals(decoded)).toMatchObject([{ code: 'time-not-understood' }]);
    expect(refusals(decoded)[0]?.detail).toContain(hint);
  });

  it('can stand in the topic', () => {
    const stamped: Partial<TopicRuleDraft> = {
      pattern: 'log/{sensor}/{stamp}',
      payload: 'text',
      values: [{ quantity: 'battery' }],
      time: { from: '{stamp}', format: 'epoch-s' },
    };
    expect(decodedBy(stamped, '93 %', 'log/n1/1777879740', now)).toMatchObject({
      readings: [{ sensor: 'n1', value: 93, ownAt: at }],
    });
  });
});

describe('a rule for SenML', () => {
  const senml: Partial<TopicRuleDraft> = {
    pattern: 'packs/#',
    payload: 'senml',
    sensor: '{device}',
    values: [
      { quantity: 'air-temperature', name: 'temperature' },
      { quantity: 'air-temperature', name: 'temp' },
      { quantity: 'relative-humidity', name: 'humidity' },
    ],
  };

  // RFC 8428 (2018), section 5.1.6, "Collection of Resources": two devices in one pack.
  it('reads the collection of the RFC, each device as a sensor', () => {
    const expected = [
      ['2001-db8--2', 'air-temperature', 25.2],
      ['2001-db8--2', 'relative-humidity', 30],
      ['2001-db8--1', 'air-temperature', 12.3],
      ['2001-db8--1', 'relative-humidity', 67],
    ];
    const records = printedExamples['5.1.6'];
    expect(readings(decodedBy(senml, JSON.stringify(records), 'packs/a'))).toEqual(expected);
    expect(readings(decodedBy(senml, encode(records), 'packs/b'))).toEqual(expected);
  });

  // Sections 5.1.1 and 5.1.3 name no quantity in their names; 5.1.5 and 5.1.7 carry a temperature.
  it.each(['5.1.5', '5.1.7'] as const)('reads the temperature of example %s', (example) => {
    const decoded = decodedBy(senml, JSON.stringify(printedExamples[example]), 'packs/a');
    expect(readings(decoded)).toEqual([['urn-dev-ow-10e2073a01080063', 'air-temperature', 23.1]]);
    expect(refusals(decoded).every(({ code }) => code === 'quantity-unknown')).toBe(true);
  });

  it('knows our own words without being told', () => {
    const own = '[{"n":"n1:battery","v":93},{"n":"n1:voltage","v":3}]';
    const decoded = decodedBy({ ...senml, values: [] }, own, 'packs/a');
    expect(readings(decoded)).toEqual([['n1', 'battery', 93]]);
    expect(refusals(decoded)[0]?.detail).toContain('for which the rule has no quantity');
  });
});

describe('a payload that is not what the rule expects', () => {
  it.each<[Partial<TopicRuleDraft>, string | Uint8Array, string]>([
    [{}, '[', 'payload-not-json'],
    [{}, 'warm', 'payload-not-json'],
    [{}, '', 'payload-empty'],
    [{}, encode([1]), 'payload-not-text'],
    [{}, '"text"', 'payload-shape'],
    [{}, '['.repeat(20_000) + ']'.repeat(20_000), 'payload-shape'],
    [{}, 'x'.repeat(70_000), 'payload-too-large'],
    [{ payload: 'senml', values: [] }, '{"n":"battery","v":1}', 'payload-shape'],
    [{ payload: 'senml', values: [] }, '21.5', 'payload-shape'],
    [
      { payload: 'text', values: [{ quantity: 'battery' }] },
      '{"value":93}',
      'payload-not-a-number',
    ],
  ])('%j refuses %.40s', (given, payload, code) => {
    expect(refusals(decodedBy(given, payload)).map((refusal) => refusal.code)).toEqual([code]);
  });
});

describe('everything that is wrong with a rule is said at once, each at its field', () => {
  it('in one rule with a fault everywhere', () => {
    const faults = faultsOf({
      pattern: '#',
      sensor: '{nobody} ü',
      values: [
        { quantity: 'air-temperature', pointer: 'temp', unit: 'V' },
        { quantity: 'battery', pointer: '/a~b', scale: 0, name: 'x', sensor: '{x' },
      ],
      time: { from: 'at', format: 'iso' },
    });
    expect(faults.map(({ pointer }) => pointer)).toEqual([
      '/pattern',
      '/sensor',
      '/sensor',
      '/values/0/pointer',
      '/values/0/unit',
      '/values/1/pointer',
      '/values/1/name',
      '/values/1/scale',
      '/values/1/sensor',
      '/time/from',
    ]);
    for (const { detail } of faults) expect(detail).toMatch(/^\S.{10,}[.]$/s);
  });

  it.each<[Partial<TopicRuleDraft>, string]>([
    [{ values: [] }, '/values'],
    [
      { payload: 'text', values: [{ quantity: 'battery' }, { quantity: 'wood-moisture' }] },
      '/values',
    ],
    [{ payload: 'text', values: [{ quantity: 'battery', pointer: '/x' }] }, '/values/0/pointer'],
    [{ payload: 'text', sensor: '{/id}', values: [{ quantity: 'battery' }] }, '/sensor'],
    [{ payload: 'senml', values: [{ quantity: 'battery', name: 'a/b' }] }, '/values/0/name'],
    [
      { payload: 'senml', values: [{ quantity: 'battery', name: 'b', unit: '%' }] },
      '/values/0/unit',
    ],
    [{ payload: 'senml', values: [], time: { from: '/t', format: 'any' } }, '/time'],
    [{ time: { from: '{stamp}', format: 'any' } }, '/time/from'],
    [{ sensor: '' }, '/sensor'],
    [
      {
        values: [
          { quantity: 'battery', pointer: '/a' },
          { quantity: 'battery', pointer: '/b' },
        ],
      },
      '/values/1',
    ],
  ])('%j: %s', (given, pointer) => {
    expect(faultsOf(given).map((fault) => fault.pointer)).toContain(pointer);
  });
});

describe('rules in their order', () => {
  const first = compiled({ pattern: 'farm/attic/{sensor}' });
  const second = compiled({ pattern: 'farm/{room}/{sensor}', sensor: '{room}-{sensor}' });
  const decode = (topic: string) =>
    ruleSet([first, second]).decode({ topic, text: '{"temp":3}', byteLength: 10 }, {}, { now });

  it('the first that fits takes the message', () => {
    expect(readings(decode('farm/attic/n1'))).toEqual([['n1', 'air-temperature', 3]]);
    expect(readings(decode('farm/cellar/n1'))).toEqual([['cellar-n1', 'air-temperature', 3]]);
    expect(decode('farm/attic')).toEqual({ kind: 'not-ours' });
  });

  it('remember no more topics than they may', () => {
    const set = ruleSet([first, second]);
    for (let i = 0; i < 5000; i++) expect(set.find(`farm/r${i}/n`)?.rule).toBe(second);
    expect(set.find('farm/attic/n')?.rule).toBe(first);
  });
});
