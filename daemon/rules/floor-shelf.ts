import type { Reason } from '../contract/gate.ts';
import type { SensorHeight } from '../contract/sensor.ts';
import { dewMargin } from '../science/dew-margin.ts';
import type { AirNow } from './brush-air.ts';

/** How much colder the floor is than eye height. Common practice, no source; a setting. */
export const usualFloorShelfColderK = 2;

/** A sensor that speaks alone for a place. */
export interface LoneSensor {
  name: string;
  /** null while nobody has said. */
  height: SensorHeight | null;
}

const where = ({ name, height }: LoneSensor) =>
  height === null
    ? `One sensor, ${name}, speaks for this place`
    : `One sensor, ${name}, hangs here`;

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
  return [
    {
      code: 'floor-near-dew',
      text: `${where(sensor)}; the bottom shelf is taken to be ${colderK} K colder, and that is ${marginK.toFixed(1)} K above the dew point, at least ${leastMarginK} K. Hang one there to know.`,
    },
  ];
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
  const behind =
    here <= 0
      ? ''
      : floor <= 0
        ? ': there nothing is gained now'
        : `: there a coat takes about ${Math.round((here / floor - 1) * 100)} % longer`;
  return [
    {
      code: 'floor-colder',
      text: `${where(sensor)}; the bottom shelf is taken to be ${colderK} K colder${behind}. Feel a board there.`,
    },
  ];
}
