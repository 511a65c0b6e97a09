import { describe, expect, it } from 'vitest';
import type { Acknowledge } from '../../daemon/ingest/group-commit.ts';
import { type Arrived, createIntake } from '../../daemon/ingest/intake.ts';
import type { IncomingReading, PendingReading, RefusedMessage } from '../../daemon/rules/facts.ts';
import { readingFlagBits } from '../../sensors/correct/reading-time.ts';

const arrival = Date.UTC(2026, 4, 4, 8, 0, 0);
const topic = 'boardcure/shed/sensor/rack-1/air-temperature';

interface Added {
  readings: readonly IncomingReading[];
  refused: readonly RefusedMessage[];
  pending: readonly PendingReading[];
  done: Acknowledge;
}

function intakeUnderTest(options: { clockTrusted?: boolean; maxPayloadBytes?: number } = {}) {
  const impossible: unknown[][] = [];
  const added: Added[] = [];
  const acknowledged: (Error | null)[] = [];
  const intake = createIntake({
    site: 'shed',
    maxPayloadBytes: options.maxPayloadBytes ?? 65_536,
    now: () => arrival,
    clockTrusted: () => options.clockTrusted ?? true,
    boot: { name: 'boot-1', upMs: () => 90_000.4 },
    beyondLimits: (...told) => impossible.push(told),
    queue: {
      add: (readings, refused, done, { pending = [] } = {}) =>
        added.push({ readings, refused, pending, done }),
    },
  });
  const take = (payload: string | Uint8Array, rest: Partial<Arrived> = {}) =>
    intake.take(
      {
        topic,
        payload: typeof payload === 'string' ? Buffer.from(payload) : payload,
        retained: false,
        backlog: false,
        ...rest,
      },
      (failure) => acknowledged.push(failure),
    );
  return { added, acknowledged, impossible, intake, take, counts: intake.counts };
}

describe('a figure that can be no reading', () => {
  it('is told of its sensor, as it was sent', () => {
    const { take, impossible } = intakeUnderTest();
    take('-127');
    expect(impossible).toEqual([['rack-1', 'air-temperature', -127, arrival]]);
  });

  it('tells nothing of now where it is not of now, nor where it is no figure', () => {
    const { take, impossible } = intakeUnderTest();
    take('-127', { retained: true });
    take('-127', { backlog: true });
    take('broken');
    const early = intakeUnderTest({ clockTrusted: false });
    early.take('-127');
    expect([...impossible, ...early.impossible]).toEqual([]);
  });
});

describe('a reading', () => {
  it('goes to the group that commits it, and is acknowledged by nobody else', () => {
    const { take, added, acknowledged } = intakeUnderTest();
    take('19.25');
    expect(added).toHaveLength(1);
    expect(added[0]?.readings).toEqual([
      { sensor: 'rack-1', quantity: 'air-temperature', at: arrival, raw: 19.25, flags: 0 },
    ]);
    expect(acknowledged).toEqual([]);
    added[0]?.done(null);
    expect(acknowledged).toEqual([null]);
  });

  it('without a time of its own gets a moment of its own, also within one millisecond', () => {
    const { take, added } = intakeUnderTest();
    for (const value of ['20', '21', '22']) take(value);
    const times = added.flatMap(({ readings }) => readings.map(({ at }) => at));
    expect(times).toEqual([arrival, arrival + 1, arrival + 2]);
  });

  it('keeps the time it brings', () => {
    const { take, added } = intakeUnderTest();
    take('{"value":3.5,"time":"2019-07-01T12:00:00.123+02:00"}');
    expect(added[0]?.readings[0]).toMatchObject({ at: Date.UTC(2019, 6, 1, 10, 0, 0, 123) });
  });

  it('is counted by what the store made of it, not by its arrival', () => {
    const { take, counts, intake } = intakeUnderTest();
    take('20');
    take('20');
    expect(counts).toMatchObject({ accepted: 0, duplicates: 0 });
    intake.count(1, 1);
    expect(counts).toMatchObject({ accepted: 1, duplicates: 1 });
  });

  it('of a SenML pack comes beside the records of it that had to be refused', () => {
    const { take, added, counts } = intakeUnderTest();
    take(
      '[{"bn":"sensor:rack-1:","n":"air-temperature","u":"Cel","v":20},{"n":"relative-humidity","u":"Cel","v":50}]',
      { topic: 'boardcure/shed/sensor/rack-1' },
    );
    expect(added).toHaveLength(1);
    expect(added[0]?.readings).toHaveLength(1);
    expect(added[0]?.refused.map(({ code }) => code)).toEqual(['unit-does-not-fit']);
    expect(counts.refused).toBe(1);
  });
});

