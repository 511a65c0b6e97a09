import type { Quantity } from '../../../daemon/contract/quantity.ts';
import type { Random } from './random.ts';

/** What may be wrong with a sensor for a while. */
export const faultNames = [
  'silent',
  'stuck',
  'jumps',
  'out-of-physics',
  'drift',
  'pinned',
  'swapped',
  'low-battery',
  'time-wrong',
] as const;
export type FaultName = (typeof faultNames)[number];

export interface SensorFault {
  readonly name: FaultName;
  readonly sensor: string;
  /** UTC epoch ms */
  readonly fromAt: number;
  /** UTC epoch ms; null for one that nobody mends */
  readonly toAt: number | null;
  /** with `swapped`, the sensor whose place it has taken */
  readonly other?: string;
}

/** A value on its way, with the time that the sensor gives it. */
export interface Shown {
  readonly value: number;
  /** UTC epoch ms by the sensor's own clock */
  readonly at: number;
}

const DAY_MS = 86_400_000;
// sizes of the faults: assumptions, in the order of what cheap sensors are seen to do
const JUMPING_SHARE = 0.08;
const BROKEN_SHARE = 0.2;
const WEAK_LOST_SHARE = 0.4;
const CLOCK_BEHIND_MS = 2 * 3_600_000;
const LAST_OF_BATTERY_PERCENT = 12;
const BATTERY_PERCENT_A_DAY = 1.5;

/** How far values are off: jumps to either side, and drift by the day. */
const SIZES: Readonly<Record<Quantity, { jump: number; perDay: number; nonsense: number }>> = {
  'air-temperature': { jump: 9, perDay: 0.4, nonsense: -127 },
  'surface-temperature': { jump: 9, perDay: 0.4, nonsense: -127 },
  'relative-humidity': { jump: 25, perDay: 3, nonsense: 6553.5 },
  'wood-moisture': { jump: 6, perDay: 0.5, nonsense: 999 },
  'wood-resistance': { jump: 1e7, perDay: 1e6, nonsense: 0 },
  'carbon-dioxide': { jump: 600, perDay: 60, nonsense: -1 },
  battery: { jump: 20, perDay: 0, nonsense: 255 },
};

/** Whether a fault is there at a moment, UTC epoch ms. */
export function isOn({ fromAt, toAt }: SensorFault, at: number): boolean {
  return at >= fromAt && (toAt === null || at < toAt);
}

/**
 * What is sent instead of a reading while a fault is there.
 *
 * @param fault - one that is on; `swapped` changes nothing here, the sensor hangs elsewhere
 * @param quantity - of the reading
 * @param shown - what would be sent
 * @param firstShown - what was sent of this quantity when the fault began
 * @param random - draws what is lost and how it jumps
 * @returns null where nothing is sent
 */
export function withFault(
  fault: SensorFault,
  quantity: Quantity,
  shown: Shown,
  firstShown: number,
  random: Random,
): Shown | null {
  const { value, at } = shown;
  const { jump, perDay, nonsense } = SIZES[quantity];
  switch (fault.name) {
    case 'silent':
      return null;
    case 'stuck':
      return { value: firstShown, at };
    case 'jumps': {
      if (random.uniform() >= JUMPING_SHARE) return shown;
      const side = random.uniform() < 0.5 ? -1 : 1;
      return { value: rounded(value + side * jump * random.between(0.6, 1.4)), at };
    }
    case 'out-of-physics':
      return random.uniform() < BROKEN_SHARE ? { value: nonsense, at } : shown;
    case 'drift':
      return { value: rounded(value + (perDay * (at - fault.fromAt)) / DAY_MS), at };
    case 'pinned':
      return quantity === 'relative-humidity' ? { value: 100, at } : shown;
    case 'low-battery': {
      if (random.uniform() < WEAK_LOST_SHARE) return null;
      if (quantity !== 'battery') return shown;
      const gone = (BATTERY_PERCENT_A_DAY * (at - fault.fromAt)) / DAY_MS;
      return { value: Math.max(1, Math.round(LAST_OF_BATTERY_PERCENT - gone)), at };
    }
    case 'time-wrong':
      return { value, at: at - CLOCK_BEHIND_MS };
    case 'swapped':
      return shown;
  }
}

const rounded = (value: number) => Number(value.toFixed(2));
