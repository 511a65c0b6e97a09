import type { Language } from '../contract/language.ts';
import type { Quantity } from '../contract/quantity.ts';
import { quantityUnits } from './quantity-units.ts';
import type { Digits, Measures, Speaker } from './speaker.ts';

interface Notation {
  figure(value: number, digits: Digits): string;
  moment(at: number): string;
  clock(at: number): string;
  day(at: number): string;
  list(names: readonly string[]): string;
}

/** In metric units, with figures and times as a notation has them. */
function metric({ figure, ...notation }: Notation): Speaker {
  const at = (moment: number | string) =>
    typeof moment === 'number' ? moment : Date.parse(moment);
  const measures = metricMeasures((unit, usual) => (value, digits = usual) => {
    return `${figure(value, digits)} ${unit}`;
  });
  return {
    ...measures,
    bare: metricMeasures(
      (_unit, usual) =>
        (value, digits = usual) =>
          figure(value, digits),
    ),
    perHour: (perHour, digits = 'two-figures') => figure(perHour, digits),
    span(ms) {
      const seconds = Math.round(ms / 1000);
      if (seconds < 90) return `${figure(seconds, 0)} s`;
      const minutes = Math.round(seconds / 60);
      return minutes < 90 ? `${figure(minutes, 0)} min` : measures.hours(minutes / 60, 1);
    },
    number: (value, digits = 'as-set') => figure(value, digits),
    moment: (moment) => notation.moment(at(moment)),
    clock: (moment) => notation.clock(at(moment)),
    day: (moment) => notation.day(at(moment)),
    hourOfDay: (hour) => `${hour}:00`,
    list: notation.list,
  };
}

type Measure = (value: number, digits?: Digits) => string;

function metricMeasures(inUnit: (unit: string, usual: Digits) => Measure): Measures {
  const quantity = (value: number, of: Quantity, digits: Digits = 'as-set') =>
    inUnit(quantityUnits[of], digits)(value);
  return {
    temperature: inUnit('°C', 1),
    temperatureDifference: inUnit('K', 1),
    humidity: inUnit('%', 0),
    moisture: inUnit('%', 1),
    percent: inUnit('%', 0),
    degreeHours: inUnit('°C·h', 0),
    length: inUnit('mm', 'as-set'),
    lengthCm: inUnit('cm', 1),
    lengthM: inUnit('m', 'as-set'),
    rain: inUnit('mm', 'as-set'),
    area: inUnit('m²', 'as-set'),
    volume: inUnit('L', 'as-set'),
    cupVolume: inUnit('mL', 0),
    mass: inUnit('g', 0),
    roomVolume: inUnit('m³', 'two-figures'),
    waterInAir: inUnit('g/m³', 1),
    concentration: inUnit('ppm', 'two-figures'),
    hours: inUnit('h', 'as-set'),
    quantity,
    // A difference of temperatures is told in the same unit as they are.
    quantityDifference: quantity,
  };
}

/** A figure with a point: what `toFixed` makes of it, and nothing grouped. */
function plainFigure(value: number, digits: Digits): string {
  if (typeof digits === 'number') return value.toFixed(digits);
  const shown = digits === 'two-figures' ? Number(value.toPrecision(2)) : value;
  return String(Number(shown.toFixed(6)));
}

const formats = new Map<string, Intl.DateTimeFormat>();

function format(locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const key = `${locale} ${JSON.stringify(options)}`;
  const known = formats.get(key) ?? new Intl.DateTimeFormat(locale, options);
  formats.set(key, known);
  return known;
}

/** `hh:mm`, in every language of ours by the clock of 24 hours. */
const clockOf = (timeZone: string) => (at: number) =>
  format('en-GB', { timeZone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(at);

/** `yyyy-mm-dd`: the Swedish calendar writes days as ISO 8601 has them. */
const isoDayOf = (timeZone: string) => (at: number) =>
  format('sv-SE', { timeZone, dateStyle: 'short' }).format(at);

/**
 * The English of replies, for whoever reads them with a program: moments and days as ISO 8601.
 *
 * @param timeZone - IANA name, of clocks and days
 */
export function contractSpeaker(timeZone = 'UTC'): Speaker {
  return metric({
    figure: plainFigure,
    moment: (at) => new Date(at).toISOString(),
    clock: clockOf(timeZone),
    day: isoDayOf(timeZone),
    list: listed('en'),
  });
}

/**
 * Figures and times as people of a language write them, in metric units.
 *
 * @param timeZone - IANA name
 */
export function metricSpeaker(language: Language, timeZone: string): Speaker {
  const sign = (type: 'decimal' | 'minusSign', usual: string) =>
    new Intl.NumberFormat(language).formatToParts(-1.5).find((part) => part.type === type)?.value ??
    usual;
  const [decimal, minus] = [sign('decimal', '.'), sign('minusSign', '-')];
  // English is read in many countries, which write days in as many ways; this one all can read.
  const day =
    language === 'en'
      ? isoDayOf(timeZone)
      : (at: number) => format(language, { timeZone, dateStyle: 'medium' }).format(at);
  const clock = clockOf(timeZone);
  return metric({
    figure: (value, digits) => plainFigure(value, digits).replace('.', decimal).replace('-', minus),
    moment: (at) => `${day(at)} ${clock(at)}`,
    clock,
    day,
    list: listed(language),
  });
}

const lists = new Map<Language, Intl.ListFormat>();

const listed = (language: Language) => (names: readonly string[]) => {
  const known = lists.get(language) ?? new Intl.ListFormat(language, { style: 'long' });
  lists.set(language, known);
  return known.format(names);
};
