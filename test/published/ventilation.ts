/*
 * Dilution ventilation, worked examples in the units they are printed in.
 *
 * Source: formula read in a university course's copy of the handbook forms; the numbers from ACGIH,
 * Industrial Ventilation, dilution chapters, from memory, recomputed and consistent. The constant 403
 * (cubic feet of vapour per pint and unit of specific gravity over molar mass) holds at 70 °F.
 */

/** m³ in a cubic foot, L in a US pint. **Source:** exact definitions. */
export const M3_PER_CUBIC_FOOT = 0.028316846592;
export const LITRES_PER_PINT = 0.473176473;
/** 70 °F in kelvin over 25 °C in kelvin: a printed volume flow grows by this on the way to ours. */
export const WARMER_THAN_70F = 298.15 / 294.26;

/** Steady release and the fresh air that holds it at a limit (mixing factor 1). */
export const DILUTION_EXAMPLES = [
  {
    id: 'V1',
    solvent: 'methyl chloroform',
    pintsPerHour: 1.5,
    specificGravity: 1.32,
    molarMass: 133.4,
    limitPpm: 350,
    cubicFeetPerMinute: 285,
  },
  {
    // printed with a factor of 10 under the explosive limit of 1 % and 0.7 for warm air: 700 ppm
    id: 'V2',
    solvent: 'xylol',
    pintsPerHour: 2,
    specificGravity: 0.88,
    molarMass: 106,
    limitPpm: 700,
    cubicFeetPerMinute: 159,
  },
] as const;

/** Build-up from clean air at a steady release: minutes until the limit. */
export const BUILD_UP_EXAMPLE = {
  id: 'V3',
  roomCubicFeet: 100_000,
  freshAirCubicFeetPerMinute: 2000,
  vapourCubicFeetPerMinute: 1.2,
  limitPpm: 200,
  minutes: 20.3,
} as const;

/** Share of the air replaced after one air change, %. **Source:** a public page on air changes, read. */
export const REPLACED_AFTER_ONE_CHANGE_PERCENT = 63.2;

/** Turpentine. **Source:** NIOSH Pocket Guide 0648 (conversion); own calculation (the closed room). */
export const TURPENTINE_CHECKS = {
  mgPerM3PerPpm: 5.56,
  closedRoom: { grams: 100, volumeM3: 60, mgPerM3: 1667, ppm: 299 },
} as const;
