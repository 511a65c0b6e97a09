import { CM_PER_INCH, G_PER_OUNCE, L_PER_GALLON } from './units.ts';

/** A figure with its unit; `decimals` at most are of use. */
export interface Part {
  readonly value: number;
  readonly unit: string;
  readonly decimals: number;
}

const QUARTS_PER_GALLON = 4;
const FLUID_OUNCES_PER_QUART = 32;
const OUNCES_PER_POUND = 16;
/** A tape is read to a sixteenth of an inch. */
const SIXTEENTHS = 16;
/** What rounds to a gallon or a quart is one: a tin of 3.785 L holds a gallon. */
const NEARLY = 0.999;

/**
 * A volume in the one unit that suits its size: gallons, from a quart on quarts, else fluid ounces.
 *
 * **Source:** NIST Handbook 44, appendix C (from memory): a gallon is 4 quarts or 128 fluid ounces.
 */
export function usVolume(litres: number): Part {
  const gallons = litres / L_PER_GALLON;
  if (gallons >= NEARLY) return { value: gallons, unit: 'gal', decimals: 2 };
  const quarts = gallons * QUARTS_PER_GALLON;
  if (quarts >= NEARLY) return { value: quarts, unit: 'qt', decimals: 2 };
  return { value: quarts * FLUID_OUNCES_PER_QUART, unit: 'fl oz', decimals: 1 };
}

/**
 * The same as it is poured from a can by a measuring cup: 1 gal 2 qt 5 fl oz. Below a quart to a tenth
 * of a fluid ounce, else to a whole one.
 */
export function usPoured(litres: number): readonly Part[] {
  const ounces = (litres / L_PER_GALLON) * QUARTS_PER_GALLON * FLUID_OUNCES_PER_QUART;
  const whole = Math.round(ounces);
  if (whole < FLUID_OUNCES_PER_QUART) return [{ value: ounces, unit: 'fl oz', decimals: 1 }];
  const quarts = Math.floor(whole / FLUID_OUNCES_PER_QUART);
  return some([
    { value: Math.floor(quarts / QUARTS_PER_GALLON), unit: 'gal', decimals: 0 },
    { value: quarts % QUARTS_PER_GALLON, unit: 'qt', decimals: 0 },
    { value: whole % FLUID_OUNCES_PER_QUART, unit: 'fl oz', decimals: 0 },
  ]);
}

/**
 * A mass as a kitchen scale shows it: 2 lb 11.5 oz.
 *
 * **Source:** NIST Handbook 44, appendix C (from memory): an avoirdupois pound is 16 ounces.
 */
export function usWeighed(grams: number): readonly Part[] {
  const tenths = Math.round((grams / G_PER_OUNCE) * 10);
  const pounds = Math.floor(tenths / (10 * OUNCES_PER_POUND));
  const ounces = (tenths - pounds * 10 * OUNCES_PER_POUND) / 10;
  const parts = some([
    { value: pounds, unit: 'lb', decimals: 0 },
    { value: ounces, unit: 'oz', decimals: 1 },
  ]);
  return parts.length === 0 ? [{ value: 0, unit: 'oz', decimals: 1 }] : parts;
}

/** A length in inches and the fraction that a tape shows, to a sixteenth: “5 9/16”. */
export function inchesAndFraction(lengthCm: number): string {
  const sixteenths = Math.round((lengthCm / CM_PER_INCH) * SIXTEENTHS);
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  let over = sixteenths % SIXTEENTHS;
  let under = SIXTEENTHS;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  if (over === 0) return String(whole);
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}

function some(parts: readonly Part[]): readonly Part[] {
  return parts.filter(({ value }) => value > 0);
}
