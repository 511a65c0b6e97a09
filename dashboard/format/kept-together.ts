/** Units as they stand after a figure; longer ones first, so that “mm” is not taken for “m”. */
const units = [
  ...[
    '°C·h',
    '°F·h',
    '°C',
    '°F',
    'g/m³',
    'kg/L',
    'lb/gal',
    'm²/L',
    'ft²/gal',
    'm²',
    'm³',
    'ft²',
    'ft³',
  ],
  ...['fl oz', 'mm', 'cm', 'km', 'mL', 'kg', 'lb', 'oz', 'qt', 'gal', 'ppm', 'min', 'in', 'ft'],
  ...['K', '%', 'h', 's', 'm', 'L', 'g', 't'],
];
const figureAndUnit = new RegExp(`(\\d) (${units.join('|')})(?![\\p{L}\\p{N}])`, 'gu');
const NO_BREAK = '\u00a0';

/** The same text, in which no line ends between a figure and its unit. */
export function keptTogether(text: string): string {
  return text.replace(
    figureAndUnit,
    (_, figure: string, unit: string) => figure + NO_BREAK + unit.replace(' ', NO_BREAK),
  );
}
