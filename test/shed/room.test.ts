import { describe, expect, it } from 'vitest';
import { absoluteHumidity, relativeHumidity } from '../../daemon/science/air.ts';
import { equilibriumMoistureContent } from '../../daemon/science/wood.ts';
import { CART_SHED as CART_SHED_PLAN } from '../../sensors/shed/cart-shed.ts';
import { restedLoad } from '../../sensors/shed/physics/board-moisture.ts';
import {
  heatHeld,
  type RoomBuild,
  type RoomState,
  stepRoom,
  waterHeld,
} from '../../sensors/shed/physics/room.ts';
import { outdoorWeather } from '../../sensors/shed/physics/weather.ts';

const CART_SHED: RoomBuild = {
  ...CART_SHED_PLAN.build,
  racks: [0, 3].flatMap((rack) => CART_SHED_PLAN.build.racks[rack] ?? []),
};

const START: RoomState = {
  tempC: 15,
  fabricTempC: 13,
  absoluteHumidityGM3: 9,
  heaterOn: false,
  racks: [
    { tempC: 14, absoluteHumidityGM3: 9, load: restedLoad(190, 15) },
    { tempC: 14, absoluteHumidityGM3: 9, load: restedLoad(220, 18) },
  ],
};
const COLD = { tempC: 4, absoluteHumidityGM3: 5 };
const UNHEATED: RoomBuild = {
  ...CART_SHED,
  heater: { powerW: 0, onBelowC: 0, offAboveC: 0 },
};

function run(build: RoomBuild, from: RoomState, outdoors: typeof COLD, hours: number): RoomState {
  let state = from;
  for (let hour = 0; hour < hours; hour++) state = stepRoom(build, state, outdoors, 3600).state;
  return state;
}

