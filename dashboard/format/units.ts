/** The units a reader wants to see and to type. The daemon knows metric units alone. */
export type UnitSystem = 'metric' | 'us';

interface Unit {
  readonly unit: string;
  /** Figure in this unit = metric figure × scale + offset. */
  readonly scale: number;
  readonly offset: number;
  readonly decimals: number;
}

const metric = (unit: string, decimals: number): Unit => ({ unit, scale: 1, offset: 0, decimals });
const us = (unit: string, scale: number, decimals: number, offset = 0): Unit => ({
  unit,
  scale,
  offset,
  decimals,
});

const MM_PER_INCH = 25.4;
export const CM_PER_INCH = MM_PER_INCH / 10;
const M_PER_FOOT = 0.3048;
export const L_PER_GALLON = 3.785411784;
const KG_PER_POUND = 0.45359237;
export const G_PER_OUNCE = (KG_PER_POUND * 1_000) / 16;

/**
 * What is measured, in metric and in US customary units.
 *
 * **Source:** NIST Special Publication 811 (2008), appendix B.8: inch 25.4 mm, foot 0.3048 m, US gallon
 * 3.785 411 784 L, pound 0.453 592 37 kg (all exact; from memory), Fahrenheit by its definition.
 */
export const measures = {
  tempC: { metric: metric('°C', 1), us: us('°F', 1.8, 0, 32) },
  differenceK: { metric: metric('K', 1), us: us('°F', 1.8, 1) },
  degreeHours: { metric: metric('°C·h', 0), us: us('°F·h', 1.8, 0) },
  lengthMm: { metric: metric('mm', 0), us: us('in', 1 / MM_PER_INCH, 2) },
  lengthCm: { metric: metric('cm', 1), us: us('in', 1 / CM_PER_INCH, 2) },
  lengthM: { metric: metric('m', 1), us: us('ft', 1 / M_PER_FOOT, 1) },
  areaM2: { metric: metric('m²', 1), us: us('ft²', 1 / M_PER_FOOT ** 2, 0) },
  volumeM3: { metric: metric('m³', 0), us: us('ft³', 1 / M_PER_FOOT ** 3, 0) },
  litres: { metric: metric('L', 2), us: us('gal', 1 / L_PER_GALLON, 3) },
  spreadingM2PerL: {
    metric: metric('m²/L', 1),
    us: us('ft²/gal', L_PER_GALLON / M_PER_FOOT ** 2, 0),
  },
  filmUm: { metric: metric('µm', 0), us: us('mil', 1 / MM_PER_INCH, 1) },
  rainMm: { metric: metric('mm', 1), us: us('in', 1 / MM_PER_INCH, 2) },
  speedMPerS: { metric: metric('m/s', 1), us: us('ft/s', 1 / M_PER_FOOT, 1) },
  /** So many of something that a litre, or a gallon, is enough for. */
  perLitre: { metric: metric('1/L', 1), us: us('1/gal', L_PER_GALLON, 1) },
  massG: { metric: metric('g', 0), us: us('oz', 1 / G_PER_OUNCE, 1) },
  massKg: { metric: metric('kg', 1), us: us('lb', 1 / KG_PER_POUND, 1) },
  densityKgPerL: { metric: metric('kg/L', 3), us: us('lb/gal', L_PER_GALLON / KG_PER_POUND, 2) },
} as const satisfies Record<string, Record<UnitSystem, Unit>>;

export type Measure = keyof typeof measures;

export function unitOf(measure: Measure, units: UnitSystem): Unit {
  return measures[measure][units];
}

/** A metric figure as the reader’s. */
export function toReaders(measure: Measure, value: number, units: UnitSystem): number {
  const { scale, offset } = unitOf(measure, units);
  return value * scale + offset;
}

/** A reader’s figure as the metric one. */
export function toMetric(measure: Measure, value: number, units: UnitSystem): number {
  const { scale, offset } = unitOf(measure, units);
  return (value - offset) / scale;
}

/** Where US customary units are usual: the device’s first language names the United States. */
export function preferredUnits(wanted: readonly string[]): UnitSystem {
  return /-US\b/i.test(wanted[0] ?? '') ? 'us' : 'metric';
}
