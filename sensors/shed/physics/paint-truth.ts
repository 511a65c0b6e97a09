import type { Gate } from '../../../daemon/contract/gate.ts';
import { arrheniusRate } from '../../../daemon/science/cure.ts';

/**
 * How one coat really cures, hidden from whoever only reads sensors: nothing at first (the driers
 * must use up what slows them), then two first-order steps of equal rate.
 */
export interface PaintTruth {
  /** hours at 20 °C before anything sets */
  readonly lagHours: number;
  /** of each of the two steps at 20 °C */
  readonly ratePerHour: number;
  readonly activationEnergyJPerMol: number;
}

/** A coat on the boards: what time has done to it, as hours at 20 °C. */
export interface CoatState {
  readonly effectiveHours: number;
}

export const FRESH_COAT: CoatState = { effectiveHours: 0 };

/**
 * The invented paint. Not the daemon's sum: another law, other constants.
 * **Source:** the form (lag, then two equal first-order steps) and the order of size from fits to
 * the oxygen-uptake tables of Gardner 1911, Paint Technology and Tests, ch. II (lags of 0.9 to
 * 6.4 d, rates of 0.9 to 2.4 per day, older driers); a shorter lag is assumed so that a coat takes
 * two to three days. Activation energy between the 40 to 70 kJ/mol that published figures suggest.
 */
export const SHED_PAINT: PaintTruth = {
  lagHours: 10,
  ratePerHour: 0.065,
  activationEnergyJPerMol: 56_000,
};

/** Share cured at which the hand test of a gate passes: assumption, no source. */
const PASSES_AT: Readonly<Record<Gate, number>> = {
  turn: 0.3,
  stack: 0.45,
  mount: 0.6,
  sand: 0.72,
  recoat: 0.8,
};

/** Above this humidity the film cures slower, down to the given share at saturation: assumption, no source. */
const DAMP = { fromPercent: 85, shareAtSaturation: 0.7 } as const;
const REFERENCE_C = 20;

/**
 * Lets a coat cure for a while.
 *
 * @param coat - before
 * @param paint - its hidden truth
 * @param air - `tempC`, and `rhPercent` 0 to 100 around the boards
 * @param dtHours - h, 0 or more
 * @returns the coat after
 */
export function cureCoat(
  coat: CoatState,
  paint: PaintTruth,
  air: { readonly tempC: number; readonly rhPercent: number },
  dtHours: number,
): CoatState {
  const rate = arrheniusRate(air.tempC, {
    activationEnergyJPerMol: paint.activationEnergyJPerMol,
    referenceC: REFERENCE_C,
  });
  const dampness = Math.max(0, air.rhPercent - DAMP.fromPercent) / (100 - DAMP.fromPercent);
  const slowed = 1 - (1 - DAMP.shareAtSaturation) * dampness;
  return { effectiveHours: coat.effectiveHours + rate * slowed * dtHours };
}

/**
 * Share of the film that has cured.
 *
 * @returns 0 to 1
 *
 * **Source:** closed form of A → B → C with equal rate k: 1 − (1 + kt)·e^(−kt).
 */
export function shareCured(coat: CoatState, paint: PaintTruth): number {
  const kt = paint.ratePerHour * Math.max(0, coat.effectiveHours - paint.lagHours);
  return 1 - (1 + kt) * Math.exp(-kt);
}

/**
 * Whether a hand test of the gate would pass on this coat.
 */
export function passesTouch(coat: CoatState, paint: PaintTruth, gate: Gate): boolean {
  return shareCured(coat, paint) >= PASSES_AT[gate];
}
