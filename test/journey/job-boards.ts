import type { Gate } from '../../daemon/contract/gate.ts';
import { absoluteHumidity, relativeHumidity } from '../../daemon/science/air.ts';
import {
  type CoatedBoards,
  cureBoards,
  feel,
  freshCoat,
  isTrulyReady,
} from '../../sensors/shed/physics/coated-boards.ts';
import { daylight } from '../../sensors/shed/physics/daylight.ts';
import { MIDDLING_PAINT, slower } from '../../sensors/shed/physics/paint-truth.ts';
import { seededRandom } from '../../sensors/shed/physics/random.ts';
import { outdoorWeather } from '../../sensors/shed/physics/weather.ts';
import type { Shed } from '../../sensors/shed/shed.ts';

/** Where boards truly are: on a rack of the shed, or up on a wall in the weather. */
export type Spot = { rack: string } | { wall: true };

const hourMs = 3_600_000;
/** Boards on a wall stand in the wind. Assumption. */
const windRenewals = 60;

/** Boards whose coats cure by the simulated shed’s hidden truth, on a rack and on a wall alike. */
export function jobBoards(shed: Shed, seed: number) {
  const weather = outdoorWeather(seed);
  const hands = seededRandom(seed, 90);
  let coats = 0;
  let coat: CoatedBoards | null = null;

  function airAt(spot: Spot, at: number) {
    if ('rack' in spot) {
      const { tempC, rhPercent, renewalsPerHour } = shed.rackTruth(spot.rack);
      return { tempC, rhPercent, renewalsPerHour, light: 0.3 * daylight(at) };
    }
    const { tempC, absoluteHumidityGM3 } = weather(at);
    const saturated = absoluteHumidity(tempC, 100, { over: 'water' });
    const rhPercent =
      absoluteHumidityGM3 >= saturated
        ? 100
        : relativeHumidity(tempC, absoluteHumidityGM3, { over: 'water' });
    return { tempC, rhPercent, renewalsPerHour: windRenewals, light: daylight(at) };
  }

  return {
    lay(): void {
      coats += 1;
      coat = freshCoat(slower(MIDDLING_PAINT, 1.1), seededRandom(seed, 500 + coats));
    },
    cure(spot: Spot, at: number, hours: number): void {
      if (coat) coat = cureBoards(coat, airAt(spot, at), hours);
    },
    feel: (gate: Gate): boolean => coat !== null && feel(coat, gate, 'offcut', hands),
    isReady: (gate: Gate): boolean => coat !== null && isTrulyReady(coat, gate),
    hourMs,
  };
}
export type JobBoards = ReturnType<typeof jobBoards>;
