import { type Refused, refuse, shown } from './refusal.ts';

export type ReadNumber = { readonly kind: 'number'; readonly value: number } | Refused;

// Linear in the length of the text: no part can match in two ways.
const decimalNumber = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;
const notFinite = /^[+-]?(?:nan|inf|infinity)$/i;
const decimalComma = /^[+-]?\d+,\d+$/;
const startsWithNumber = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?(?![\d.,xX])/;

/**
 * Reads a payload that is one decimal number, such as `21.5`, `-3` or `2.15e1`, spaces around it allowed.
 * @param text the payload, any text
 * @returns the number, which is infinite when the text is beyond the range of a double
 */
export function plainNumber(text: string): ReadNumber {
  const word = text.trim();
  if (decimalNumber.test(word)) return { kind: 'number', value: Number(word) };
  if (notFinite.test(word)) {
    return refuse({
      code: 'value-not-finite',
      detail: `The payload is ${shown(word)}, which is not a finite number; send nothing when the sensor gives no reading.`,
    });
  }
  return refuse({
    code: 'payload-not-a-number',
    detail: `The payload ${shown(word)} is not a decimal number${whatToDo(word)}.`,
  });
}

function whatToDo(word: string): string {
  if (word.startsWith('"')) return '; send the number without quotation marks';
  if (decimalComma.test(word)) return '; write it with a decimal point instead of the comma';
  if (startsWithNumber.test(word)) {
    return ' alone; send the number without anything after it, in the unit of the quantity';
  }
  return '; send a number such as 21.5, or JSON such as {"value":21.5}';
}
