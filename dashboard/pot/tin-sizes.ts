import { toMetric, type UnitSystem } from '../format/units.ts';

/** Sizes that tins are usually sold in, as they are typed. Assumptions: the reader changes them. */
export const usualTins = {
  metric: { paint: '10 5 1', oil: '5 1', turpentine: '1' },
  us: { paint: '5 1 0.25', oil: '1 0.25', turpentine: '1 0.25' },
} as const satisfies Record<UnitSystem, Record<'paint' | 'oil' | 'turpentine', string>>;

/** Primer that is kept for cut ends, L: a litre, or a quart. Common practice, no source. */
export const usualKeptPrimerL: Readonly<Record<UnitSystem, number>> = {
  metric: 1,
  us: toMetric('litres', 0.25, 'us'),
};

/** The daemon takes litres with three decimals. */
const ML_PER_LITRE = 1_000;

/**
 * Sizes as the daemon reads them: a person writes “10; 5; 2,5” in litres or gallons, the daemon reads
 * “10,5,2.5” in litres. What is no number is passed on, so that the daemon names the field.
 *
 * @returns undefined where nothing was typed
 */
export function tinSizes(typed: string, units: UnitSystem): string | undefined {
  const sizes = typed
    .split(/[;\s]+/)
    .filter((size) => size !== '')
    .map((size) => inLitres(size.replace(',', '.'), units));
  return sizes.length === 0 ? undefined : sizes.join(',');
}

function inLitres(size: string, units: UnitSystem): string {
  const figure = Number(size);
  if (units === 'metric' || Number.isNaN(figure)) return size;
  return String(Math.round(toMetric('litres', figure, units) * ML_PER_LITRE) / ML_PER_LITRE);
}
