import { positive, within } from './argument-range.ts';
import { lagWeights } from './lagged-response.ts';
import { equilibriumMoistureContent } from './wood.ts';

/** Air at the board. */
export type BoardAir = {
  /** UTC epoch, ms */
  readonly at: number;
  readonly tempC: number;
  readonly rhPercent: number;
};

/** Through how many broad faces a board gives off and takes up moisture. */
export type BoardShape = {
  readonly thicknessMm: number;
  /** 2 in stick, 1 when the other face is closed (against a wall, or sealed) */
  readonly openFaces: 1 | 2;
  /** how many times slower than bare wood, 1 or more; default 1 */
  readonly coatingFactor?: number | undefined;
};

/** Diffusion of moisture across the grain of softwood, m²/s at room temperature. **Source:** middle of the figures in wood-drying texts (1 to 5 · 10⁻¹⁰), from memory; an estimate. */
const DIFFUSIVITY_M2_PER_S = 2.5e-10;
const MS_PER_HOUR = 3_600_000;
const SECONDS_PER_HOUR = 3600;

/**
 * Estimate of the time in which a board goes 63 % of its way to equilibrium.
 *
 * @param shape - thickness in mm (1 to 300), open faces, slowing by a coating
 * @returns hours; an estimate, right within a factor of about two
 * @throws RangeError outside the range
 *
 * **Source:** slowest mode of diffusion through a slab, τ = L²/(π²·D), L the thickness between open
 * faces (twice it with one face closed): any text on diffusion; D see the constant.
 */
export function estimatedBoardLagHours(shape: BoardShape): number {
  within('thicknessMm', shape.thicknessMm, 1, 300);
  const factor = within('coatingFactor', shape.coatingFactor ?? 1, 1, 1000);
  const pathM = (shape.thicknessMm / 1000) * (shape.openFaces === 2 ? 1 : 2);
  const seconds = (pathM * pathM) / (Math.PI * Math.PI * DIFFUSIVITY_M2_PER_S);
  return (factor * seconds) / SECONDS_PER_HOUR;
}

/**
 * Estimate of a board's mean moisture where it has no probe: a first-order lag behind the air's equilibrium.
 *
 * @param startPercent - moisture at the first reading, % of oven-dry mass, 0 to 40
 * @param air - readings ascending by `at`; between them the equilibrium runs straight
 * @param lagHours - see {@link estimatedBoardLagHours}, above 0
 * @returns % of oven-dry mass at the last reading; the start where there are no readings
 * @throws RangeError outside the range or on readings out of order
 *
 * **Source:** lag with straight-line input in closed form; equilibrium from
 * {@link equilibriumMoistureContent}. An estimate: it knows nothing of rain, glue or heartwood.
 */
export function estimatedBoardMoisture(
  startPercent: number,
  air: readonly BoardAir[],
  lagHours: number,
): number {
  let moisture = within('startPercent', startPercent, 0, 40);
  positive('lagHours', lagHours);
  let before: { at: number; equilibrium: number } | null = null;
  for (const { at, tempC, rhPercent } of air) {
    const equilibrium = equilibriumMoistureContent(tempC, rhPercent);
    if (before !== null) {
      if (!(at >= before.at)) {
        throw new RangeError(`at is ${at}; allowed: not before ${before.at}`);
      }
      const { kept, start, end } = lagWeights((at - before.at) / MS_PER_HOUR / lagHours);
      moisture = kept * moisture + start * before.equilibrium + end * equilibrium;
    }
    before = { at, equilibrium };
  }
  return moisture;
}
