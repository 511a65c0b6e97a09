import type { ShedPlan, SimulatedSensor } from './shed-plan.ts';

/** The racks of the invented shed. */
export const rackNames = ['door', 'window', 'north', 'back'] as const;
export type RackName = (typeof rackNames)[number];

const rack = (name: RackName, shelf: number) => ({ kind: 'rack', rack: name, shelf }) as const;

const temperature = (bias: number) => ({
  quantity: 'air-temperature' as const,
  instrument: { bias, noise: 0.05, step: 0.1 },
});
const humidity = (bias: number) => ({
  quantity: 'relative-humidity' as const,
  instrument: { bias, noise: 0.4, step: 0.5, lowest: 0, highest: 100 },
});

export const SIMULATED_SENSORS: readonly SimulatedSensor[] = [
  { id: 'yard', spot: { kind: 'outdoors' }, measures: [temperature(0.1), humidity(1)] },
  { id: 'bench', spot: { kind: 'room' }, measures: [temperature(0.2), humidity(-1)] },
  { id: 'door-shelf', spot: rack('door', 1), measures: [temperature(-0.1), humidity(0.5)] },
  {
    id: 'door-pins',
    spot: rack('door', 1),
    measures: [
      {
        quantity: 'wood-moisture',
        instrument: { bias: 0.3, noise: 0.05, step: 0.1, lowest: 0, highest: 40 },
      },
    ],
  },
  { id: 'window-shelf', spot: rack('window', 1), measures: [temperature(0.1), humidity(-0.5)] },
  { id: 'north-floor', spot: rack('north', 2), measures: [temperature(0), humidity(0.5)] },
  { id: 'back-shelf', spot: rack('back', 1), measures: [temperature(0.15), humidity(1.5)] },
  { id: 'back-floor', spot: rack('back', 2), measures: [temperature(-0.1), humidity(0)] },
];

/** An invented cart shed of 8 × 4 × 2.6 m with a thermostat; all figures are made up for the demo. */
export const CART_SHED: ShedPlan = {
  build: {
    volumeM3: 83.2,
    airJPerK: 470_000,
    fabricJPerK: 4_000_000,
    airToFabricWPerK: 320,
    fabricToOutdoorsWPerK: 70,
    airChangesPerHour: 0.6,
    heater: { powerW: 2800, onBelowC: 19.2, offAboveC: 20.4 },
    racks: [
      // beside the door, where the air is stirred
      { airM3: 3, toRoomWPerK: 60, toOutdoorsWPerK: 1, toRoomM3PerHour: 120 },
      { airM3: 3, toRoomWPerK: 55, toOutdoorsWPerK: 2, toRoomM3PerHour: 75 },
      { airM3: 3, toRoomWPerK: 50, toOutdoorsWPerK: 3, toRoomM3PerHour: 45 },
      // in the back corner against the cold wall, where it stands still
      { airM3: 3, toRoomWPerK: 45, toOutdoorsWPerK: 4, toRoomM3PerHour: 22 },
    ],
  },
  racks: [
    { name: 'door', light: 0.35 },
    { name: 'window', light: 0.4 },
    { name: 'north', light: 0.15 },
    { name: 'back', light: 0.1 },
  ],
  airing: { doorPerHour: 5, doorMinutesAnHour: 4, airingShare: 0.3, windPerHour: 0.5 },
  fan: null,
  sensors: SIMULATED_SENSORS,
  readingPeriodMs: 300_000,
  faults: [],
  settledC: 19.5,
};
