import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { Instrument } from './physics/instrument.ts';
import type { RoomBuild } from './physics/room.ts';

/** The two racks of the invented shed. */
export const rackNames = ['door', 'back'] as const;
export type RackName = (typeof rackNames)[number];

/** Where a simulated sensor hangs; `floor` is the lowest shelf of the rack at the back. */
export type Spot = 'outdoors' | 'room' | RackName | 'floor';

export interface SimulatedSensor {
  readonly id: string;
  readonly spot: Spot;
  readonly measures: readonly { readonly quantity: Quantity; readonly instrument: Instrument }[];
}

/** An invented cart shed of 6 × 4 × 2.6 m with a thermostat; all figures are made up for the demo. */
export const CART_SHED: RoomBuild = {
  volumeM3: 62.4,
  airJPerK: 350_000,
  fabricJPerK: 3_000_000,
  airToFabricWPerK: 250,
  fabricToOutdoorsWPerK: 55,
  airChangesPerHour: 0.6,
  heater: { powerW: 2200, onBelowC: 19.2, offAboveC: 20.4 },
  racks: [
    // beside the door, where the air is stirred
    { airM3: 3, toRoomWPerK: 60, toOutdoorsWPerK: 1, toRoomM3PerHour: 120 },
    // in the back corner against the cold wall, where it stands still
    { airM3: 3, toRoomWPerK: 45, toOutdoorsWPerK: 4, toRoomM3PerHour: 22 },
  ],
};

/** The lowest shelf is this much colder than the middle of its rack: assumption, no source. */
export const FLOOR_COLDER_K = 0.8;

const temperature = (bias: number) => ({
  quantity: 'air-temperature' as const,
  instrument: { bias, noise: 0.05, step: 0.1 },
});
const humidity = (bias: number) => ({
  quantity: 'relative-humidity' as const,
  instrument: { bias, noise: 0.4, step: 0.5, lowest: 0, highest: 100 },
});

export const SIMULATED_SENSORS: readonly SimulatedSensor[] = [
  { id: 'yard', spot: 'outdoors', measures: [temperature(0.1), humidity(1)] },
  { id: 'bench', spot: 'room', measures: [temperature(0.2), humidity(-1)] },
  { id: 'door-shelf', spot: 'door', measures: [temperature(-0.1), humidity(0.5)] },
  {
    id: 'door-pins',
    spot: 'door',
    measures: [
      {
        quantity: 'wood-moisture',
        instrument: { bias: 0.3, noise: 0.05, step: 0.1, lowest: 0, highest: 40 },
      },
    ],
  },
  { id: 'back-shelf', spot: 'back', measures: [temperature(0.15), humidity(1.5)] },
  { id: 'back-floor', spot: 'floor', measures: [temperature(-0.1), humidity(0)] },
];
