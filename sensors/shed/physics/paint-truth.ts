import type { Gate } from '../../../daemon/contract/gate.ts';

/**
 * How a paint really cures, hidden from whoever only reads sensors. Nothing happens while its driers
 * use up what slows them; then two first-order steps of unequal rate, each with an own answer to
 * warmth, and to damp, light and air together.
 */
export interface PaintTruth {
  /** hours at the reference before anything sets */
  readonly lagHours: number;
  /** of the two steps, at the reference */
  readonly firstPerHour: number;
  readonly secondPerHour: number;
  readonly lagEnergyJPerMol: number;
  readonly stepEnergyJPerMol: number;
  /** change of both rates per % of humidity above the reference; its sign depends on the drier */
  readonly perHumidityPercent: number;
  /** what full daylight adds, as a share */
  readonly lightGain: number;
  /** what perfectly still air takes away, as a share */
  readonly stillAirLoss: number;
  /** share cured at which the hand test of a job passes */
  readonly passesAt: Readonly<Record<Gate, number>>;
}

/** The air and light at a board. */
export interface BoardAir {
  readonly tempC: number;
  readonly rhPercent: number;
  /** share of an overhead sun */
  readonly light: number;
  /** how often the air about the board is renewed, per hour */
  readonly renewalsPerHour: number;
}

/** How far a board has come: hours of the lag gone, and hours in the two steps, at the reference. */
export interface CureState {
  readonly lagHours: number;
  readonly stepHours: number;
}

export const UNCURED: CureState = { lagHours: 0, stepHours: 0 };

/** The reference: the air that a tin’s label has in mind. Common practice, no source. */
const REFERENCE_C = 20;
const REFERENCE_RH_PERCENT = 55;
/** J/(mol·K). **Source:** CODATA 2018. */
const GAS_CONSTANT = 8.314462618;
const ZERO_C_K = 273.15;
/** Renewals per hour at which still air has lost two thirds of its hold. Assumption. */
const RENEWED_PER_HOUR = 8;
/** Above this the film cures slower, down to this share at saturation. Assumption. */
const DAMP = { fromPercent: 85, shareAtSaturation: 0.7 } as const;

/**
 * The invented paint in its middling form.
 *
 * **Source:** the form (a lag, then two steps) and the order of size from fits to the oxygen-uptake
 * tables of Gardner 1911, Paint Technology and Tests, ch. II (lags of 0.9 to 6.4 d, rates of 0.9 to
 * 2.4 per day, older driers); a shorter lag so that a coat takes two to three days (common practice,
 * no source). Activation energies: between the 40 to 70 kJ/mol that published figures suggest.
 * Everything else: assumption.
 */
export const MIDDLING_PAINT: PaintTruth = {
  lagHours: 12,
  firstPerHour: 0.12,
  secondPerHour: 0.06,
  lagEnergyJPerMol: 57_000,
  stepEnergyJPerMol: 52_000,
  perHumidityPercent: -0.002,
  lightGain: 0.15,
  stillAirLoss: 0.2,
  passesAt: { turn: 0.28, stack: 0.72, mount: 0.795, sand: 0.89, recoat: 0.85 },
};

/** Rate at a temperature relative to the reference. **Source:** Arrhenius, textbook. */
function warmth(tempC: number, energyJPerMol: number): number {
  const inverse = 1 / (REFERENCE_C + ZERO_C_K) - 1 / (tempC + ZERO_C_K);
  return Math.exp((energyJPerMol / GAS_CONSTANT) * inverse);
}

/** How fast a paint goes through its lag and its steps in an air, relative to the reference. */
export interface CurePace {
  readonly lag: number;
  readonly steps: number;
}

/**
 * The pace of a paint in an air.
 *
 * @param paint - its truth
 * @param air - at the boards
 */
export function curePace(paint: PaintTruth, air: BoardAir): CurePace {
  const { tempC, rhPercent, light, renewalsPerHour } = air;
  const dampness = Math.max(0, rhPercent - DAMP.fromPercent) / (100 - DAMP.fromPercent);
  const dew = 1 - (1 - DAMP.shareAtSaturation) * dampness;
  const humidity = Math.max(0.3, 1 + paint.perHumidityPercent * (rhPercent - REFERENCE_RH_PERCENT));
  const still = 1 - paint.stillAirLoss * Math.exp(-renewalsPerHour / RENEWED_PER_HOUR);
  const lit = 1 + paint.lightGain * light;
  return {
    lag: warmth(tempC, paint.lagEnergyJPerMol) * lit,
    steps: warmth(tempC, paint.stepEnergyJPerMol) * dew * humidity * still * lit,
  };
}

/**
 * Lets a board cure for a while.
 *
 * @param state - before
 * @param paint - its truth
 * @param pace - of this paint in the board’s air
 * @param hours - 0 or more
 * @returns the board after; the same however the while is cut
 */
export function cure(
  state: CureState,
  paint: PaintTruth,
  pace: CurePace,
  hours: number,
): CureState {
  const lagHours = state.lagHours + pace.lag * hours;
  const over = lagHours - paint.lagHours;
  if (over <= 0) return { lagHours, stepHours: state.stepHours };
  // of a while in which the lag ends, only the rest counts for the steps
  return { lagHours: paint.lagHours, stepHours: state.stepHours + (over / pace.lag) * pace.steps };
}

/**
 * Share of the film that has cured.
 *
 * @returns 0 to 1
 *
 * **Source:** closed form of A → B → C: 1 − (k₂·e^(−k₁t) − k₁·e^(−k₂t)) / (k₂ − k₁), textbook.
 */
export function shareCured({ stepHours }: CureState, paint: PaintTruth): number {
  const { firstPerHour: k1, secondPerHour: k2 } = paint;
  if (Math.abs(k2 - k1) < 1e-6 * k1) {
    return 1 - (1 + k1 * stepHours) * Math.exp(-k1 * stepHours);
  }
  const remaining = k2 * Math.exp(-k1 * stepHours) - k1 * Math.exp(-k2 * stepHours);
  return 1 - remaining / (k2 - k1);
}

/**
 * The same paint, everything in it slower or quicker by a factor.
 *
 * @param slowness - above 1 for slower
 */
export function slower(paint: PaintTruth, slowness: number): PaintTruth {
  return {
    ...paint,
    lagHours: paint.lagHours * slowness,
    firstPerHour: paint.firstPerHour / slowness,
    secondPerHour: paint.secondPerHour / slowness,
  };
}
