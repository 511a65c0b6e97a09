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
/** “5 9/16”: a whole number that is left alone at the end of a line is another measure. */
const wholeAndFraction = /(\d) (?=\d+\/\d)/g;
const moreOrLess = /± (?=\d)/g;
const NO_BREAK = '\u00a0';

/** The same text, in which no line ends between a figure and its unit, or within a mixed number. */
export function keptTogether(text: string): string {
  return text
    .replace(wholeAndFraction, `$1${NO_BREAK}`)
    .replace(moreOrLess, `±${NO_BREAK}`)
    .replace(
      figureAndUnit,
      (_, figure: string, unit: string) => figure + NO_BREAK + unit.replace(' ', NO_BREAK),
    );
}
