import { normalFrom, seededRandom } from '../science/seeded-random.ts';
import type { RecordedSeries } from './recorded-series.ts';

/** How a cheap sensor shows what is so. Assumptions, after what such sensors promise. */
export interface CheapSensor {
  readonly seed: number;
  readonly everyMs: number;
  readonly offsetK: number;
  readonly offsetPercent: number;
  readonly noiseK: number;
  readonly noisePercent: number;
  readonly stepK: number;
  readonly stepPercent: number;
  /** Share of messages that are lost. */
  readonly lost: number;
}

export interface SensorReading {
  readonly at: number;
  readonly quantity: 'air-temperature' | 'relative-humidity';
  readonly value: number;
}

export const typicalSensor = (seed: number, everyMs: number): CheapSensor => {
  const random = seededRandom(seed);
  return {
    seed,
    everyMs,
    offsetK: 0.6 * (random() - 0.5),
    offsetPercent: 4 * (random() - 0.5),
    noiseK: 0.04,
    noisePercent: 0.2,
    stepK: 0.1,
    stepPercent: 0.1,
    lost: 0.01,
  };
};

/** A room as it was at any moment: straight lines between what was recorded; null across gaps. */
export function truthOf({ readings }: RecordedSeries, longestGapMs = 2 * 3_600_000) {
  let i = 0;
  return (at: number): { tempC: number; rhPercent: number | null } | null => {
    while (i > 0 && (readings[i]?.at ?? 0) > at) i--;
    while ((readings[i + 1]?.at ?? Number.POSITIVE_INFINITY) <= at) i++;
    const [a, b] = [readings[i], readings[i + 1]];
    if (!a || !b || a.at > at || b.at - a.at > longestGapMs) return null;
    const share = (at - a.at) / (b.at - a.at);
    const between = (from: number, to: number) => from + (to - from) * share;
    return {
      tempC: between(a.tempC, b.tempC),
      rhPercent:
        a.rhPercent === null || b.rhPercent === null ? null : between(a.rhPercent, b.rhPercent),
    };
  };
}

/** What a sensor sends over a time, ascending; the same seed gives the same. */
export function* sent(
  truth: ReturnType<typeof truthOf>,
  sensor: CheapSensor,
  fromAt: number,
  toAt: number,
): Generator<SensorReading> {
  const random = seededRandom(sensor.seed * 7919 + 13);
  const normal = normalFrom(random);
  const stepped = (value: number, step: number) =>
    Number((Math.round(value / step) * step).toFixed(6));
  for (let at = fromAt + Math.round(random() * sensor.everyMs); at < toAt; at += sensor.everyMs) {
    const air = truth(at);
    const [noiseK, noisePercent] = [normal() * sensor.noiseK, normal() * sensor.noisePercent];
    if (random() < sensor.lost || air === null) continue;
    const jitter = Math.round(random() * 2000);
    yield {
      at: at + jitter,
      quantity: 'air-temperature',
      value: stepped(air.tempC + sensor.offsetK + noiseK, sensor.stepK),
    };
    if (air.rhPercent === null) continue;
    const rh = Math.min(100, Math.max(0, air.rhPercent + sensor.offsetPercent + noisePercent));
    yield {
      at: at + jitter,
      quantity: 'relative-humidity',
      value: stepped(rh, sensor.stepPercent),
    };
  }
}