describe('the simulated room', () => {
  it('neither makes nor loses heat or water over ten days of weather', () => {
    const weather = outdoorWeather(1);
    let state = START;
    const flows = { heaterJ: 0, heatToOutdoorsJ: 0, vapourToOutdoorsG: 0, condensedG: 0 };
    for (let minute = 0; minute < 10 * 1440; minute += 10) {
      const step = stepRoom(CART_SHED, state, weather(minute * 60_000), 600);
      state = step.state;
      for (const key of Object.keys(flows) as (keyof typeof flows)[]) flows[key] += step.flows[key];
    }
    const gainedJ = heatHeld(CART_SHED, state) - heatHeld(CART_SHED, START);
    expect(gainedJ - (flows.heaterJ - flows.heatToOutdoorsJ)).toBeCloseTo(0, 0);
    expect(flows.heaterJ).toBeGreaterThan(1e8);
    const gainedG = waterHeld(CART_SHED, state) - waterHeld(CART_SHED, START);
    expect(gainedG + flows.vapourToOutdoorsG + flows.condensedG).toBeCloseTo(0, 5);
    expect(flows.vapourToOutdoorsG).toBeGreaterThan(1000);
  });

  it('neither makes nor loses water while it condenses', () => {
    const cool: RoomState = {
      ...START,
      tempC: 8,
      fabricTempC: 8,
      absoluteHumidityGM3: 7,
      racks: START.racks.map((rack) => ({ ...rack, tempC: 8, absoluteHumidityGM3: 7 })),
    };
    const muggy = { tempC: 25, absoluteHumidityGM3: absoluteHumidity(25, 95) };
    const { state, flows } = stepRoom(UNHEATED, cool, muggy, 6 * 3600);
    expect(flows.condensedG).toBeGreaterThan(0);
    const gainedG = waterHeld(UNHEATED, state) - waterHeld(UNHEATED, cool);
    expect(gainedG + flows.vapourToOutdoorsG + flows.condensedG).toBeCloseTo(0, 6);
    for (const rack of state.racks) {
      expect(relativeHumidity(rack.tempC, rack.absoluteHumidityGM3)).toBeLessThan(101);
    }
  });

  it('comes to rest at the air outside when nothing heats or moistens it', () => {
    const bare = { ...START, racks: START.racks.map((rack) => ({ ...rack, load: null })) };
    const rest = run(UNHEATED, bare, COLD, 24 * 30);
    expect(rest.tempC).toBeCloseTo(COLD.tempC, 2);
    expect(rest.absoluteHumidityGM3).toBeCloseTo(COLD.absoluteHumidityGM3, 6);
    for (const rack of rest.racks) {
      expect(rack.tempC).toBeCloseTo(COLD.tempC, 2);
      expect(rack.absoluteHumidityGM3).toBeCloseTo(COLD.absoluteHumidityGM3, 6);
    }
  });

  it('lets vapour decay with its air changes, as a tracer does', () => {
    // source: tracer decay C(t) = C0·exp(−n·t), ASTM E741 (equation from memory)
    const sealedRacks: RoomBuild = {
      ...UNHEATED,
      airChangesPerHour: 1,
      racks: UNHEATED.racks.map((rack) => ({ ...rack, toRoomM3PerHour: 0 })),
    };
    const mild = { tempC: 15, absoluteHumidityGM3: 5 };
    const level: RoomState = { ...START, fabricTempC: 15 };
    const after = stepRoom(sealedRacks, level, mild, 3600).state.absoluteHumidityGM3;
    // explicit steps of 30 s are off by about n²·Δt/2 a time unit, here 0.4 %
    expect((after - 5) / (9 - 5)).toBeCloseTo(Math.exp(-1), 2);
  });

  it('keeps the thermostat’s band in the cold, with the racks a little below it', () => {
    let state = run(CART_SHED, START, COLD, 72);
    const { onBelowC, offAboveC } = CART_SHED.heater;
    for (let minute = 0; minute < 24 * 60; minute++) {
      state = stepRoom(CART_SHED, state, COLD, 60).state;
      expect(state.tempC).toBeGreaterThan(onBelowC - 1);
      expect(state.tempC).toBeLessThan(offAboveC + 1);
    }
    const [door, back] = state.racks;
    expect(door?.tempC).toBeLessThan(state.tempC + 0.7);
    expect(back?.tempC).toBeLessThan(door?.tempC ?? 0);
  });

  it('holds the stagnant rack damper than the stirred one, and both damper than the room', () => {
    const same = START.racks.map((rack) => ({
      ...rack,
      load: restedLoad(200, 17),
    }));
    const state = run(CART_SHED, { ...START, racks: same }, COLD, 72);
    const [door, back] = state.racks.map(({ absoluteHumidityGM3 }) => absoluteHumidityGM3);
    expect(door).toBeGreaterThan(state.absoluteHumidityGM3);
    expect(back).toBeGreaterThan(door ?? 0);
  });

  it('dries boards towards the equilibrium moisture of their air and never past it', () => {
    const state = run(CART_SHED, START, COLD, 24 * 365);
    for (const rack of state.racks) {
      const rhPercent = relativeHumidity(rack.tempC, rack.absoluteHumidityGM3);
      const equilibrium = equilibriumMoistureContent(rack.tempC, rhPercent);
      expect(rack.load?.moisturePercent).toBeCloseTo(equilibrium, 1);
    }
  });

  it('ends up in the same place however a day is cut into steps', () => {
    const day = stepRoom(CART_SHED, START, COLD, 86_400).state;
    let pieces = START;
    for (let hour = 0; hour < 24; hour++) pieces = stepRoom(CART_SHED, pieces, COLD, 3600).state;
    expect(pieces.fabricTempC).toBeCloseTo(day.fabricTempC, 9);
    expect(pieces.absoluteHumidityGM3).toBeCloseTo(day.absoluteHumidityGM3, 9);
  });

  it.each([0, -1, Number.NaN])('refuses a step of %d s', (dtS) => {
    expect(() => stepRoom(CART_SHED, START, COLD, dtS)).toThrow(/dtS is/);
  });
});
