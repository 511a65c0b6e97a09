import { type Gate, gates } from '../../daemon/contract/gate.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { absoluteHumidity, relativeHumidity } from '../../daemon/science/air.ts';
import { equilibriumMoistureContent } from '../../daemon/science/wood.ts';
import { CART_SHED } from './cart-shed.ts';
import type { Load } from './physics/board-moisture.ts';
import {
  type CoatedBoards,
  cureBoards,
  type Felt,
  feel,
  freshCoat,
  isTrulyReady,
  SHELF_K,
} from './physics/coated-boards.ts';
import { daylight } from './physics/daylight.ts';
import { openings } from './physics/openings.ts';
import type { PaintTruth } from './physics/paint-truth.ts';
import { seededRandom } from './physics/random.ts';
import {
  airChanges,
  type RackState,
  type RoomState,
  type RoomUse,
  stepRoom,
} from './physics/room.ts';
import { releaseSolvent, solventAfter, type WetCoat } from './physics/solvent.ts';
import { outdoorWeather } from './physics/weather.ts';
import type { ShedPlan, Spot } from './shed-plan.ts';
import { type ShedReading, shedSensors } from './shed-sensors.ts';

/** What a rack's air truly is, hidden from whoever only reads sensors. */
export interface RackTruth {
  readonly tempC: number;
  readonly rhPercent: number;
  /** how often the air between its boards is renewed from the room, per hour */
  readonly renewalsPerHour: number;
}

/** A simulated shed that is carried on by whoever holds it; it has no clock of its own. */
export interface Shed {
  readonly plan: ShedPlan;
  /** UTC epoch ms up to which it has been carried on. */
  at(): number;
  /** Carries it on, and returns what its sensors sent on the way, ascending by `sentAt`. */
  advanceTo(at: number): ShedReading[];
  /** Puts boards on a rack (null takes them off, and their coats with them). */
  lay(rack: string, load: Load | null): void;
  /** Carries what lies on a rack to another one that is bare. */
  move(from: string, to: string): void;
  /**
   * Lays a fresh coat on the boards of a rack.
   * @param solventG - turpentine in it
   * @returns a number for this coat
   */
  coat(rack: string, paint: PaintTruth, solventG: number): number;
  /** Whether the hand test of a job passes on the newest coat now; false where there is none. */
  touch(rack: string, gate: Gate, on?: Felt): boolean;
  /** Whether all but the slowest tenth of the boards of a coat are there; null once the coat is gone. */
  truth(coat: number): Readonly<Record<Gate, boolean>> | null;
  rackTruth(rack: string): RackTruth;
  /** Fresh air of the room just now, changes per hour. */
  airChangesPerHour(): number;
  /** Turpentine in the air of the room, well mixed, mg/m³. */
  solventMgM3(): number;
}

const STEP_MS = 60_000;
/** Boards and their air are looked at this often; nothing in them is quicker. */
const CURE_STEP_MS = 300_000;
export const READING_PERIOD_MS = CART_SHED.readingPeriodMs;
const MS_PER_HOUR = 3_600_000;
const DAY_MS = 24 * MS_PER_HOUR;
const BATTERY_FULL_PERCENT = 97;
const BATTERY_PERCENT_A_DAY = 0.1;

interface Coat {
  readonly id: number;
  readonly paint: PaintTruth;
  boards: CoatedBoards;
  wet: WetCoat;
}

/**
 * Makes a shed, settled to its weather, with bare racks.
 *
 * @param options - `seed`: any integer, the same seed and the same calls give the same readings;
 *   `startAt`: UTC epoch ms, moved up to a whole reading period; `plan`: the cart shed if left out
 */
