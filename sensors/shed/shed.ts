import type { Gate } from '../../daemon/contract/gate.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { absoluteHumidity, relativeHumidity } from '../../daemon/science/air.ts';
import { equilibriumMoistureContent } from '../../daemon/science/wood.ts';
import {
  CART_SHED,
  FLOOR_COLDER_K,
  type RackName,
  rackNames,
  SIMULATED_SENSORS,
  type Spot,
} from './cart-shed.ts';
import { measure } from './physics/instrument.ts';
import {
  type CoatState,
  cureCoat,
  FRESH_COAT,
  type PaintTruth,
  passesTouch,
  SHED_PAINT,
} from './physics/paint-truth.ts';
import { type Random, seededRandom } from './physics/random.ts';
import { type Load, type RackState, type RoomState, stepRoom } from './physics/room.ts';
import { outdoorWeather } from './physics/weather.ts';

/** One reading of a simulated sensor, as sent. */
export interface ShedReading {
  readonly sensor: string;
  readonly quantity: Quantity;
  readonly value: number;
  /** UTC epoch ms */
  readonly at: number;
}

/** A simulated shed that is carried on by whoever holds it; it has no clock of its own. */
export interface Shed {
  /** UTC epoch ms up to which it has been carried on. */
  at(): number;
  /** Carries it on, and returns what its sensors sent on the way, ascending by `at`. */
  advanceTo(at: number): ShedReading[];
  /** Puts boards on a rack (null takes them off, and their coat with them). */
  lay(rack: RackName, load: Load | null): void;
  /**
   * Lays a fresh coat on the boards of a rack.
   * @param slowness - how much slower than the shed's usual paint this coat cures, about 0.7 to 1.5
   */
  coat(rack: RackName, slowness: number): void;
  /** Whether the hand test of a gate passes now; false where there is no coat. */
  touch(rack: RackName, gate: Gate): boolean;
}

const STEP_MS = 60_000;
export const READING_PERIOD_MS = 300_000;
const MS_PER_HOUR = 3_600_000;
/** Batches of paint differ by about this much either way: assumption, no source. */
const TIN_SPREAD = 0.08;

interface Coated {
  readonly paint: PaintTruth;
  readonly state: CoatState;
}

function slower(paint: PaintTruth, slowness: number): PaintTruth {
  return {
    ...paint,
    lagHours: paint.lagHours * slowness,
    ratePerHour: paint.ratePerHour / slowness,
  };
}

/**
 * Makes the cart shed, settled to its weather.
 *
 * @param options - `seed`: any integer, the same seed and the same calls give the same readings;
 *   `startAt`: UTC epoch ms, moved up to a whole reading period
 * @returns the shed with bare racks
 */
export function createShed(options: { seed: number; startAt: number }): Shed {
  const { seed } = options;
  const weather = outdoorWeather(seed);
  const tins = seededRandom(seed, 2);
  const noises = SIMULATED_SENSORS.map((_, index) => seededRandom(seed, 100 + index));
  const coats: Record<RackName, Coated | null> = { door: null, back: null };
  let now = Math.ceil(options.startAt / READING_PERIOD_MS) * READING_PERIOD_MS;
  let room = settled(weather(now).absoluteHumidityGM3);

  const rackState = (rack: RackName): RackState => {
    const state = room.racks[rackNames.indexOf(rack)];
    if (state === undefined)
      throw new RangeError(`rack is ${rack}; allowed: ${rackNames.join(', ')}`);
    return state;
  };

  const airAt = (spot: Spot): { tempC: number; absoluteHumidityGM3: number } => {
    if (spot === 'outdoors') return weather(now);
    if (spot === 'room') return room;
    if (spot !== 'floor') return rackState(spot);
    const back = rackState('back');
    return { ...back, tempC: back.tempC - FLOOR_COLDER_K };
  };

  const truthOf = (quantity: Quantity, spot: Spot): number => {
    const air = airAt(spot);
    if (quantity === 'air-temperature') return air.tempC;
    if (quantity === 'relative-humidity') return rhPercentOf(air);
    const load = spot === 'door' || spot === 'back' ? rackState(spot).load : null;
    // on a bare rack the pins sit in an offcut that has long been at rest with the air
    return load?.moisturePercent ?? equilibriumMoistureContent(air.tempC, rhPercentOf(air));
  };

  const read = (): ShedReading[] =>
    SIMULATED_SENSORS.flatMap(({ id, spot, measures }, index) =>
      measures.map(({ quantity, instrument }) => {
        const value = measure(instrument, truthOf(quantity, spot), noises[index] as Random);
        return { sensor: id, quantity, value, at: now };
      }),
    );

  const step = () => {
    room = stepRoom(CART_SHED, room, weather(now), STEP_MS / 1000).state;
    now += STEP_MS;
    for (const rack of rackNames) {
      const coated = coats[rack];
      if (coated === null) continue;
      const { tempC } = rackState(rack);
      const air = { tempC, rhPercent: rhPercentOf(rackState(rack)) };
      coats[rack] = {
        ...coated,
        state: cureCoat(coated.state, coated.paint, air, STEP_MS / MS_PER_HOUR),
      };
    }
  };

  return {
    at: () => now,
    advanceTo(at) {
      const readings: ShedReading[] = [];
      while (now + STEP_MS <= at) {
        step();
        if (now % READING_PERIOD_MS === 0) readings.push(...read());
      }
      return readings;
    },
    lay(rack, load) {
      room = {
        ...room,
        racks: room.racks.map((state, index) =>
          rackNames[index] === rack ? { ...state, load } : state,
        ),
      };
      if (load === null) coats[rack] = null;
    },
    coat(rack, slowness) {
      const spread = 1 + TIN_SPREAD * (2 * tins.uniform() - 1);
      coats[rack] = { paint: slower(SHED_PAINT, slowness * spread), state: FRESH_COAT };
    },
    touch(rack, gate) {
      const coated = coats[rack];
      return coated !== null && passesTouch(coated.state, coated.paint, gate);
    },
  };
}

/** A capacitive sensor reports over water also below 0 °C, and never above 100 %. */
function rhPercentOf(air: { tempC: number; absoluteHumidityGM3: number }): number {
  return Math.min(100, relativeHumidity(air.tempC, air.absoluteHumidityGM3, { over: 'water' }));
}

function settled(outdoorGM3: number): RoomState {
  const tempC = 19.5;
  const absoluteHumidityGM3 = Math.min(outdoorGM3 + 0.5, absoluteHumidity(tempC, 95));
  const racks = rackNames.map(() => ({ tempC, absoluteHumidityGM3, load: null }));
  return { tempC, fabricTempC: 17, absoluteHumidityGM3, heaterOn: false, racks };
}
