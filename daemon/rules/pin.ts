import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';
/**
 * What is wrong with a PIN that is to be set, as a sentence; null when nothing is.
 *
 * @param pin - as `tidyPin` makes it
 */
export function pinFault(pin: string): Said | null {
  const signs = [...pin];
  if (signs.length < 6) return sentence('pin-too-short', {});
  if (new Set(signs).size < 3) return sentence('pin-repeats', {});
  const steps = signs.slice(1).map((sign, index) => codeOf(sign) - codeOf(signs[index]));
  const [first] = steps;
  if (Math.abs(first ?? 0) === 1 && steps.every((step) => step === first)) {
    return sentence('pin-in-a-row', {});
  }
  return null;
}

const codeOf = (sign: string | undefined): number => sign?.codePointAt(0) ?? 0;

/** A PIN as it is compared: whatever keyboard it was typed on. */
export function tidyPin(typed: string): string {
  return typed.normalize('NFKC').trim();
}

/** Letters and figures that are not taken for one another when read from a screen or a log. */
export const codeSigns = '23456789ABCDEFGHJKMNPQRSTVWXYZ';

/** A code as it is compared: in capitals, without the dashes it is shown with. */
export function tidyCode(typed: string): string {
  return typed.normalize('NFKC').toUpperCase().replace(/[\s-]/g, '');
}

/** A code as it is shown: in groups of four. */
export function shownCode(code: string): string {
  return code.match(/.{1,4}/g)?.join('-') ?? code;
}
