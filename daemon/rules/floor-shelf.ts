import type { Reason } from '../contract/gate.ts';
import type { SensorHeight } from '../contract/sensor.ts';
import { dewMargin } from '../science/dew-margin.ts';
import { sentence } from '../wording/english.ts';
import type { AirNow } from './brush-air.ts';

/** How much colder the floor is than eye height. Common practice, no source; a setting. */
export const usualFloorShelfColderK = 2;

/** A sensor that speaks alone for a place. */
export interface LoneSensor {
  name: string;
  /** null while nobody has said. */
  height: SensorHeight | null;
}

const toldOf = ({ name, height }: LoneSensor, colderK: number) => ({
  ...{ sensor: name, heightKnown: height !== null, colderK },
});

/** What forbids brushing on the bottom shelf, though where the sensor hangs it would do. */
export function floorHolds(
  sensor: LoneSensor | null,
  { tempC, rhPercent, stale }: AirNow,
  colderK: number,
  leastMarginK: number,
): Reason[] {
  if (sensor === null || sensor.height === 'bottom-shelf' || colderK <= 0) return [];
  if (tempC === null || rhPercent === null || stale) return [];
  const marginK = dewMargin(tempC - colderK, { tempC, rhPercent });
  // Where it is too near at the sensor itself, that is said already.
  if (marginK >= leastMarginK || marginK + colderK < leastMarginK) return [];
  const told = { ...toldOf(sensor, colderK), marginK, limitK: leastMarginK };
  return [sentence('floor-near-dew', told)];
}

/** That boards on the bottom shelf may be behind. */
export function floorReasons(
  sensor: LoneSensor | null,
  tempC: number | null,
  colderK: number,
  rateAt: (tempC: number) => number,
): Reason[] {
  if (sensor === null || sensor.height === 'bottom-shelf' || colderK <= 0 || tempC === null) {
    return [];
  }
  const [here, floor] = [rateAt(tempC), rateAt(tempC - colderK)];
  const told = toldOf(sensor, colderK);
  if (here <= 0) return [sentence('floor-colder', told)];
  if (floor <= 0) return [sentence('floor-colder/nothing-gained', told)];
  const longerPercent = Math.round((here / floor - 1) * 100);
  return [sentence('floor-colder/longer', { ...told, longerPercent })];
}
