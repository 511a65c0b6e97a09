import { absoluteHumidity, relativeHumidity } from '../../daemon/science/air.ts';
import type { AirSample } from '../../daemon/science/airflow.ts';
import { normalFrom, seededRandom } from './seeded-random.ts';

/** A well-mixed room at 18 °C, watched through two cheap humidity sensors. Invented. */
export type SimulatedRoom = {
  readonly airChangesPerHour: number;
  readonly seed: number;
  readonly hours: number;
  /** weather that does not change at all */
  readonly flat?: boolean;
};

const MINUTE = 60_000;
const STEP_H = 1 / 60;

/** Keeps a wandering value of a given size that forgets itself over some hours. */
function wander(size: number, hours: number, normal: () => number): () => number {
  let value = 0;
  return () => {
    value += (-value * STEP_H) / hours + size * Math.sqrt((2 * STEP_H) / hours) * normal();
    return value;
  };
}

/** Readings every five minutes: each sensor is off by up to ±2 % RH for good, and by 0.3 % at random. */
export function simulatedRoom(room: SimulatedRoom): AirSample[] {
  const random = seededRandom(room.seed);
  const normal = normalFrom(random);
  const swing = room.flat ? 0 : 1;
  const [insideBias, outsideBias] = [4 * random() - 2, 4 * random() - 2];
  const weather = wander(0.9 * swing, 8, normal);
  const gusts = wander(0.3 * swing, 1.5, normal);
  const phase = 24 * random();
  const n = room.airChangesPerHour;
  const rise = 0.5 + 1.5 * random();
  let inside = 8 + rise + (room.flat ? 0 : random());
  const samples: AirSample[] = [];
  for (let minute = 0; minute <= 60 * room.hours; minute++) {
    const daily = Math.sin((2 * Math.PI * (minute / 60 + phase)) / 24) * swing;
    const outside = Math.max(3, 8 + 0.6 * daily + weather() + gusts());
    const level = outside + rise;
    inside = level + (inside - level) * Math.exp(-n * STEP_H);
    if (minute % 5 !== 0) continue;
    const read = (tempC: number, gM3: number, bias: number) => {
      const seen = relativeHumidity(tempC, gM3) + bias + 0.3 * normal();
      return absoluteHumidity(tempC, Math.min(100, Math.max(0, seen)));
    };
    samples.push({
      at: minute * MINUTE,
      insideGM3: read(18, inside, insideBias),
      outsideGM3: read(10 + 4 * daily, outside, outsideBias),
    });
  }
  return samples;
}
