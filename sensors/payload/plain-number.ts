import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import { type Refused, refuse, shown } from './refusal.ts';
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
 * @param where where it stood, for a sentence, for example `The payload`
 * @returns the number in the unit of the quantity; infinite when beyond the range of a double
 */
export function numberInText(
  text: string,
  quantity: Quantity,
  where: string,
  { unit, scale }: BareNumber = asKept,
): ReadNumber {
  const word = text.trim();
  // Nearly every payload is just this.
  if (unit === null && scale === 1 && decimalNumber.test(word)) {
    return { kind: 'value', value: Number(word) };
  }
  const inUnit = (value: number, written: string | null) =>
    inUnitOf(
      quantity,
      scale === 1 ? value : asDecimal(value * scale),
      written,
      `in ${lowerFirst(where)}`,
    );
  if (decimalNumber.test(word)) return inUnit(Number(word), unit);
  if (notFinite.test(word)) {
    return refuse({
      code: 'value-not-finite',
      detail: `${where} is ${shown(word)}, which is not a finite number; send nothing when the sensor gives no reading.`,
    });
  }
  const parts = word.length > longestText ? null : numberAndUnit.exec(word);
  const written = parts?.[2] ?? null;
  if (parts?.[1] === undefined || (written !== null && !unitLetters.test(written))) {
    return refuse({
      code: 'payload-not-a-number',
      detail: `${where} ${shown(word)} is not a decimal number${whatToDo(word)}.`,
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
        detail: `${where} ${shown(word)} can mean ${number.replace(',', '.')} or ${number.replace(',', '')}; send it with a decimal point, or without the comma.`,
      })
    : read;
}

function canBe(quantity: Quantity, value: number): boolean {
  const { low, high } = quantityFacts[quantity];
  return value >= low && value <= high;
}

function lowerFirst(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}

function whatToDo(word: string): string {
  if (word.startsWith('"')) return '; send the number without quotation marks';
  if (/^[+-]?[\d.,' ]+$/.test(word) && /[.,'].*[.,']/.test(word)) {
    return '; send it with one decimal point and no mark between thousands';
  }
  if (startsWithNumber.test(word)) {
    return ' alone; send the number without anything after it but its unit';
  }
  return '; send a number such as 21.5, or JSON such as {"value":21.5}';
}
