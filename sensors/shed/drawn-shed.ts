import { type Random, seededRandom } from './physics/random.ts';
import { type FaultName, faultNames, type SensorFault } from './physics/sensor-faults.ts';
import type { ShedPlan, SimulatedSensor, Spot } from './shed-plan.ts';

const DAY_MS = 86_400_000;
const HEIGHT_M = 2.6;
/** Heat through walls, roof and floor of a shed, W/(m²·K), lined or not. Assumption. */
const WALL_W_PER_M2K = [0.8, 2.2] as const;
const READING_PERIOD_MS = 600_000;

/** What is drawn for one invented shed. */
export interface DrawnShed {
  readonly plan: ShedPlan;
  /** UTC epoch ms */
  readonly startAt: number;
  readonly heated: boolean;
}

/**
 * One of many invented sheds: building, season, racks, sensors and what goes wrong with them. All
 * ranges are assumptions.
 *
 * @param seed - any integer
 * @param options - `days`: how long it will be looked at; `faults`: how many sensors fail meanwhile
 */
export function drawnShed(
  seed: number,
  options: { readonly days: number; readonly faults: number },
): DrawnShed {
  const random = seededRandom(seed, 10);
  const heated = random.uniform() < 0.6;
  const startAt = startOf(random, heated);
  const lengthM = random.between(4, 9);
  const widthM = random.between(3, 5);
  const volumeM3 = lengthM * widthM * HEIGHT_M;
  const skinM2 = 2 * (lengthM * widthM + HEIGHT_M * (lengthM + widthM));
  const lossWPerK = skinM2 * random.between(...WALL_W_PER_M2K);
  const warmC = random.between(15, 21);
  const racks = ['door', 'middle', 'back'].map((name, index) => ({
    name,
    light: random.between(0.05, 0.4),
    airM3: random.between(2, 4),
    // from beside the door to the corner where the air may stand still
    perHour: [random.between(25, 45), random.between(10, 35), random.between(3, 20)][index] ?? 10,
  }));
  const hasFan = random.uniform() < 0.3;
  const sensors = drawnSensors(
    random,
    racks.map(({ name }) => name),
  );
  return {
    startAt,
    heated,
    plan: {
      build: {
        volumeM3,
        airJPerK: 5000 * volumeM3,
        fabricJPerK: 25_000 * skinM2,
        airToFabricWPerK: 3 * skinM2,
        fabricToOutdoorsWPerK: lossWPerK,
        airChangesPerHour: Math.exp(random.between(Math.log(0.15), Math.log(1.5))),
        heater: {
          powerW: heated ? lossWPerK * 25 : 0,
          onBelowC: warmC - 0.6,
          offAboveC: warmC + 0.6,
        },
        racks: racks.map(({ airM3, perHour }) => ({
          airM3,
          toRoomWPerK: 40 + perHour,
          toOutdoorsWPerK: random.between(0.5, 4),
          toRoomM3PerHour: perHour * airM3,
        })),
      },
      racks: racks.map(({ name, light }) => ({ name, light })),
      airing: {
        doorPerHour: random.between(3, 8),
        doorMinutesAnHour: random.between(1, 6),
        airingShare: random.between(0, 0.6),
        windPerHour: random.between(0.1, 1),
      },
      fan: hasFan ? { fromHour: 8, toHour: 20, stirring: random.between(1.3, 2) } : null,
      sensors,
      readingPeriodMs: READING_PERIOD_MS,
      faults: drawnFaults(random, sensors, { ...options, startAt }),
      settledC: heated ? warmC : 12,
    },
  };
}

/** Any day for a heated shed; the coating season for one that is not. */
function startOf(random: Random, heated: boolean): number {
  const first = Date.UTC(2026, heated ? 1 : 4, 1);
  const days = heated ? 270 : 110;
  return first + Math.floor(random.between(0, days)) * DAY_MS;
}

function drawnSensors(random: Random, racks: readonly string[]): SimulatedSensor[] {
  const node = (id: string, spot: Spot): SimulatedSensor => {
    const lost = random.between(0, 0.04);
    return {
      id,
      spot,
      measures: [
        {
          quantity: 'air-temperature',
          instrument: { bias: 0.25 * random.normal(), noise: 0.05, step: 0.1, lost },
        },
        {
          quantity: 'relative-humidity',
          instrument: {
            ...{ bias: 1.5 * random.normal(), noise: 0.4, step: 0.5, lost },
            ...{ lowest: 0, highest: 100 },
          },
        },
        { quantity: 'battery', instrument: { bias: 0, noise: 0.3, step: 1, highest: 100 } },
      ],
    };
  };
  return [
    node('yard', { kind: 'outdoors' }),
    node('room', { kind: 'room' }),
    ...racks.flatMap((rack) => {
      const middle = node(`${rack}-middle`, { kind: 'rack', rack, shelf: 1 });
      const lowest = node(`${rack}-lowest`, { kind: 'rack', rack, shelf: 2 });
      // most hang one where it is coldest, as they are told to; some have two, some one in the middle
      const draw = random.uniform();
      return draw < 0.5 ? [lowest] : draw < 0.75 ? [middle, lowest] : [middle];
    }),
  ];
}

/**
 * What goes wrong with sensors, and when.
 *
 * @param random - draws them
 * @param sensors - those that may fail
 * @param run - from when, UTC epoch ms, for how many days, and how many faults
 */
export function drawnFaults(
  random: Random,
  sensors: readonly SimulatedSensor[],
  run: { readonly startAt: number; readonly days: number; readonly faults: number },
): SensorFault[] {
  return Array.from({ length: run.faults }, (): SensorFault => {
    const sensor = drawnFrom(sensors, random);
    const name: FaultName = drawnFrom(faultNames, random);
    const fromAt = run.startAt + random.between(1, Math.max(2, run.days - 4)) * DAY_MS;
    const toAt = fromAt + random.between(0.5, 4) * DAY_MS;
    const others = sensors.filter(({ id }) => id !== sensor.id);
    return {
      ...{ name, sensor: sensor.id, fromAt, toAt },
      ...(name === 'swapped' ? { other: drawnFrom(others, random).id } : {}),
    };
  });
}

function drawnFrom<T>(list: readonly T[], random: Random): T {
  const drawn = list[Math.floor(random.uniform() * list.length)];
  if (drawn === undefined) throw new RangeError('list is empty; allowed: one entry or more');
  return drawn;
}
