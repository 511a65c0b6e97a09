import { absoluteHumidity, relativeHumidity } from './air.ts';
import { positive, within } from './argument-range.ts';
import { normalCdf } from './normal-distribution.ts';
import type { TemperatureOutlook } from './temperature-outlook.ts';
import { meanExcess } from './uncertain-rate.ts';

/** An unvented gas burner, and the room that takes its vapour. */
export type GasBurner = {
  /** heat given off, kW, 0 or more */
  readonly kilowatts: number;
  /** m³, above 0 */
  readonly volumeM3: number;
  /** 1/h, above 0 */
  readonly airChangesPerHour: number;
};

/** Water from burning propane, g per kWh of heat. **Source:** 4 mol of water from one of propane (own arithmetic: 1.63 kg/kg) over 12.9 kWh/kg, lower heating value, from memory. */
const GAS_WATER_G_PER_KWH = 127;
/** Humidity is over water, as sensors report it. */
const OVER_WATER = { over: 'water' } as const;

/** Relative humidity of vapour at another temperature, no more than saturated. */
function rhOf(tempC: number, vapourGM3: number): number {
  return Math.min(100, relativeHumidity(tempC, vapourGM3, OVER_WATER));
}

/** Vapour in each hour's expected air, g/m³; null where humidity is unknown. */
function vapour({ tempC, rhPercent }: TemperatureOutlook): number[] | null {
  return (
    rhPercent?.map((rh, hour) => absoluteHumidity(tempC[hour] as number, rh, OVER_WATER)) ?? null
  );
}

/**
 * Air kept from falling below a temperature, the vapour in it unchanged.
 *
 * A best case: a heater of enough power, air mixed at once, nothing given off by the warm timber.
 *
 * @param outlook - the air as it would be
 * @param toTempC - what the heater holds, −40 to 60 °C
 * @param burner - an unvented gas burner adds its own vapour; default none
 * @returns the air as it would be made; where the heater works, its error is what may rise above it
 * @throws RangeError outside the range
 *
 * **Source:** vapour density carried from one temperature to another by the gas law. Warmed air swells
 * out of a leaky room, so that this reads about 3 % of the humidity too damp for every 10 K.
 */
export function heatedAir(
  outlook: TemperatureOutlook,
  toTempC: number,
  burner: GasBurner | null = null,
): TemperatureOutlook {
  within('toTempC', toTempC, -40, 60);
  const expected = outlook.tempC.map(
    (value, hour) => toTempC + meanExcess(value - toTempC, outlook.errorK[hour] as number),
  );
  const free = outlook.tempC.map((value, hour) => {
    const error = outlook.errorK[hour] as number;
    return error > 0 ? normalCdf((value - toTempC) / error) : Number(value > toTempC);
  });
  const own = vapour(outlook);
  const added = (hour: number) => {
    if (burner === null) return 0;
    const { kilowatts, volumeM3, airChangesPerHour } = burner;
    within('kilowatts', kilowatts, 0, 1000);
    const perHour = positive('airChangesPerHour', airChangesPerHour);
    const steady = (kilowatts * GAS_WATER_G_PER_KWH) / (positive('volumeM3', volumeM3) * perHour);
    // burns only where it is needed, and the room fills with its vapour by and by
    return (1 - (free[hour] as number)) * steady * -Math.expm1(-perHour * (hour + 1));
  };
  let sum = 0;
  return {
    fromAt: outlook.fromAt,
    tempC: expected,
    errorK: outlook.errorK.map((error, hour) => error * (free[hour] as number)),
    sumErrorKh: outlook.sumErrorKh.map((total, hour) => {
      sum += (total - (outlook.sumErrorKh[hour - 1] ?? 0)) * (free[hour] as number);
      return sum;
    }),
    rhPercent: own?.map((gM3, hour) => rhOf(expected[hour] as number, gM3 + added(hour))) ?? null,
    rhErrorPercent: outlook.rhErrorPercent,
  };
}

/**
 * Air kept from rising above a relative humidity, its temperature unchanged.
 *
 * @param outlook - the air as it would be
 * @param toRhPercent - what the dryer holds, 1 to 100 %
 * @returns the air as it would be made; the little warmth a dryer gives is left out
 * @throws RangeError outside the range
 */
export function driedAir(outlook: TemperatureOutlook, toRhPercent: number): TemperatureOutlook {
  within('toRhPercent', toRhPercent, 1, 100);
  return {
    ...outlook,
    rhPercent: outlook.rhPercent?.map((rh) => Math.min(rh, toRhPercent)) ?? null,
  };
}

/** How much more air comes in, 1/h. */
export type MoreAir = {
  /** as it is now, above 0 */
  readonly nowPerHour: number;
  /** with the door open, not below `nowPerHour` */
  readonly thenPerHour: number;
};

/**
 * Air of a room with more air changes: nearer to outdoors by the ratio of the two.
 *
 * @param outlook - the room as it would be
 * @param outdoors - outdoors over the same hours, at least as long from the same start
 * @param air - air changes now and then
 * @returns the room as it would be made; for vapour the balance of a well-mixed room with steady
 *   sources; for warmth the most it can change, because walls and timber hold some
 * @throws RangeError outside the range, or where outdoors is shorter
 *
 * **Source:** steady state of the well-mixed balance: inside less outside goes with source over air
 * changes.
 */
export function airedRoom(
  outlook: TemperatureOutlook,
  outdoors: TemperatureOutlook,
  air: MoreAir,
): TemperatureOutlook {
  const nowPerHour = positive('nowPerHour', air.nowPerHour);
  const kept = nowPerHour / within('thenPerHour', air.thenPerHour, nowPerHour, 1000);
  if (outdoors.tempC.length < outlook.tempC.length) {
    throw new RangeError(
      `outdoors has ${outdoors.tempC.length} hours; allowed: at least ${outlook.tempC.length}`,
    );
  }
  const mixed = (inside: number, outside: number) => outside + kept * (inside - outside);
  const tempC = outlook.tempC.map((value, hour) => mixed(value, outdoors.tempC[hour] as number));
  const errorK = outlook.errorK.map((error, hour) => mixed(error, outdoors.errorK[hour] as number));
  const inside = vapour(outlook);
  const outside = vapour(outdoors);
  return {
    fromAt: outlook.fromAt,
    tempC,
    errorK,
    sumErrorKh: outlook.sumErrorKh.map((sum, hour) =>
      mixed(sum, outdoors.sumErrorKh[hour] as number),
    ),
    rhPercent:
      inside && outside
        ? inside.map((gM3, hour) =>
            rhOf(tempC[hour] as number, mixed(gM3, outside[hour] as number)),
          )
        : null,
    rhErrorPercent:
      outlook.rhErrorPercent && outdoors.rhErrorPercent
        ? outlook.rhErrorPercent.map((error, hour) =>
            Math.max(error, outdoors.rhErrorPercent?.[hour] as number),
          )
        : null,
  };
}
