import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import { because, type Refused, refuse, type Source, shown } from './refusal.ts';
import { asDecimal } from './senml-unit.ts';
import { inUnitOf } from './unit.ts';

export type ReadNumber = { readonly kind: 'value'; readonly value: number } | Refused;

// Linear in the length of the text: no part can match in two ways.
const decimalNumber = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;
const notFinite = /^[+-]?(?:nan|inf|infinity)$/i;
const numberAndUnit = /^([+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)(?:[eE][+-]?\d+)?)(?:\s*(\D{1,20}))?$/u;
const unitLetters = /^[\p{L}%°℃℉/³µ][\p{L}%°℃℉/³µ ]*1?$/u;
const groupOfThree = /^[+-]?[1-9]\d{0,2},\d{3}$/;
const startsWithNumber = /^[+-]?(?:\d+(?:[.,]\d*)?|\.\d+)(?:[eE][+-]?\d+)?(?![\d.,xX])/;
/** A number with its unit is short; longer text is not looked at. */
const longestText = 64;

/** In what a bare number is, and what it is multiplied by before that. */
export type BareNumber = { readonly unit: string | null; readonly scale: number };

const asKept: BareNumber = { unit: null, scale: 1 };

/**
 * Reads text that is one number, such as `21.5`, `-3`, `2.15e1`, `21,5` or `70.3 °F`, with spaces
 * around it. A unit that stands in the text goes before the one that a bare number has.
 *
 * A comma is a decimal point, unless the text could as well mean thousands: `1,234 ppm`.
 *
 * @param text any text
 * @param source what it stood in, for a sentence
 * @returns the number in the unit of the quantity; infinite when beyond the range of a double
 */
export function numberInText(
  text: string,
  quantity: Quantity,
  source: Source,
  { unit, scale }: BareNumber = asKept,
): ReadNumber {
  const word = text.trim();
  // Nearly every payload is just this.
  if (unit === null && scale === 1 && decimalNumber.test(word)) {
    return { kind: 'value', value: Number(word) };
  }
  const inUnit = (value: number, written: string | null) =>
    inUnitOf(quantity, scale === 1 ? value : asDecimal(value * scale), written, source.spot);
  if (decimalNumber.test(word)) return inUnit(Number(word), unit);
  const { what } = source;
  if (notFinite.test(word)) {
    return refuse({
      code: 'value-not-finite',
      ...because('number-not-finite', { what, word: shown(word) }),
    });
  }
  const parts = word.length > longestText ? null : numberAndUnit.exec(word);
  const written = parts?.[2] ?? null;
  if (parts?.[1] === undefined || (written !== null && !unitLetters.test(written))) {
    return refuse({
      code: 'payload-not-a-number',
      ...because(`not-decimal/${slipIn(word)}`, { what, word: shown(word) }),
    });
  }
  const number = parts[1];
  const read = inUnit(Number(number.replace(',', '.')), written ?? unit);
  if (read.kind === 'refused' || !groupOfThree.test(number)) return read;
  const thousands = inUnit(Number(number.replace(',', '')), written ?? unit);
  return thousands.kind === 'value' &&
    canBe(quantity, read.value) &&
    canBe(quantity, thousands.value)
    ? refuse({
        code: 'payload-not-a-number',
        ...because('number-ambiguous', {
          ...{ what, word: shown(word) },
          ...{ asPoint: number.replace(',', '.'), asThousands: number.replace(',', '') },
        }),
      })
    : read;
}

function canBe(quantity: Quantity, value: number): boolean {
  const { low, high } = quantityFacts[quantity];
  return value >= low && value <= high;
}

/** What is most likely meant by text that is no number. */
function slipIn(word: string): 'quoted' | 'grouped' | 'trailing' | 'other' {
  if (word.startsWith('"')) return 'quoted';
  if (/^[+-]?[\d.,' ]+$/.test(word) && /[.,'].*[.,']/.test(word)) return 'grouped';
  return startsWithNumber.test(word) ? 'trailing' : 'other';
}
