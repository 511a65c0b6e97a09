import { equilibriumMoistureContent } from '../../../daemon/science/wood.ts';

/** Boards on a rack; their own moisture is what makes a rack damper than its room. */
export interface Load {
  readonly dryMassKg: number;
  /** of the inner wood, % of oven-dry mass */
  readonly moisturePercent: number;
  /** of the thin layer that the air reaches within hours, % of oven-dry mass */
  readonly surfacePercent: number;
}

/** Part of the boards' mass that is surface: a millimetre on each side of 22 mm. Assumption. */
const SURFACE_SHARE = 0.09;
/** Hours in which the surface follows the air by two thirds. Assumption. */
const SURFACE_HOURS = 6;
/** Hours in which the inner wood follows the surface by two thirds. Assumption. */
const INNER_HOURS = 400;
const HOUR_S = 3600;
const G_PER_KG_PERCENT = 10;

/** Boards that have long lain in one air. */
export function restedLoad(dryMassKg: number, moisturePercent: number): Load {
  return { dryMassKg, moisturePercent, surfacePercent: moisturePercent };
}

/**
 * Water held by boards.
 *
 * @returns g
 */
export function waterInLoad({ dryMassKg, moisturePercent, surfacePercent }: Load): number {
  const mean = SURFACE_SHARE * surfacePercent + (1 - SURFACE_SHARE) * moisturePercent;
  return dryMassKg * G_PER_KG_PERCENT * mean;
}

/**
 * Lets boards give off or take up moisture for a short while.
 *
 * @param load - before
 * @param air - around them; `rhPercent` 0 to 100
 * @param dtS - s, short against the hours above
 * @returns the boards after, and what they gave to the air, g; what they held is what they hold and
 *   gave, to rounding
 */
export function exchangeMoisture(
  load: Load,
  air: { readonly tempC: number; readonly rhPercent: number },
  dtS: number,
): { load: Load; gaveG: number } {
  const { dryMassKg, moisturePercent, surfacePercent } = load;
  const restPercent = equilibriumMoistureContent(air.tempC, air.rhPercent);
  const outPercent = ((surfacePercent - restPercent) * dtS) / (SURFACE_HOURS * HOUR_S);
  const innerLost = ((moisturePercent - surfacePercent) * dtS) / (INNER_HOURS * HOUR_S);
  return {
    load: {
      dryMassKg,
      moisturePercent: moisturePercent - innerLost,
      surfacePercent:
        surfacePercent - outPercent + (innerLost * (1 - SURFACE_SHARE)) / SURFACE_SHARE,
    },
    gaveG: dryMassKg * G_PER_KG_PERCENT * SURFACE_SHARE * outPercent,
  };
}
