import { describe, expect, it } from 'vitest';
import { mostRecords, type PackRecord, resolvedPack } from '../../sensors/payload/senml-pack.ts';
import { printedExamples } from './rfc8428-examples.ts';

function records(pack: readonly unknown[]): PackRecord[] {
  const resolved = resolvedPack(pack);
  if (resolved.kind !== 'pack') throw new Error(resolved.refusal.detail);
  return resolved.records.map((record) => {
    if (record.kind !== 'record') throw new Error(record.refusal.detail);
    return record;
  });
}

function outcome(pack: readonly unknown[]): string[] {
  const resolved = resolvedPack(pack);
  if (resolved.kind === 'refused') return [`all: ${resolved.refusal.code}`];
  return resolved.records.map((r) => (r.kind === 'record' ? 'good' : r.refusal.code));
}

describe('a SenML pack is resolved as RFC 8428 section 4 says', () => {
  it('turns the pack of section 5.1.3 into the resolved one printed in 5.1.4', () => {
    expect(
      records(printedExamples['5.1.3']).map(({ name, unit, seconds, value }) => ({
        n: name,
        u: unit,
        t: seconds,
        v: value,
      })),
    ).toEqual(printedExamples['5.1.4']);
  });

  it('leaves a pack that is already resolved as it is (5.1.4)', () => {
    expect(records(printedExamples['5.1.4'])).toEqual(records(printedExamples['5.1.3']));
  });

  it('counts the currents of 5.1.2 back from the base time and gives them the base unit', () => {
    const [voltage, ...currents] = records(printedExamples['5.1.2 currents']);
    expect(voltage).toMatchObject({ unit: 'V', seconds: 1276020076.001, value: 120.1 });
    expect(currents.map(({ unit, value }) => [unit, value])).toEqual(
      [1.2, 1.3, 1.4, 1.5, 1.6, 1.7].map((value) => ['A', value]),
    );
    // In milliseconds: the sums of the RFC's numbers are not exact in binary.
    expect(currents.map(({ seconds }) => Math.round((seconds ?? 0) * 1000))).toEqual([
      1276020071001, 1276020072001, 1276020073001, 1276020074001, 1276020075001, 1276020076001,
    ]);
  });

  it('lets a new base name take over from its record on (5.1.6)', () => {
    expect(records(printedExamples['5.1.6']).map(({ name }) => name)).toEqual([
      '2001:db8::2/temperature',
      '2001:db8::2/humidity',
      '2001:db8::1/temperature',
      '2001:db8::1/humidity',
    ]);
  });

  it('takes a record with base fields alone as no reading (5.1.7)', () => {
    expect(records(printedExamples['5.1.7'])).toHaveLength(3);
  });

  it('keeps text, truth and data apart from numbers (5.1.5)', () => {
    expect(records(printedExamples['5.1.5']).map(({ value }) => value)).toEqual([
      23.1,
      null,
      null,
      null,
    ]);
  });

  it('adds base value and value (4.5.4), without the crumbs of binary arithmetic', () => {
    expect(records([{ bv: 0.1, n: 'a', v: 0.2 }])[0]?.value).toBe(0.3);
  });

  it('ignores what it does not know, unless the label ends in _ (4.4)', () => {
    expect(outcome([{ n: 'a', v: 1, colour: 'red' }])).toEqual(['good']);
    expect(
      outcome([
        { n: 'a', v: 1, odd_: 1 },
        { n: 'b', v: 2 },
      ]),
    ).toEqual(['senml-must-understand', 'good']);
  });

  it('refuses all that a base field covers which must be understood and is not', () => {
    expect(
      outcome([
        { n: 'a', v: 1 },
        { bodd_: 1, n: 'b', v: 2 },
        { n: 'c', v: 3 },
      ]),
    ).toEqual(['good', 'senml-must-understand', 'senml-must-understand']);
  });

  it('does not use a pack of a newer version, and wants one version throughout (4.4)', () => {
    expect(outcome([{ bver: 5, n: 'a', v: 1 }])).toEqual(['good']);
    expect(outcome([{ bver: 11, n: 'a', v: 1 }])).toEqual(['all: senml-version']);
    expect(
      outcome([
        { n: 'a', v: 1 },
        { bver: 99, n: 'b', v: 1 },
      ]),
    ).toEqual(['all: senml-version']);
    expect(
      outcome([
        { bver: 10, n: 'a', v: 1 },
        { bver: 9, n: 'b', v: 1 },
      ]),
    ).toEqual(['all: senml-version']);
    for (const bver of [0, -1, 1.5, '10', true, []]) {
      expect(outcome([{ bver, n: 'a', v: 1 }])).toEqual(['all: senml-version']);
    }
  });

  it('knows the version that announces secondary units (RFC 9100, from memory)', () => {
    expect(outcome([{ bver: 26, n: 'a', u: '/100', v: 1 }])).toEqual(['good']);
  });

  it('wants exactly one value in a record (4.2)', () => {
    expect(outcome([{ n: 'a' }])).toEqual(['senml-no-value']);
    expect(outcome([{ n: 'a', v: null }])).toEqual(['senml-no-value']);
    expect(outcome([{ n: 'a', v: 1, vs: 'one' }])).toEqual(['payload-shape']);
    expect(records([{ n: 'a', s: 12 }])[0]?.value).toBeNull();
  });

  it('refuses the records that build on a broken base field, until it is given anew', () => {
    expect(
      outcome([
        { bt: 'noon', n: 'a', v: 1 },
        { n: 'b', v: 2 },
        { bt: 1320067464, n: 'c', v: 3 },
        { bn: 7 },
        { n: 'd', v: 4 },
      ]),
    ).toEqual([
      'time-not-understood',
      'time-not-understood',
      'good',
      'payload-shape',
      'payload-shape',
    ]);
  });

  it('keeps the good records beside the bad ones', () => {
    expect(
      outcome([
        7,
        { n: 1, v: 1 },
        { n: 'a', v: 1 },
        { n: 'a', u: 1, v: 1 },
        { n: 'a', t: 'x', v: 1 },
        { n: 'a', v: '21.5' },
        null,
        ['v'],
        { n: 'b', v: 2 },
      ]),
    ).toEqual([
      'payload-shape',
      'senml-name',
      'good',
      'unit-does-not-fit',
      'time-not-understood',
      'payload-not-a-number',
      'payload-shape',
      'payload-shape',
      'good',
    ]);
  });

  it('has a bound on the records of one pack', () => {
    const record = { n: 'a', v: 1 };
    expect(records(Array(mostRecords).fill(record))).toHaveLength(mostRecords);
    expect(outcome(Array(mostRecords + 1).fill(record))).toEqual(['all: payload-too-large']);
    expect(outcome([])).toEqual(['all: payload-shape']);
  });
});
