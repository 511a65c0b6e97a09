import type { Quantity } from '../contract/quantity.ts';

/**
 * How many digits a figure is given: so many decimals; `as-set`, what somebody set and knows as
 * he wrote it (5, not 5.0); `two-figures`, an estimate of which no more is known.
 */
export type Digits = number | 'as-set' | 'two-figures';

/** Figures in the reader’s units. What a name says comes in; how many digits may be left out. */
export interface Measures {
  /** One decimal unless said otherwise. */
  temperature(tempC: number, digits?: Digits): string;
  /** A distance between two temperatures. One decimal unless said otherwise. */
  temperatureDifference(differenceK: number, digits?: Digits): string;
  /** Whole percents unless said otherwise. */
  humidity(rhPercent: number, digits?: Digits): string;
  /** Of timber, % of oven-dry mass. One decimal unless said otherwise. */
  moisture(percent: number, digits?: Digits): string;
  /** A share or a charge. Whole percents unless said otherwise. */
  percent(percent: number, digits?: Digits): string;
  /** Cure, °C·h. Whole ones unless said otherwise. */
  degreeHours(degreeHours: number, digits?: Digits): string;
  /** A small size, such as the thickness of a board. As set unless said otherwise. */
  length(lengthMm: number, digits?: Digits): string;
  /** A mark on a stick, in a larger unit than `length`. One decimal unless said otherwise. */
  lengthCm(lengthCm: number, digits?: Digits): string;
  /** A long one, such as boards on a rack. As set unless said otherwise. */
  lengthM(lengthM: number, digits?: Digits): string;
  /** As set unless said otherwise. */
  rain(rainMm: number, digits?: Digits): string;
  /** As set unless said otherwise. */
  area(areaM2: number, digits?: Digits): string;
  /** Of paint, oil or turpentine. As set unless said otherwise. */
  volume(litres: number, digits?: Digits): string;
  /** The same in a small pot, by the mark on a measuring cup. Whole ones unless said otherwise. */
  cupVolume(millilitres: number, digits?: Digits): string;
  /** By the kitchen scale. Whole ones unless said otherwise. */
  mass(grams: number, digits?: Digits): string;
  /** Of a room. Two figures unless said otherwise. */
  roomVolume(volumeM3: number, digits?: Digits): string;
  /** Water in air. One decimal unless said otherwise. */
  waterInAir(gramsPerM3: number, digits?: Digits): string;
  /** Solvent in air, by volume. Two figures unless said otherwise. */
  concentration(ppm: number, digits?: Digits): string;
  /** As set unless said otherwise. */
  hours(hours: number, digits?: Digits): string;
  /** A figure in the unit of a quantity that is only known when it is said, such as a sensor’s. As set unless said otherwise. */
  quantity(value: number, quantity: Quantity, digits?: Digits): string;
  /** A distance between two values of a quantity. */
  quantityDifference(value: number, quantity: Quantity, digits?: Digits): string;
}

/**
 * How a sentence gives its figures, times and names. A sentence knows no units and no notation: who
 * reads it does. Moments come as UTC epoch ms, or as ISO 8601 as replies have them.
 */
export interface Speaker extends Measures {
  /** The same without the unit, where the next figure bears it: “10 to 28 °C”. */
  bare: Measures;
  /** How often an hour, the figure alone. Two figures unless said otherwise. */
  perHour(perHour: number, digits?: Digits): string;
  /** A length of time in the unit that suits it: 80 s, 20 min, 3.5 h. */
  span(ms: number): string;
  /** A plain figure. As set unless said otherwise. */
  number(value: number, digits?: Digits): string;
  /** Day and clock. */
  moment(at: number | string): string;
  clock(at: number | string): string;
  day(at: number | string): string;
  /** A full hour of the day by the clock, 0 to 24. */
  hourOfDay(hour: number): string;
  /** Names one after the other, with the word for “and” before the last. */
  list(names: readonly string[]): string;
}
