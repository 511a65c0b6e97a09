import { describe, expect, it } from 'vitest';
import { decodeMessage } from '../../sensors/payload/decode-message.ts';

/* That a closed broker keeps a node to its own topics is in test/access/mqtt-access.test.ts. */

const decode = (topic: string, payload: unknown) => {
  const text = typeof payload === 'string' ? payload : JSON.stringify(payload);
  const message = { topic, text, byteLength: Buffer.byteLength(text) };
  const decoded = decodeMessage(message, { site: 'shed' }, { now: Date.UTC(2026, 4, 20) });
  return decoded.kind === 'readings' ? decoded.readings.map(({ sensor }) => sensor) : decoded.kind;
};

describe('readings forged for another sensor', () => {
  it('by a name in the payload: the topic, which the broker has checked, says whose they are', () => {
    const topic = 'boardcure/shed/sensor/own';
    expect(decode(topic, [{ bn: 'other/', n: 'air-temperature', v: 20 }])).toEqual(['own']);
    expect(decode(topic, [{ n: 'other:air-temperature', v: 20 }])).toEqual(['own']);
    const value = { value: 20, sensor: 'other', id: 'other' };
    expect(decode(`${topic}/air-temperature`, value)).toEqual(['own']);
  });

  it.each([
    'boardcure/other/sensor/own/air-temperature',
    'boardcure/shed/sensor/../sensor/own/air-temperature',
    'boardcure/shed/sensor//air-temperature',
    'boardcure/shed/sensor/o+n/air-temperature',
    '/boardcure/shed/sensor/own/air-temperature',
  ])('by the topic %s', (topic) => expect(decode(topic, '20')).not.toEqual(['own']));
});
