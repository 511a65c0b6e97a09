import type { Quantity } from '../../daemon/contract/quantity.ts';
import { measure } from './physics/instrument.ts';
import { type Random, seededRandom } from './physics/random.ts';
import { isOn, type SensorFault, withFault } from './physics/sensor-faults.ts';
import type { ShedPlan, SimulatedSensor, Spot } from './shed-plan.ts';

/** One reading of a simulated sensor, as sent. */
export interface ShedReading {
  readonly sensor: string;
  readonly quantity: Quantity;
  readonly value: number;
  /** UTC epoch ms by the sensor's own clock, which may be wrong */
  readonly at: number;
  /** UTC epoch ms at which it was really sent */
  readonly sentAt: number;
}

const HOUR_MS = 3_600_000;

/**
 * The sensors of a shed: what they send at a moment, faults and all.
 *
 * @param plan - which sensors, and what is wrong with them when
 * @param seed - any integer
 * @param truthOf - the true value of a quantity at a spot just now
 */
export function shedSensors(
  plan: Pick<ShedPlan, 'sensors' | 'faults'>,
  seed: number,
  truthOf: (quantity: Quantity, spot: Spot) => number,
) {
  const noises = plan.sensors.map((_, index) => seededRandom(seed, 100 + index));
  const spots = new Map(plan.sensors.map(({ id, spot }) => [id, spot]));
  /** what each fault found when it began, by quantity */
  const found = new Map<SensorFault, Map<Quantity, number>>();

  function spotOf(sensor: SimulatedSensor, faults: readonly SensorFault[]): Spot {
    const other = faults.find(({ name }) => name === 'swapped')?.other;
    return (other === undefined ? undefined : spots.get(other)) ?? sensor.spot;
  }

  function faulty(
    faults: readonly SensorFault[],
    reading: ShedReading,
    random: Random,
  ): ShedReading | null {
    let { value, at } = reading;
    for (const fault of faults) {
      const values = found.get(fault) ?? new Map<Quantity, number>();
      found.set(fault, values);
      const first = values.get(reading.quantity) ?? value;
      values.set(reading.quantity, first);
      const shown = withFault(fault, reading.quantity, { value, at }, first, random);
      if (shown === null) return null;
      ({ value, at } = shown);
    }
    return { ...reading, value, at };
  }

  return {
    /** @param now - UTC epoch ms */
    read(now: number): ShedReading[] {
      return plan.sensors.flatMap((sensor, index) => {
        const random = noises[index] as Random;
        const faults = plan.faults.filter((one) => one.sensor === sensor.id && isOn(one, now));
        return sensor.measures.flatMap(({ quantity, instrument }) => {
          // a node tells of its battery now and then only
          if (quantity === 'battery' && now % HOUR_MS !== 0) return [];
          const value = measure(instrument, truthOf(quantity, spotOf(sensor, faults)), random);
          const reading = { sensor: sensor.id, quantity, value, at: now, sentAt: now };
          if (instrument.lost !== undefined && random.uniform() < instrument.lost) return [];
          const sent = faults.length === 0 ? reading : faulty(faults, reading, random);
          return sent === null ? [] : [sent];
        });
      });
    },
  };
}
