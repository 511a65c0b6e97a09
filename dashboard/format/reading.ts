import type { Quantity } from '../../daemon/contract/quantity.ts';
import { quantityUnits } from '../../daemon/wording/quantity-units.ts';
import type { Figures } from './reader-figures.ts';
import { toReaders, type UnitSystem } from './units.ts';

/** In whose figures and units a reading is said. */
export interface Scale {
  readonly figures: Figures;
  readonly units: UnitSystem;
}

const ohmSteps = [
  [1e9, 'GΩ'],
  [1e6, 'MΩ'],
  [1e3, 'kΩ'],
] as const;

/** Finer than any sensor of a shed tells the truth. */
const TEMPERATURE_DECIMALS = 2;
const SHIFT_DECIMALS = 2;

/** Whether a quantity is a temperature: those alone have another unit for a US reader. */
export function isTemperature(quantity: Quantity): boolean {
  return quantity === 'air-temperature' || quantity === 'surface-temperature';
}

/** The unit of a quantity, as the reader has it: “°C”. */
export function unitOfQuantity(quantity: Quantity, { figures }: Pick<Scale, 'figures'>): string {
  return isTemperature(quantity) ? figures.unit('tempC') : quantityUnits[quantity];
}

/** The unit in which two readings of a quantity lie apart: “K” for temperatures. */
export function unitOfShift(quantity: Quantity, { figures }: Pick<Scale, 'figures'>): string {
  return isTemperature(quantity) ? figures.unit('differenceK') : quantityUnits[quantity];
}

/** A reading with its unit, for example “18.4 °C”; resistances as people say them, “55.4 MΩ”. */
export function reading(quantity: Quantity, value: number, { figures, units }: Scale): string {
  if (isTemperature(quantity)) {
    const figure = toReaders('tempC', value, units);
    return `${figures.number(figure, TEMPERATURE_DECIMALS)} ${figures.unit('tempC')}`;
  }
  const unit = quantityUnits[quantity];
  if (quantity !== 'wood-resistance') return `${figures.number(value)} ${unit}`;
  const [size, word] = ohmSteps.find(([from]) => value >= from) ?? [1, unit];
  return `${figures.number(Number((value / size).toPrecision(3)))} ${word}`;
}

/** How far two readings lie apart, with its sign and without its unit: “+0.30”. */
export function shift(quantity: Quantity, difference: number, by: Scale): string {
  const text = spread(quantity, difference, by);
  return text.startsWith('−') ? text : `+${text}`;
}

/** The same for what has no sign: “0.12”. */
export function spread(quantity: Quantity, difference: number, { figures, units }: Scale): string {
  const figure = isTemperature(quantity) ? toReaders('differenceK', difference, units) : difference;
  return figures.number(figure, SHIFT_DECIMALS, SHIFT_DECIMALS);
}

/**
 * What a calibration does to what is sent: “+0.30 K”, “× 1.020 +0.30 °C”; of resistances, whose
 * logarithms are corrected, the factor that an offset is.
 *
 * @param gain - the corrected value is gain × sent + add, in metric units
 */
export function correction(quantity: Quantity, gain: number, add: number, by: Scale): string {
  const { figures, units } = by;
  if (quantity === 'wood-resistance') {
    return `× ${figures.number(Number((10 ** add).toPrecision(3)))}`;
  }
  if (gain === 1) return `${shift(quantity, add, by)} ${unitOfShift(quantity, by)}`;
  // On a scale with another zero a line has another offset: F = g·F₀ + (32 − 32·g) + 1.8·a.
  const zero = toReaders('tempC', 0, units);
  const own = isTemperature(quantity) ? toReaders('tempC', add, units) - gain * zero : add;
  const offset = figures.number(own, SHIFT_DECIMALS, SHIFT_DECIMALS);
  const signed = offset.startsWith('−') ? offset : `+${offset}`;
  return `× ${figures.number(gain, 3, 3)} ${signed} ${unitOfQuantity(quantity, by)}`;
}
