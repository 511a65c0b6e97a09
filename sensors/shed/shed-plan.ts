import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { Instrument } from './physics/instrument.ts';
import type { AiringHabits } from './physics/openings.ts';
import type { RoomBuild } from './physics/room.ts';
import type { SensorFault } from './physics/sensor-faults.ts';

/** Where a simulated sensor hangs. */
export type Spot =
  | { readonly kind: 'outdoors' }
  | { readonly kind: 'room' }
  | {
      readonly kind: 'rack';
      readonly rack: string;
      /** 0 for the top shelf, 1 for the middle, 2 for the lowest */
      readonly shelf: number;
    };

export interface SimulatedSensor {
  readonly id: string;
  readonly spot: Spot;
  readonly measures: readonly { readonly quantity: Quantity; readonly instrument: Instrument }[];
}

/** Everything that makes one shed. */
export interface ShedPlan {
  readonly build: RoomBuild;
  /** names in the order of `build.racks`, with the share of daylight that reaches each */
  readonly racks: readonly { readonly name: string; readonly light: number }[];
  readonly airing: AiringHabits;
  /** a fan that runs every day between two hours UTC; null without one */
  readonly fan: {
    readonly fromHour: number;
    readonly toHour: number;
    readonly stirring: number;
  } | null;
  readonly sensors: readonly SimulatedSensor[];
  readonly readingPeriodMs: number;
  readonly faults: readonly SensorFault[];
  /** what the air of the room is at the start, °C */
  readonly settledC: number;
}