describe('a time that cannot be right', () => {
  it.each([
    ['1970, from a node that never had the time', '1970-01-01T00:10:00Z'],
    ['2100', '2100-01-01T00:00:00Z'],
  ])('%s: the reading is kept at its arrival, flagged and counted', (_, time) => {
    const { take, added, counts } = intakeUnderTest();
    take(JSON.stringify({ value: 20, time }));
    expect(added[0]?.readings).toEqual([
      expect.objectContaining({ at: arrival, flags: readingFlagBits['time-replaced'] }),
    ]);
    expect(counts).toMatchObject({ flagged: 1, refused: 0, dropped: 0 });
  });

  it('a clock that was never set: what hangs on it is kept with how long the computer ran', () => {
    const { take, added, acknowledged } = intakeUnderTest({ clockTrusted: false });
    const ahead = arrival + 86_400_000;
    take('20');
    take('21');
    take(JSON.stringify({ value: 22, time: ahead }));
    take('23', { backlog: true });
    const kept = { boot: 'boot-1', sensor: 'rack-1', quantity: 'air-temperature', flags: 0 };
    expect(added.flatMap(({ pending }) => pending)).toEqual([
      { ...kept, raw: 20, ownAt: null, monotonicMs: 90_000 },
      { ...kept, raw: 21, ownAt: null, monotonicMs: 90_001 },
      { ...kept, raw: 22, ownAt: ahead, monotonicMs: 90_002 },
      {
        ...kept,
        raw: 23,
        ownAt: null,
        monotonicMs: 90_003,
        flags: readingFlagBits['time-unknown'],
      },
    ]);
    expect(added.flatMap(({ readings }) => readings)).toEqual([]);
    expect(acknowledged).toEqual([]);
  });

  it('a clock that was never set: an age that SenML gives counts back from how long it ran', () => {
    const { take, added } = intakeUnderTest({ clockTrusted: false });
    take('[{"n":"air-temperature","u":"Cel","v":20,"t":-60}]', {
      topic: 'boardcure/shed/sensor/rack-1',
    });
    expect(added[0]?.pending).toEqual([expect.objectContaining({ monotonicMs: 30_000 })]);
  });

  it('a clock that was never set: a time which even it has passed is taken as it is', () => {
    const { take, added } = intakeUnderTest({ clockTrusted: false });
    take(JSON.stringify({ value: 20, time: arrival - 60_000 }));
    expect(added[0]?.readings).toEqual([expect.objectContaining({ at: arrival - 60_000 })]);
  });
});

