import { quantityFacts } from '../../daemon/contract/quantity.ts';
import { relativeHumidity } from '../../daemon/science/air.ts';
import { measure } from './physics/instrument.ts';
import { seededRandom } from './physics/random.ts';
import { outdoorWeather } from './physics/weather.ts';
import type { ShedReading } from './shed-sensors.ts';

/** Many sensors that hang in the same weather, for as many readings as are wanted. */
export interface Crowd {
  /** The next reading; sensors and quantities take turns. */
  next(at: number): ShedReading;
}

const QUANTITIES = ['air-temperature', 'relative-humidity'] as const;
/** Sensors differ by about this much, K and %. Assumption. */
const BIAS = { 'air-temperature': 0.4, 'relative-humidity': 2 } as const;
const NOISE = { 'air-temperature': 0.05, 'relative-humidity': 0.4 } as const;
const STEP = { 'air-temperature': 0.1, 'relative-humidity': 0.5 } as const;

/**
 * A crowd of sensors named `crowd-1`, `crowd-2` and so on.
 *
 * @param count - 1 or more
 * @param seed - any integer; the same seed and the same moments give the same readings
 * @throws RangeError on no sensors
 */
export function crowd(count: number, seed: number): Crowd {
  if (!(Number.isInteger(count) && count >= 1)) {
    throw new RangeError(`count is ${count}; allowed: whole numbers from 1`);
  }
  const weather = outdoorWeather(seed);
  const random = seededRandom(seed, 70);
  const biases = Array.from({ length: count }, () => random.normal());
  let turn = 0;
  return {
    next(at) {
      const index = Math.floor(turn / QUANTITIES.length) % count;
      const quantity = QUANTITIES[turn % QUANTITIES.length] ?? 'air-temperature';
      turn += 1;
      const { tempC, absoluteHumidityGM3 } = weather(at);
      const truth =
        quantity === 'air-temperature'
          ? tempC
          : Math.min(100, relativeHumidity(tempC, absoluteHumidityGM3, { over: 'water' }));
      const { low, high } = quantityFacts[quantity];
      const instrument = {
        bias: BIAS[quantity] * (biases[index] ?? 0),
        ...{ noise: NOISE[quantity], step: STEP[quantity] },
        ...{ lowest: low, highest: Math.min(100, high) },
      };
      const value = measure(instrument, truth, random);
      return { sensor: `crowd-${index + 1}`, quantity, value, at, sentAt: at };
    },
  };
}
