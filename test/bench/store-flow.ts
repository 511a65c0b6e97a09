import type { IncomingReading } from '../../daemon/rules/facts.ts';
import { normalFrom, seededRandom } from '../science/seeded-random.ts';

export const hourMs = 3_600_000;
export const flowStartAt = Date.UTC(2025, 5, 1);

const minuteMs = 60_000;
/** Spread of a sensor’s own times about its minute, ms: wired, radio, busy radio, asleep. Assumed. */
const jitters = [30, 200, 800, 2500] as const;

/** Sensors that each give three quantities once a minute, as cheap ones do: with jitter and noise. */
export interface Flow {
  /** All readings of an hour, ascending by `at`. */
  hour(hour: number): IncomingReading[];
}

/**
 * Air temperature to 0.01 °C with noise of 0.03 °C, humidity to 0.1 % with 0.3 %, wood moisture to
 * 0.1 % with 0.05 %, over the course of days and of a year.
 *
 * @param firstSensor - number of the first of the sensors
 */
export function flowOf(sensors: number, firstSensor = 0): Flow {
  const random = seededRandom(firstSensor + 1);
  const normal = normalFrom(random);
  const nodes = Array.from({ length: sensors }, (_, i) => ({
    id: `n${firstSensor + i}`,
    offsetMs: Math.floor(random() * minuteMs),
    jitterMs: jitters[i % jitters.length] ?? 0,
    tempC: 12 + 8 * random(),
    lastAt: 0,
  }));
  const to = (decimals: number, value: number) =>
    Math.round(value * 10 ** decimals) / 10 ** decimals;
  return {
    hour(hour) {
      const readings: IncomingReading[] = [];
      for (let minute = hour * 60; minute < (hour + 1) * 60; minute++) {
        const day = (2 * Math.PI * minute) / 1440;
        for (const node of nodes) {
          const due = flowStartAt + minute * minuteMs + node.offsetMs;
          // A sensor gives no time twice, and none before the last.
          const at = Math.max(node.lastAt + 1, Math.round(due + node.jitterMs * normal()));
          node.lastAt = at;
          const tempC = node.tempC + 6 * Math.sin(day / 365) + 4 * Math.sin(day) + 0.03 * normal();
          const rhPercent = 65 - 12 * Math.sin(day) + 0.3 * normal();
          const moisture = 15 + 2 * Math.sin(day / 30) + 0.05 * normal();
          const own = { sensor: node.id, at, flags: 0 };
          readings.push(
            { ...own, quantity: 'air-temperature', raw: to(2, tempC) },
            { ...own, quantity: 'relative-humidity', raw: to(1, rhPercent) },
            { ...own, quantity: 'wood-moisture', raw: to(1, moisture) },
          );
        }
      }
      return readings.sort((a, b) => a.at - b.at);
    },
  };
}
