import type { Quantity } from '../../contract/quantity.ts';
import type { Inner, Nothing } from '../phrase.ts';

/** What is wrong with a calibration, and what a comparison of sensors came to. */
export interface CalibrationSentences {
  'points-too-close': { apart: number; quantity: Quantity };
  'gain-too-far': { gain: number };
  'correction-too-far': { add: number };
  'calibration-kind/battery': Nothing;
  'calibration-kind/salts': Nothing;
  'calibration-kind/ice-point': Nothing;
  'calibration-kind/test-resistor': Nothing;
  'calibration-kind/resistance': Nothing;
  'compared/no-readings': { quantity: Quantity; sensors: string[] };
  'compared/too-short': { hours: number; leastHours: number };
  'compared/not-steady': { quantity: Quantity; steadyHours: number; hours: number };
  'compared/only-two': { difference: number; quantity: Quantity };
  'compared/no-majority': { difference: number; quantity: Quantity };
  'compared/together': { sensors: number; difference: number; quantity: Quantity };
  /** `odd`: each an `odd-one`. */
  'compared/odd': { odd: Inner[] };
  'odd-one/wanders': { sensor: string };
  'odd-one/above': { sensor: string; difference: number; quantity: Quantity };
  'odd-one/below': { sensor: string; difference: number; quantity: Quantity };
}
