import { GAS_CONSTANT, STANDARD_PRESSURE_PA, ZERO_C_K } from './air.ts';
import { positive, within } from './argument-range.ts';

/** Solvent that leaves a coat in a room. */
export type SolventRelease = {
  /** solvent in the coat, L, 0 or more */
  readonly litres: number;
  /** density, kg/L */
  readonly densityKgPerL: number;
  /** molar mass, g/mol */
  readonly molarMassGPerMol: number;
  /** volume of the room, m³ */
  readonly volumeM3: number;
  /** air changed for fresh air, times the volume per hour, 0 or more */
  readonly airChangesPerHour: number;
  /** time after which 63 % has left the coat, h */
  readonly releaseHours: number;
};

/** A vapour concentration in both usual units. */
export type VapourConcentration = { readonly mgPerM3: number; readonly ppm: number };

/** Temperature at which ppm and mg/m³ are exchanged, °C. **Source:** usual for exposure limits (NIOSH Pocket Guide: 24.45 L/mol at 25 °C and 1 atm). */
const PPM_TEMPERATURE_C = 25;
/** Volume of a mole of vapour there, L. */
const LITRES_PER_MOLE =
  (1000 * GAS_CONSTANT * (PPM_TEMPERATURE_C + ZERO_C_K)) / STANDARD_PRESSURE_PA;
/** Air changes beyond which no room is ventilated; the search for a limit stops here. */
const MOST_AIR_CHANGES = 1e6;

/**
 * Turpentine as a vapour. The limits are figures for comparison; local rules and the product's own
 * safety data sheet go first, and the lowest that applies governs.
 */
export const TURPENTINE = {
  /** g/mol. **Source:** NIOSH Pocket Guide 0648 (136); pinenes C10H16 are 136.23. */
  molarMassGPerMol: 136.23,
  /** kg/L at 25 °C. **Source:** reference page, 0.854 to 0.868; NIOSH Pocket Guide 0.86. */
  densityKgPerL: 0.86,
  /** ppm over a working day, the lowest published; a sensitiser. **Source:** ACGIH TLV-TWA as given at haz-map.com (the book was not seen). */
  lowestDayLimitPpm: 20,
  /** ppm over a working day. **Source:** NIOSH REL and OSHA PEL, NIOSH Pocket Guide 0648. */
  officialDayLimitPpm: 100,
  /** ppm at which a person must leave at once. **Source:** NIOSH IDLH table. */
  immediateDangerPpm: 800,
  /** ppm at which the vapour can be set alight (0.8 % by volume). **Source:** NIOSH Pocket Guide 0648. */
  lowerExplosiveLimitPpm: 8000,
  /** °C above which the liquid gives off enough vapour to be set alight. **Source:** NIOSH Pocket Guide 0648. */
  flashPointC: 35,
} as const;

/**
 * Vapour concentration in ppm from its mass concentration, at 25 °C and 101.325 kPa.
 *
 * @param mgPerM3 - mg/m³, 0 or more
 * @param molarMassGPerMol - g/mol, above 0
 * @returns parts per million by volume
 * @throws RangeError outside the range
 *
 * **Source:** ideal gas law.
 */
export function ppmFromMgPerM3(mgPerM3: number, molarMassGPerMol: number): number {
  within('mgPerM3', mgPerM3, 0, Number.MAX_VALUE);
  return (mgPerM3 * LITRES_PER_MOLE) / positive('molarMassGPerMol', molarMassGPerMol);
}

/**
 * Mass concentration of a vapour from ppm, at 25 °C and 101.325 kPa.
 *
 * @param ppm - parts per million by volume, 0 or more
 * @param molarMassGPerMol - g/mol, above 0
 * @returns mg/m³
 * @throws RangeError outside the range
 *
 * **Source:** ideal gas law.
 */
export function mgPerM3FromPpm(ppm: number, molarMassGPerMol: number): number {
  within('ppm', ppm, 0, Number.MAX_VALUE);
  return (ppm * positive('molarMassGPerMol', molarMassGPerMol)) / LITRES_PER_MOLE;
}

/** Concentration that all the solvent at once would give, mg/m³. */
function undilutedMgPerM3(release: Omit<SolventRelease, 'airChangesPerHour'>): number {
  within('litres', release.litres, 0, 1e9);
  positive('densityKgPerL', release.densityKgPerL);
  positive('volumeM3', release.volumeM3);
  positive('releaseHours', release.releaseHours);
  positive('molarMassGPerMol', release.molarMassGPerMol);
  return (release.litres * release.densityKgPerL * 1e6) / release.volumeM3;
}

/** Share of the solvent still in the air after so many hours: source e^(−t/τ)/τ, loss n. */
function airborneShare(airChanges: number, releaseHours: number, hours: number): number {
  const release = 1 / releaseHours;
  const apart = Math.abs(airChanges - release) * hours;
  const slower = Math.exp(-Math.min(airChanges, release) * hours);
  // (e^(−at) − e^(−bt))/(b − a) without cancelling when both rates are alike
  const spread = apart < 1e-12 ? hours : (hours * -Math.expm1(-apart)) / apart;
  return release * slower * spread;
}

