import { noValue, type Outcome, value } from './outcome.ts';

/** Two resistors between a supply and ground; the converter measures where they meet. */
export interface Divider {
  /** voltage across the whole divider, V */
  readonly supplyV: number;
  /** the known resistor, Ω */
  readonly referenceOhms: number;
  /** protection in line with the probe, Ω; 0 where there is none */
  readonly seriesOhms: number;
  /** whether the probe lies between the measured point and ground, or between supply and it */
  readonly probeTo: 'ground' | 'supply';
  /** what the converter's input itself draws, Ω to ground; null where that is beyond counting */
  readonly inputOhms: number | null;
}

/**
 * Nearer to either end of the supply than this share, offset and noise of a cheap converter are as
 * large as what is left to measure. Assumption: 1 %, so the probe is told from 1/99 to 99 times the
 * reference.
 */
export const END_SHARE = 0.01;

/**
 * Resistance of the probe from the voltage at the middle of a divider.
 *
 * @param measuredV - V against ground
 * @param divider - all resistances above 0 but `seriesOhms`, 0 or more
 * @returns Ω, above 0; no value where leads touch or hang free, or the supply is not what is said
 *
 * **Source:** the voltage divider, V = U·R2 / (R1 + R2); parallel resistance of the input.
 */
export function probeResistance(measuredV: number, divider: Divider): Outcome {
  const { supplyV, referenceOhms, seriesOhms, probeTo, inputOhms } = divider;
  const share = measuredV / supplyV;
  const toGround = probeTo === 'ground';
  if (!(share > -END_SHARE && share < 1 + END_SHARE)) {
    return noValue(
      `${measuredV.toFixed(3)} V lies outside the supply of ${supplyV} V: check supplyV and the wiring`,
    );
  }
  if (share >= 1 - END_SHARE) return noValue(toGround ? OPEN : SHORT);
  if (share <= END_SHARE) return noValue(toGround ? SHORT : OPEN);
  const inputSiemens = inputOhms === null ? 0 : 1 / inputOhms;
  // what flows through the upper leg flows on through the lower one and into the converter
  const ohms = toGround
    ? 1 / ((supplyV - measuredV) / (measuredV * referenceOhms) - inputSiemens)
    : (supplyV - measuredV) / (measuredV * (1 / referenceOhms + inputSiemens));
  // an input that draws all of it leaves nothing for the probe
  if (!(ohms > 0 && Number.isFinite(ohms))) return noValue(OPEN);
  const probe = ohms - seriesOhms;
  return probe > 0 ? value(probe) : noValue(SHORT);
}

const OPEN = 'out of range, as when a screw has lost its wire or the wood is very dry';
const SHORT = 'out of range, as when the leads touch or the wood is soaked';
