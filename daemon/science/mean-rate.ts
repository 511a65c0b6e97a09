import { GAS_CONSTANT, ZERO_C_K } from './air.ts';
import { meanOver } from './gauss-legendre.ts';

/**
 * Mean of max(0, x) while x runs straight from one value to another.
 *
 * @param from - first value
 * @param to - last value
 * @returns the mean, exact also where the line crosses 0
 */
export function meanAboveZero(from: number, to: number): number {
  if (from >= 0 && to >= 0) return (from + to) / 2;
  if (from <= 0 && to <= 0) return 0;
  const above = Math.max(from, to);
  return (above * above) / (2 * Math.abs(to - from));
}

/**
 * Arrhenius factor between two temperatures, unchecked.
 *
 * @param tempC - temperature, °C
 * @param energy - activation energy, J/mol
 * @param referenceC - temperature at which the factor is 1, °C
 * @returns relative rate
 *
 * **Source:** Arrhenius law.
 */
export function arrheniusFactor(tempC: number, energy: number, referenceC: number): number {
  const inverseK = 1 / (tempC + ZERO_C_K) - 1 / (referenceC + ZERO_C_K);
  return Math.exp((-energy / GAS_CONSTANT) * inverseK);
}

/**
 * Mean Arrhenius factor while the temperature runs straight from one value to another.
 *
 * @param energy - activation energy, J/mol
 * @param referenceC - temperature at which the factor is 1, °C
 * @param fromTempC - first temperature, °C
 * @param toTempC - last temperature, °C
 * @returns the mean, good to 1e-8
 */
export function meanArrhenius(
  energy: number,
  referenceC: number,
  fromTempC: number,
  toTempC: number,
): number {
  if (fromTempC === toTempC) return arrheniusFactor(fromTempC, energy, referenceC);
  return meanOver(
    (tempC) => arrheniusFactor(tempC, energy, referenceC),
    fromTempC,
    toTempC,
    arrheniusPanels(energy, fromTempC, toTempC),
  );
}

/**
 * Panels so that the exponent changes by at most 2 in each, where the five-point rule is good to 1e-8.
 *
 * @param energy - activation energy, J/mol
 * @param fromTempC - first temperature, °C
 * @param toTempC - last temperature, °C
 * @returns 1 or more
 */
export function arrheniusPanels(energy: number, fromTempC: number, toTempC: number): number {
  const coldestK = Math.min(fromTempC, toTempC) + ZERO_C_K;
  const steepest = energy / (GAS_CONSTANT * coldestK * coldestK);
  return Math.max(1, Math.ceil((steepest * Math.abs(toTempC - fromTempC)) / 2));
}
