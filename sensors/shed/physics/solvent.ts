/** Solvent that a fresh coat still holds and gives off. */
export interface WetCoat {
  readonly solventG: number;
}

/** Hours in which a coat gives off two thirds of its turpentine. Assumption, as nobody published it. */
export const RELEASE_HOURS = 6;
const HOUR_S = 3600;

/**
 * Solvent of a coat after a while, and what it gave to the air.
 *
 * **Source:** first-order release, textbook.
 */
export function releaseSolvent(coat: WetCoat, dtS: number): { coat: WetCoat; gaveG: number } {
  const solventG = coat.solventG * Math.exp(-dtS / (RELEASE_HOURS * HOUR_S));
  return { coat: { solventG }, gaveG: coat.solventG - solventG };
}

/**
 * Solvent in the air of a well-mixed room after a while.
 *
 * @param gM3 - before, g/m³
 * @param gaveG - given off within the step, evenly, g
 * @param room - `volumeM3`, and fresh air as changes per hour
 * @param dtS - s
 * @returns g/m³
 *
 * **Source:** well-mixed balance V·dC/dt = s − n·V·C, its exact solution.
 */
export function solventAfter(
  gM3: number,
  gaveG: number,
  room: { readonly volumeM3: number; readonly airChangesPerHour: number },
  dtS: number,
): number {
  const changes = (room.airChangesPerHour * dtS) / HOUR_S;
  const left = Math.exp(-changes);
  const kept = changes > 1e-9 ? (1 - left) / changes : 1;
  return gM3 * left + (gaveG / room.volumeM3) * kept;
}
