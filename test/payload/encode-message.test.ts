import { describe, expect, it } from 'vitest';
import { senmlPayload, sensorTopic, valuePayload } from '../../sensors/payload/encode-message.ts';

describe('what our own senders publish', () => {
  it('is addressed in the default layout', () => {
    expect(sensorTopic('shed', 'node-1')).toBe('boardcure/shed/sensor/node-1');
    expect(sensorTopic('shed', 'node-1', 'battery')).toBe('boardcure/shed/sensor/node-1/battery');
  });

  it('is a bare number, or JSON with an ISO 8601 time', () => {
    expect(valuePayload(21.5)).toBe('21.5');
    expect(valuePayload(21.5, Date.UTC(2026, 4, 4, 7, 30))).toBe(
      '{"value":21.5,"time":"2026-05-04T07:30:00.000Z"}',
    );
  });

  it('is a SenML pack with registered units and times in seconds (RFC 8428)', () => {
    const at = 1777879800250;
    expect(
      JSON.parse(
        senmlPayload('node-1', [
          { quantity: 'air-temperature', value: 21.5, at },
          { quantity: 'relative-humidity', value: 55, at: null },
        ]),
      ),
    ).toEqual([
      { bn: 'sensor:node-1:', n: 'air-temperature', u: 'Cel', v: 21.5, t: 1777879800.25 },
      { n: 'relative-humidity', u: '%RH', v: 55 },
    ]);
  });

  it('never names a time that SenML would read as relative', () => {
    const before1978 = [{ quantity: 'battery', value: 1, at: 1000 }] as const;
    expect(() => senmlPayload('node-1', before1978)).toThrow(RangeError);
  });
});