describe('a message that is not of now', () => {
  it('retained and without its own time is dropped, counted and acknowledged', () => {
    const { take, added, acknowledged, counts } = intakeUnderTest();
    take('20', { retained: true });
    expect(added).toEqual([]);
    expect(acknowledged).toEqual([null]);
    expect(counts).toMatchObject({ dropped: 1, refused: 0 });
  });

  it('retained with its own time is a reading like any other', () => {
    const { take, added } = intakeUnderTest();
    take('{"value":20,"time":"2026-05-04T07:00:00Z"}', { retained: true });
    expect(added[0]?.readings[0]).toMatchObject({ at: arrival - 3_600_000, flags: 0 });
  });

  it('from a backlog is flagged as of unknown time, unless it brings its own', () => {
    const { take, added, counts } = intakeUnderTest();
    take('20', { backlog: true });
    take('{"value":20,"time":"2026-05-04T07:00:00Z"}', { backlog: true });
    expect(added.map(({ readings }) => readings[0]?.flags)).toEqual([
      readingFlagBits['time-unknown'],
      0,
    ]);
    expect(counts.flagged).toBe(1);
  });
});

describe('a message that is no reading is kept with its reason', () => {
  it.each([
    ['warm', 'payload-not-a-number'],
    ['NaN', 'value-not-finite'],
    ['1e9', 'value-out-of-range'],
    ['21.5 grad', 'unit-does-not-fit'],
    ['', 'payload-empty'],
    ['{"value":', 'payload-not-json'],
    ['{"value":"20"}', 'payload-not-a-number'],
    ['{"value":20,"time":"yesterday"}', 'time-not-understood'],
  ])('%j is refused as %s', (payload, code) => {
    const { take, added, counts } = intakeUnderTest();
    take(payload);
    expect(added).toHaveLength(1);
    const [refusal] = added[0]?.refused ?? [];
    expect(refusal).toMatchObject({ code, topic, at: arrival, payloadStart: payload });
    expect(refusal?.detail).toMatch(/\w+ .*[.]$/);
    expect(added[0]?.readings).toEqual([]);
    expect(counts.refused).toBe(1);
  });

  it('is acknowledged once it is kept: a node that sends it again would never end', () => {
    const { take, added, acknowledged } = intakeUnderTest();
    take('warm');
    expect(acknowledged).toEqual([]);
    added[0]?.done(null);
    expect(acknowledged).toEqual([null]);
  });

  it('bytes that are not UTF-8 are kept as hexadecimal', () => {
    const { take, added } = intakeUnderTest();
    take(Uint8Array.of(0xff, 0xfe, 0x00, 0x31));
    expect(added[0]?.refused[0]).toMatchObject({
      code: 'payload-not-text',
      payloadStart: 'fffe0031',
      payloadBytes: 4,
    });
  });

  it('of a megabyte is refused without being read, and only its start is kept', () => {
    const { take, added } = intakeUnderTest();
    take(Buffer.alloc(1_048_576, '['));
    const [refusal] = added[0]?.refused ?? [];
    expect(refusal).toMatchObject({ code: 'payload-too-large', payloadBytes: 1_048_576 });
    expect(refusal?.payloadStart).toBe('['.repeat(400));
  });

  it('too large and cut within a letter still shows its start as text', () => {
    const { take, added } = intakeUnderTest({ maxPayloadBytes: 1000 });
    take('x'.repeat(399) + '°'.repeat(400));
    expect(added[0]?.refused[0]?.payloadStart).toMatch(/^x{399}/);
  });

  it('with an endless topic keeps only the start of the topic', () => {
    const { take, added } = intakeUnderTest();
    take('20', { topic: `boardcure/shed/sensor/${'x'.repeat(60_000)}/air-temperature` });
    expect(added[0]?.refused[0]).toMatchObject({ code: 'sensor-id-not-allowed' });
    expect(added[0]?.refused[0]?.topic.length).toBeLessThanOrEqual(400);
  });
});

describe('a message for somebody else', () => {
  it.each(['boardcure/other/sensor/a/battery', 'boardcure/shed/notice', 'house/lamp', ''])(
    'on %j is let pass and not counted',
    (other) => {
      const { take, added, acknowledged, counts } = intakeUnderTest();
      take('20', { topic: other });
      expect(added).toEqual([]);
      expect(acknowledged).toEqual([null]);
      expect(Object.values(counts)).toEqual([0, 0, 0, 0, 0]);
    },
  );
});
