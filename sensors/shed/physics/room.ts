import { absoluteHumidity, relativeHumidity } from '../../../daemon/science/air.ts';
import { exchangeMoisture, type Load, waterInLoad } from './board-moisture.ts';
import type { OutdoorAir } from './weather.ts';

/** What a rack is built like: a pocket of air around boards, inside the room. */
export interface RackBuild {
  readonly airM3: number;
  /** heat exchange with the room's air */
  readonly toRoomWPerK: number;
  /** heat lost through the wall behind it */
  readonly toOutdoorsWPerK: number;
  /** air exchanged with the room; little of it is a stagnant rack */
  readonly toRoomM3PerHour: number;
}

export interface RoomBuild {
  readonly volumeM3: number;
  /** heat stored by the air and what stands in it */
  readonly airJPerK: number;
  /** heat stored by floor and walls */
  readonly fabricJPerK: number;
  readonly airToFabricWPerK: number;
  readonly fabricToOutdoorsWPerK: number;
  /** through cracks, with everything shut and no wind */
  readonly airChangesPerHour: number;
  readonly heater: {
    readonly powerW: number;
    readonly onBelowC: number;
    readonly offAboveC: number;
  };
  readonly racks: readonly RackBuild[];
}

export interface RackState {
  readonly tempC: number;
  readonly absoluteHumidityGM3: number;
  readonly load: Load | null;
}

export interface RoomState {
  readonly tempC: number;
  readonly fabricTempC: number;
  readonly absoluteHumidityGM3: number;
  readonly heaterOn: boolean;
  readonly racks: readonly RackState[];
}

/** What somebody has set or opened. */
export interface RoomUse {
  /** fresh air beyond that of the cracks: an open door, wind, an extractor; changes per hour */
  readonly moreAirChangesPerHour: number;
  /** how much more air a fan moves between racks and room; 1 without one */
  readonly stirring: number;
}

export const SHUT: RoomUse = { moreAirChangesPerHour: 0, stirring: 1 };

/** What crossed the room's bounds in a step, so that nothing is gained or lost unseen. */
export interface RoomFlows {
  readonly heaterJ: number;
  readonly heatToOutdoorsJ: number;
  readonly vapourToOutdoorsG: number;
  readonly condensedG: number;
}

/** Density times specific heat of air at 20 °C, J/(m³·K). **Source:** 1.204 kg/m³ × 1,006 J/(kg·K), from memory. */
const AIR_J_PER_M3K = 1211;
/** Heat that loaded and bare racks store, J per K: timber at about 1.6 kJ/(kg·K), from memory. */
const TIMBER_J_PER_KG_K = 1600;
const BARE_RACK_J_PER_K = 60_000;
const HOUR_S = 3600;
const LONGEST_STEP_S = 30;

const rackJPerK = (load: Load | null) =>
  BARE_RACK_J_PER_K + (load === null ? 0 : load.dryMassKg * TIMBER_J_PER_KG_K);

/**
 * Heat held above 0 °C by room and racks.
 *
 * @returns J
 */
export function heatHeld(build: RoomBuild, state: RoomState): number {
  let heldJ = build.airJPerK * state.tempC + build.fabricJPerK * state.fabricTempC;
  for (const rack of state.racks) heldJ += rackJPerK(rack.load) * rack.tempC;
  return heldJ;
}

/**
 * Water held by the air of room and racks and by the boards.
 *
 * @returns g
 */
export function waterHeld(build: RoomBuild, state: RoomState): number {
  let heldG = build.volumeM3 * state.absoluteHumidityGM3;
  state.racks.forEach((rack, index) => {
    heldG += (build.racks[index]?.airM3 ?? 0) * rack.absoluteHumidityGM3;
    if (rack.load !== null) heldG += waterInLoad(rack.load);
  });
  return heldG;
}

/** Vapour above saturation falls out as water. */
function condense(tempC: number, vapourG: number, airM3: number) {
  const most = absoluteHumidity(tempC, 100) * airM3;
  return { vapourG: Math.min(vapourG, most), condensedG: Math.max(0, vapourG - most) };
}

/** Fresh air of the room, changes per hour. */
export const airChanges = (build: RoomBuild, use: RoomUse): number =>
  build.airChangesPerHour + use.moreAirChangesPerHour;

