import type { FaultKind } from '../../daemon/contract/sensor-fault.ts';
import { seededRandom } from '../science/seeded-random.ts';
import type { Injection, Sent, Spot } from './sensor-faults.ts';

const minute = 60_000;
const hour = 60 * minute;

/** A fault as it is put into a sensor’s readings. */
export interface FaultRecipe {
  readonly name: string;
  /** What it may be called: a step may be taken for a jump or for a drift, and is both. */
  readonly found: readonly FaultKind[];
  /** How many sensors must hang at the place for it to be told. */
  readonly needs: 1 | 3;
  /** Whether a second place is needed. */
  readonly pair?: boolean;
  /** How long after the start it begins to matter, ms: delays are counted from there. */
  readonly mattersAfterMs?: number;
  make(seed: number, fromAt: number): Injection['change'];
}

const isT = (reading: Sent) => reading.quantity === 'air-temperature';

function frozen(spot: Spot, reading: Sent): Sent {
  const value = spot.held.get(reading.quantity) ?? reading.value;
  spot.held.set(reading.quantity, value);
  return { ...reading, value };
}

export const recipes: readonly FaultRecipe[] = [
  { name: 'silent', found: ['silent'], needs: 1, make: () => () => null },
  {
    name: 'stuck, the whole chip',
    found: ['stuck'],
    needs: 1,
    make: () => (reading, spot) => frozen(spot, reading),
  },
  {
    name: 'stuck, temperature alone',
    found: ['stuck', 'drift'],
    needs: 3,
    make: () => (reading, spot) => (isT(reading) ? frozen(spot, reading) : reading),
  },
  {
    name: 'jumps, a loose contact',
    found: ['jumps'],
    needs: 1,
    make(seed) {
      const random = seededRandom(seed);
      return (reading) => {
        const by = (random() < 0.5 ? -1 : 1) * (isT(reading) ? 6 + 6 * random() : 25);
        return random() < 0.3 ? { ...reading, value: reading.value + by } : reading;
      };
    },
  },
  {
    name: 'jumps, 5 K and stays',
    found: ['jumps', 'drift'],
    needs: 3,
    make: () => (reading) => (isT(reading) ? { ...reading, value: reading.value + 5 } : reading),
  },
  {
    name: 'not possible (85 °C, 0 %)',
    found: ['out-of-physics'],
    needs: 1,
    make: () => (reading) => ({ ...reading, value: isT(reading) ? 85 : 0 }),
  },
  {
    name: 'drift, 0.5 K an hour',
    found: ['drift'],
    needs: 3,
    // Until it is off by what the rule allows, 1.5 K, nobody minds.
    mattersAfterMs: 3 * hour,
    make: (_, fromAt) => (reading) => {
      const hours = (reading.at - fromAt) / hour;
      return isT(reading) ? { ...reading, value: reading.value + 0.5 * hours } : reading;
    },
  },
  {
    name: 'drift, 3 % an hour',
    found: ['drift', 'pinned-humidity'],
    needs: 3,
    mattersAfterMs: (8 / 3) * hour,
    make: (_, fromAt) => (reading) => {
      const by = (3 * (reading.at - fromAt)) / hour;
      return isT(reading) ? reading : { ...reading, value: Math.min(100, reading.value + by) };
    },
  },
  {
    name: 'humidity pinned at 100',
    found: ['pinned-humidity'],
    needs: 1,
    make: () => (reading) => (isT(reading) ? reading : { ...reading, value: 100 }),
  },
  {
    name: 'swapped places',
    found: ['swapped-places'],
    needs: 1,
    pair: true,
    make:
      () =>
      (reading, { place, truths }) => {
        const own = truths[place]?.(reading.at);
        const other = truths[1 - place]?.(reading.at);
        if (!own || !other || own.rhPercent === null || other.rhPercent === null) return null;
        const by = isT(reading) ? other.tempC - own.tempC : other.rhPercent - own.rhPercent;
        const value = Number((reading.value + by).toFixed(2));
        return { ...reading, value: isT(reading) ? value : Math.min(100, Math.max(0, value)) };
      },
  },
  {
    name: 'battery at 12 %',
    found: ['low-battery'],
    needs: 1,
    make: () => (reading) =>
      isT(reading) ? { ...reading, quantity: 'battery', value: 12 } : reading,
  },
  {
    name: 'time wrong by an hour',
    found: ['time-wrong'],
    needs: 1,
    make: () => (reading) => ({ ...reading, at: reading.at - hour, heardAt: reading.at }),
  },
];