export function createShed(options: { seed: number; startAt: number; plan?: ShedPlan }): Shed {
  const { seed, plan = CART_SHED } = options;
  const { readingPeriodMs } = plan;
  const weather = outdoorWeather(seed);
  const opened = openings(seed, plan.airing);
  const hands = seededRandom(seed, 3);
  const startAt = Math.ceil(options.startAt / readingPeriodMs) * readingPeriodMs;
  let now = startAt;
  let room = settled(plan, weather(now).absoluteHumidityGM3);
  let solventGM3 = 0;
  let coatsLaid = 0;
  /** coats by rack, the newest last; older ones are carried on for whoever judges */
  const lots = new Map<string, Coat[]>(plan.racks.map(({ name }) => [name, []]));

  const indexOf = (rack: string): number => {
    const index = plan.racks.findIndex(({ name }) => name === rack);
    if (index >= 0) return index;
    const allowed = plan.racks.map(({ name }) => name).join(', ');
    throw new RangeError(`rack is ${rack}; allowed: ${allowed}`);
  };
  const rackState = (rack: string) => room.racks[indexOf(rack)] as RackState;
  const coatsOn = (rack: string) => lots.get(rack) ?? [];

  const use = (): RoomUse => {
    const { fan } = plan;
    const hour = (now % DAY_MS) / MS_PER_HOUR;
    const runs = fan !== null && hour >= fan.fromHour && hour < fan.toHour;
    return { moreAirChangesPerHour: opened(now), stirring: runs ? fan.stirring : 1 };
  };

  const airAt = (spot: Spot): { tempC: number; absoluteHumidityGM3: number } => {
    if (spot.kind === 'outdoors') return weather(now);
    if (spot.kind === 'room') return room;
    const rack = rackState(spot.rack);
    return { ...rack, tempC: rack.tempC + (SHELF_K[spot.shelf] ?? 0) };
  };

  const truthOf = (quantity: Quantity, spot: Spot): number => {
    const air = airAt(spot);
    if (quantity === 'air-temperature') return air.tempC;
    if (quantity === 'relative-humidity') return rhPercentOf(air);
    if (quantity === 'battery') {
      return BATTERY_FULL_PERCENT - (BATTERY_PERCENT_A_DAY * (now - startAt)) / DAY_MS;
    }
    const load = spot.kind === 'rack' ? rackState(spot.rack).load : null;
    // on a bare rack the pins sit in an offcut that has long been at rest with the air
    return load?.moisturePercent ?? equilibriumMoistureContent(air.tempC, rhPercentOf(air));
  };
  const sensors = shedSensors(plan, seed, truthOf);

  const renewals = (index: number, stirring: number) => {
    const built = plan.build.racks[index];
    return built === undefined ? 0 : (built.toRoomM3PerHour * stirring) / built.airM3;
  };

  const cureAll = (using: RoomUse) => {
    const light = daylight(now);
    plan.racks.forEach((rack, index) => {
      const coats = coatsOn(rack.name);
      if (coats.length === 0) return;
      const state = rackState(rack.name);
      const air = {
        tempC: state.tempC,
        rhPercent: rhPercentOf(state),
        light: rack.light * light,
        renewalsPerHour: renewals(index, using.stirring),
      };
      for (const coat of coats) {
        coat.boards = cureBoards(coat.boards, air, CURE_STEP_MS / MS_PER_HOUR);
      }
    });
  };

  const step = () => {
    const using = use();
    room = stepRoom(plan.build, room, weather(now), STEP_MS / 1000, using).state;
    let gaveG = 0;
    for (const coat of [...lots.values()].flat()) {
      const released = releaseSolvent(coat.wet, STEP_MS / 1000);
      coat.wet = released.coat;
      gaveG += released.gaveG;
    }
    const aired = {
      volumeM3: plan.build.volumeM3,
      airChangesPerHour: airChanges(plan.build, using),
    };
    solventGM3 = solventAfter(solventGM3, gaveG, aired, STEP_MS / 1000);
    now += STEP_MS;
    if (now % CURE_STEP_MS === 0) cureAll(using);
  };

  const setLoad = (rack: string, load: Load | null) => {
    const index = indexOf(rack);
    const racks = room.racks.map((state, each) => (each === index ? { ...state, load } : state));
    room = { ...room, racks };
  };

  return {
    plan,
    at: () => now,
    advanceTo(at) {
      const readings: ShedReading[] = [];
      while (now + STEP_MS <= at) {
        step();
        if (now % readingPeriodMs === 0) readings.push(...sensors.read(now));
      }
      return readings;
    },
    lay(rack, load) {
      setLoad(rack, load);
      if (load === null) lots.set(rack, []);
    },
    move(from, to) {
      if (rackState(to).load !== null || coatsOn(to).length > 0) {
        throw new RangeError(`to is ${to}; allowed: a bare rack`);
      }
      setLoad(to, rackState(from).load);
      lots.set(to, coatsOn(from));
      setLoad(from, null);
      lots.set(from, []);
    },
    coat(rack, paint, solventG) {
      coatsLaid += 1;
      const boards = freshCoat(paint, seededRandom(seed, 1000 + coatsLaid));
      const older = coatsOn(rack).filter(
        (coat) => !gates.every((gate) => isTrulyReady(coat.boards, gate)),
      );
      lots.set(rack, [...older, { id: coatsLaid, paint, boards, wet: { solventG } }]);
      return coatsLaid;
    },
    touch(rack, gate, on = 'offcut') {
      const newest = coatsOn(rack).at(-1);
      return newest !== undefined && feel(newest.boards, gate, on, hands);
    },
    truth(id) {
      const coat = [...lots.values()].flat().find((each) => each.id === id);
      if (coat === undefined) return null;
      const ready = (gate: Gate) => isTrulyReady(coat.boards, gate);
      return Object.fromEntries(gates.map((gate) => [gate, ready(gate)])) as Record<Gate, boolean>;
    },
    rackTruth(rack) {
      const state = rackState(rack);
      const renewalsPerHour = renewals(indexOf(rack), use().stirring);
      return { tempC: state.tempC, rhPercent: rhPercentOf(state), renewalsPerHour };
    },
    airChangesPerHour: () => airChanges(plan.build, use()),
    solventMgM3: () => 1000 * solventGM3,
  };
}

/** A capacitive sensor reports over water also below 0 °C, and never above 100 %. */
function rhPercentOf(air: { tempC: number; absoluteHumidityGM3: number }): number {
  return Math.min(100, relativeHumidity(air.tempC, air.absoluteHumidityGM3, { over: 'water' }));
}

function settled(plan: ShedPlan, outdoorGM3: number): RoomState {
  const tempC = plan.settledC;
  const absoluteHumidityGM3 = Math.min(outdoorGM3 + 0.5, absoluteHumidity(tempC, 95));
  const racks = plan.racks.map(() => ({ tempC, absoluteHumidityGM3, load: null }));
  return { tempC, fabricTempC: tempC - 2.5, absoluteHumidityGM3, heaterOn: false, racks };
}