function shortStep(
  build: RoomBuild,
  use: RoomUse,
  state: RoomState,
  outdoors: OutdoorAir,
  dtS: number,
) {
  const heaterOn = state.heaterOn
    ? state.tempC < build.heater.offAboveC
    : state.tempC < build.heater.onBelowC;
  const heaterJ = heaterOn ? build.heater.powerW * dtS : 0;
  const aired = (airChanges(build, use) * build.volumeM3 * dtS) / HOUR_S;
  const toFabricJ = build.airToFabricWPerK * (state.tempC - state.fabricTempC) * dtS;
  const airedJ = AIR_J_PER_M3K * aired * (state.tempC - outdoors.tempC);
  const throughFabricJ = build.fabricToOutdoorsWPerK * (state.fabricTempC - outdoors.tempC) * dtS;
  let roomJ = heaterJ - toFabricJ - airedJ;
  let heatToOutdoorsJ = airedJ + throughFabricJ;

  const vapourToOutdoorsG = aired * (state.absoluteHumidityGM3 - outdoors.absoluteHumidityGM3);
  let roomG = build.volumeM3 * state.absoluteHumidityGM3 - vapourToOutdoorsG;
  let condensedG = 0;

  const racks = state.racks.map((rack, index): RackState => {
    const built = build.racks[index];
    if (built === undefined)
      throw new RangeError(
        `racks has ${state.racks.length} entries; allowed: ${build.racks.length}`,
      );
    const fromRoomJ = built.toRoomWPerK * (state.tempC - rack.tempC) * dtS;
    const lostJ = built.toOutdoorsWPerK * (rack.tempC - outdoors.tempC) * dtS;
    roomJ -= fromRoomJ;
    heatToOutdoorsJ += lostJ;
    const tempC = rack.tempC + (fromRoomJ - lostJ) / rackJPerK(rack.load);

    const swapped = (built.toRoomM3PerHour * use.stirring * dtS) / HOUR_S;
    const fromRoomG = swapped * (state.absoluteHumidityGM3 - rack.absoluteHumidityGM3);
    roomG -= fromRoomG;
    let load = rack.load;
    let fromBoardsG = 0;
    if (load !== null) {
      const rhPercent = Math.min(100, relativeHumidity(rack.tempC, rack.absoluteHumidityGM3));
      const exchanged = exchangeMoisture(load, { tempC: rack.tempC, rhPercent }, dtS);
      load = exchanged.load;
      fromBoardsG = exchanged.gaveG;
    }
    const air = condense(
      tempC,
      built.airM3 * rack.absoluteHumidityGM3 + fromRoomG + fromBoardsG,
      built.airM3,
    );
    condensedG += air.condensedG;
    return { tempC, absoluteHumidityGM3: air.vapourG / built.airM3, load };
  });

  const tempC = state.tempC + roomJ / build.airJPerK;
  const air = condense(tempC, roomG, build.volumeM3);
  condensedG += air.condensedG;
  return {
    state: {
      tempC,
      fabricTempC: state.fabricTempC + (toFabricJ - throughFabricJ) / build.fabricJPerK,
      absoluteHumidityGM3: air.vapourG / build.volumeM3,
      heaterOn,
      racks,
    },
    flows: { heaterJ, heatToOutdoorsJ, vapourToOutdoorsG, condensedG },
  };
}

/**
 * Carries a heated room with its racks on by a stretch of time: well-mixed room air, racks as
 * pockets that exchange heat and air with it, timber that gives off moisture towards equilibrium.
 * Latent heat is left out.
 *
 * @param build - how the room is made
 * @param state - the room before; `racks` in the order of `build.racks`
 * @param outdoors - the air outside, taken as constant over the step
 * @param use - what is open and what runs
 * @param dtS - length of the step, s, above 0; worked off in short steps of at most 30 s
 * @returns the room after, and what crossed its bounds: held before + flows in − flows out is held
 *   after, to rounding
 * @throws RangeError on a step that is not above 0
 */
export function stepRoom(
  build: RoomBuild,
  state: RoomState,
  outdoors: OutdoorAir,
  dtS: number,
  use: RoomUse = SHUT,
): { state: RoomState; flows: RoomFlows } {
  if (!(dtS > 0 && Number.isFinite(dtS))) throw new RangeError(`dtS is ${dtS}; allowed: above 0`);
  const steps = Math.ceil(dtS / LONGEST_STEP_S);
  const flows = { heaterJ: 0, heatToOutdoorsJ: 0, vapourToOutdoorsG: 0, condensedG: 0 };
  let current = state;
  for (let step = 0; step < steps; step++) {
    const next = shortStep(build, use, current, outdoors, dtS / steps);
    current = next.state;
    flows.heaterJ += next.flows.heaterJ;
    flows.heatToOutdoorsJ += next.flows.heatToOutdoorsJ;
    flows.vapourToOutdoorsG += next.flows.vapourToOutdoorsG;
    flows.condensedG += next.flows.condensedG;
  }
  return { state: current, flows };
}