/** Hours after which the concentration is highest; infinite in a closed room. */
function peakHours(airChanges: number, releaseHours: number): number {
  if (airChanges === 0) return Number.POSITIVE_INFINITY;
  const relative = airChanges * releaseHours - 1;
  if (Math.abs(relative) < 1e-9) return releaseHours;
  return (releaseHours * Math.log1p(relative)) / relative;
}

/**
 * Solvent vapour in the air of a well-mixed room while a coat gives it off.
 *
 * @param release - what evaporates, and the room
 * @param hours - time since the coat was laid, h, 0 or more
 * @returns mg/m³, and ppm at 25 °C and 101.325 kPa; an estimate: near the boards, low down and in
 *   corners it is higher, and it is no gas alarm
 * @throws RangeError outside the range
 *
 * **Source:** closed solution of V·dC/dt = (M/τ)·e^(−t/τ) − n·V·C from an empty room; room and
 * source as usual in dilution ventilation, own algebra.
 */
export function solventConcentration(release: SolventRelease, hours: number): VapourConcentration {
  const undiluted = undilutedMgPerM3(release);
  const airChanges = within('airChangesPerHour', release.airChangesPerHour, 0, MOST_AIR_CHANGES);
  within('hours', hours, 0, 1e9);
  const mgPerM3 = undiluted * airborneShare(airChanges, release.releaseHours, hours);
  return { mgPerM3, ppm: ppmFromMgPerM3(mgPerM3, release.molarMassGPerMol) };
}

/**
 * The highest concentration a coat's solvent reaches, and when.
 *
 * @param release - what evaporates, and the room
 * @returns mg/m³, ppm, and the hours after which it is reached; in a closed room all of it stays
 *   and the hours are infinite
 * @throws RangeError outside the range
 *
 * **Source:** maximum of the same closed solution.
 */
export function peakConcentration(
  release: SolventRelease,
): VapourConcentration & { readonly afterHours: number } {
  const undiluted = undilutedMgPerM3(release);
  const airChanges = within('airChangesPerHour', release.airChangesPerHour, 0, MOST_AIR_CHANGES);
  const afterHours = peakHours(airChanges, release.releaseHours);
  const share =
    afterHours === Number.POSITIVE_INFINITY
      ? 1
      : airborneShare(airChanges, release.releaseHours, afterHours);
  const mgPerM3 = undiluted * share;
  return { mgPerM3, ppm: ppmFromMgPerM3(mgPerM3, release.molarMassGPerMol), afterHours };
}

/**
 * Mean concentration from the coating to a later hour, as limits over a working day are written.
 *
 * @param release - what evaporates, and the room
 * @param hours - length of the stay from the coating on, h, above 0
 * @returns mg/m³ and ppm
 * @throws RangeError outside the range
 *
 * **Source:** integral of the balance itself: what has been given off, less what is still in the
 * air, has left with n·V times the mean.
 */
export function meanConcentration(release: SolventRelease, hours: number): VapourConcentration {
  const undiluted = undilutedMgPerM3(release);
  const airChanges = within('airChangesPerHour', release.airChangesPerHour, 0, MOST_AIR_CHANGES);
  positive('hours', hours);
  const tau = release.releaseHours;
  const given = -Math.expm1(-hours / tau);
  const inAir = airborneShare(airChanges, tau, hours);
  const share =
    airChanges * hours > 1e-3
      ? (given - inAir) / (airChanges * hours)
      : // almost closed: the difference above would cancel; what was given off stays
        1 - (tau / hours) * given;
  const mgPerM3 = undiluted * share;
  return { mgPerM3, ppm: ppmFromMgPerM3(mgPerM3, release.molarMassGPerMol) };
}

/**
 * Air changes per hour at which the concentration never passes a limit.
 *
 * @param input - what evaporates, the room, and `limitPpm` above 0 (at 25 °C and 101.325 kPa)
 * @returns air changes per hour, 0 where even a closed room stays below; for a room that is not
 *   well mixed common practice multiplies by 3 to 10
 * @throws RangeError outside the range, or when no ventilation would do
 *
 * **Source:** inverse of {@link peakConcentration}; the mixing factor from dilution-ventilation
 * handbooks, from memory.
 */
export function airChangesForLimit(
  input: Omit<SolventRelease, 'airChangesPerHour'> & { readonly limitPpm: number },
): number {
  const limitPpm = positive('limitPpm', input.limitPpm);
  const peakAt = (airChangesPerHour: number) =>
    peakConcentration({ ...input, airChangesPerHour }).ppm;
  if (peakAt(0) <= limitPpm) return 0;
  let low = 0;
  let high = 1;
  while (peakAt(high) > limitPpm) {
    if (high === MOST_AIR_CHANGES) {
      throw new RangeError(
        `limitPpm is ${limitPpm}; allowed: at least ${peakAt(MOST_AIR_CHANGES)} for this release`,
      );
    }
    low = high;
    high = Math.min(2 * high, MOST_AIR_CHANGES);
  }
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (peakAt(middle) > limitPpm) low = middle;
    else high = middle;
  }
  return high;
}
