import fc from 'fast-check';
import { expect } from 'vitest';
import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import { Sentence } from '../../daemon/contract/sentence.ts';
import { decodeMessage } from '../../sensors/payload/decode-message.ts';
import { senmlPayload, sensorTopic, valuePayload } from '../../sensors/payload/encode-message.ts';
import { refusalCodes } from '../../sensors/payload/refusal.ts';
import {
  anyMessage,
  goodMoment,
  goodSensor,
  goodValue,
  now,
  packWithStray,
  site,
} from './payload-arbitraries.ts';

export type PayloadProperty = { readonly claim: string; readonly check: (runs: number) => void };

/** What must hold for every message; the short and the long run check the same. */
export const payloadProperties: readonly PayloadProperty[] = [
  {
    claim: 'no message whatever stops the decoder, and what it lets through is measurable',
    check: (runs) =>
      fc.assert(
        fc.property(anyMessage, (message) => {
          const decoded = decodeMessage(message, { site }, { now });
          if (decoded.kind === 'not-ours') return;
          const readings = decoded.kind === 'readings' ? decoded.readings : [];
          const refusals = decoded.kind === 'readings' ? decoded.refused : [decoded.refusal];
          for (const { sensor, quantity, value, ownAt } of readings) {
            const { low, high } = quantityFacts[quantity];
            expect(sensor).toBe(message.topic.split('/')[3]);
            expect(value >= low && value <= high && !Object.is(value, -0)).toBe(true);
            expect(ownAt === null || Number.isSafeInteger(ownAt)).toBe(true);
          }
          for (const { code, detail, said } of refusals) {
            expect(refusalCodes).toContain(code);
            // As replies carry it, and said whole: not by its code alone.
            expect(Sentence.parse(said).text).toBe(detail);
            expect(detail.length > 20 && detail.length < 700).toBe(true);
            // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
            expect(detail).not.toMatch(/[\u0000-\u001f]/);
          }
          expect(readings.length + refusals.length).toBeGreaterThan(0);
        }),
        { numRuns: runs },
      ),
  },
  {
    claim: 'nothing a message does changes what plain objects have',
    check: (runs) => {
      const before = Reflect.ownKeys(Object.prototype).length;
      fc.assert(
        fc.property(anyMessage, (message) => {
          decodeMessage(message, { site }, { now });
          return Reflect.ownKeys(Object.prototype).length === before;
        }),
        { numRuns: runs },
      );
    },
  },
  {
    claim: 'one bad record costs a pack no good one',
    check: (runs) =>
      fc.assert(
        fc.property(packWithStray, ({ good, stray, place }) => {
          const at = place % (good.length + 1);
          const alone = outcome(good);
          const mixed = outcome(good.toSpliced(at, 0, stray as never));
          expect(alone).toMatchObject({ refused: [] });
          expect(alone.readings).toHaveLength(good.length);
          // The stray may be a reading itself, a refusal, or nothing but white space between fields.
          const own = mixed.readings.length - good.length;
          expect(own + mixed.refused.length).toBeLessThanOrEqual(1);
          expect(mixed.readings.toSpliced(at, own)).toEqual(alone.readings);
        }),
        { numRuns: runs },
      ),
  },
  {
    claim: 'a value sent as plain text comes back as the same number',
    check: (runs) =>
      fc.assert(
        fc.property(goodSensor, goodValue, (sensor, { quantity, value }) => {
          expect(decode(sensorTopic(site, sensor, quantity), valuePayload(value))).toEqual([
            { sensor, quantity, value, ownAt: null },
          ]);
        }),
        { numRuns: runs },
      ),
  },
  {
    claim: 'a value sent as JSON with its time comes back as the same number and millisecond',
    check: (runs) =>
      fc.assert(
        fc.property(goodSensor, goodValue, goodMoment, (sensor, { quantity, value }, at) => {
          expect(decode(sensorTopic(site, sensor, quantity), valuePayload(value, at))).toEqual([
            { sensor, quantity, value, ownAt: at },
          ]);
        }),
        { numRuns: runs },
      ),
  },
  {
    claim: 'a SenML pack comes back record for record, value and millisecond',
    check: (runs) =>
      fc.assert(
        fc.property(
          goodSensor,
          fc.array(fc.tuple(goodValue, fc.option(goodMoment)), { minLength: 1, maxLength: 20 }),
          (sensor, sent) => {
            const readings = sent.map(([{ quantity, value }, at]) => ({ quantity, value, at }));
            const ids = /^[A-Za-z0-9]/.test(sensor) ? sensor : `s${sensor}`.slice(0, 64);
            expect(decode(sensorTopic(site, ids), senmlPayload(ids, readings))).toEqual(
              readings.map(({ quantity, value, at }) => ({
                sensor: ids,
                quantity,
                value,
                ownAt: at,
              })),
            );
          },
        ),
        { numRuns: runs },
      ),
  },
];

type Back = { sensor: string; quantity: Quantity; value: number; ownAt: number | null };

function decode(topic: string, text: string): readonly Back[] {
  const decoded = decodeMessage({ topic, text, byteLength: text.length }, { site }, { now });
  expect(decoded).toMatchObject({ kind: 'readings', refused: [] });
  return decoded.kind === 'readings' ? decoded.readings : [];
}

function outcome(pack: readonly unknown[]) {
  const topic = sensorTopic(site, 'node-1');
  const text = JSON.stringify(pack);
  const decoded = decodeMessage({ topic, text, byteLength: text.length }, { site }, { now });
  if (decoded.kind !== 'readings') throw new Error(JSON.stringify(decoded));
  return decoded;
}
