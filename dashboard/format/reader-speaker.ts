import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { Digits, Measures, Speaker } from '../../daemon/wording/speaker.ts';
import { type Calendar, createCalendar } from './calendar.ts';
import { listLine } from './lists.ts';
import type { Figures } from './reader-figures.ts';
import { isTemperature, unitOfQuantity, unitOfShift } from './reading.ts';
import { type Measure, toReaders, type UnitSystem, unitOf } from './units.ts';
import { usVolume } from './us-amounts.ts';

const MINUTE_MS = 60_000;
const HOUR_MS = 3_600_000;
/** So many of the smaller unit are still told in it. */
const ENOUGH = 90;
/** Digits of what somebody set in another unit: 22 mm are 0.866 in. */
const TURNED_DIGITS = 3;
const ALL_DECIMALS = 6;
const ML_PER_LITRE = 1_000;

type Told = (value: number, digits?: Digits) => string;

/**
 * How the daemon’s sentences are told to one reader.
 *
 * @param locale - BCP 47 tag
 */
export function createSpeaker(
  locale: string,
  units: UnitSystem,
  figures: Figures,
  calendar: Calendar,
): Speaker {
  const momentAt = (moment: number | string) =>
    typeof moment === 'number' ? moment : Date.parse(moment);

  function inDigits(value: number, digits: Digits): string {
    if (digits === 'as-set') return figures.number(value, ALL_DECIMALS);
    return digits === 'two-figures'
      ? figures.number(Number(value.toPrecision(2)), ALL_DECIMALS)
      : figures.number(value, digits, digits);
  }

  /** A metric figure in the reader’s unit, with as many digits as make sense in it. */
  function inReaders(measure: Measure, value: number, digits: Digits): string {
    const { scale, decimals } = unitOf(measure, units);
    const figure = toReaders(measure, value, units);
    if (scale === 1 || digits === 'two-figures') return inDigits(figure, digits);
    if (digits !== 'as-set') return inDigits(figure, decimals);
    const isLong = Math.abs(figure) >= 10 ** (TURNED_DIGITS - 1);
    return inDigits(isLong ? Math.round(figure) : threeDigits(figure), 'as-set');
  }

  const ofQuantity =
    (
      measure: Measure,
      unitOfIt: typeof unitOfQuantity,
      withUnit: (figure: string, unit: string) => string,
    ) =>
    (value: number, quantity: Quantity, digits: Digits = 'as-set') => {
      const figure = isTemperature(quantity)
        ? inReaders(measure, value, digits)
        : inDigits(value, digits);
      return withUnit(figure, unitOfIt(quantity, { figures }));
    };

  function measures(isBare: boolean): Measures {
    const withUnit = (figure: string, unit: string) => (isBare ? figure : `${figure} ${unit}`);
    const own =
      (measure: Measure, usual: Digits): Told =>
      (value, digits = usual) =>
        withUnit(inReaders(measure, value, digits), figures.unit(measure));
    const plain =
      (unit: string, usual: Digits): Told =>
      (value, digits = usual) =>
        withUnit(inDigits(value, digits), unit);
    return {
      temperature: own('tempC', 1),
      temperatureDifference: own('differenceK', 1),
      humidity: plain('%', 0),
      moisture: plain('%', 1),
      percent: plain('%', 0),
      degreeHours: own('degreeHours', 0),
      length: own('lengthMm', 'as-set'),
      lengthCm: own('lengthCm', 1),
      lengthM: own('lengthM', 'as-set'),
      rain: own('rainMm', 'as-set'),
      area: own('areaM2', 'as-set'),
      volume: own('litres', 'as-set'),
      cupVolume: plain('mL', 0),
      mass: own('massG', 0),
      roomVolume: own('volumeM3', 'two-figures'),
      waterInAir: plain('g/m³', 1),
      concentration: plain('ppm', 'two-figures'),
      hours: plain('h', 'as-set'),
      quantity: ofQuantity('tempC', unitOfQuantity, withUnit),
      quantityDifference: ofQuantity('differenceK', unitOfShift, withUnit),
    };
  }

  /** At the mixing bench by measuring cup, kitchen scale and tape. */
  function atUsBench(): Partial<Measures> {
    const { lengthCm } = measures(false);
    return {
      lengthCm: (length, digits = 1) =>
        typeof digits === 'number'
          ? `${figures.mark(length)} ${figures.unit('lengthCm')}`
          : lengthCm(length, digits),
      volume(litres, digits) {
        if (digits !== 'two-figures') return figures.volume(litres);
        const { value, unit } = usVolume(litres);
        return `${inDigits(value, digits)} ${unit}`;
      },
      cupVolume: (millilitres) => figures.poured(millilitres / ML_PER_LITRE),
      mass: (grams) => figures.weighed(grams),
    };
  }

  const told = units === 'us' ? { ...measures(false), ...atUsBench() } : measures(false);
  return {
    ...told,
    bare: measures(true),
    perHour: (perHour, digits = 'two-figures') => inDigits(perHour, digits),
    span(ms) {
      if (ms < ENOUGH * 1_000) return `${figures.number(ms / 1_000, 0)} s`;
      if (ms < ENOUGH * MINUTE_MS) return `${figures.number(ms / MINUTE_MS, 0)} min`;
      return told.hours(ms / HOUR_MS, 1);
    },
    number: (value, digits = 'as-set') => inDigits(value, digits),
    moment: (moment) => calendar.exact(momentAt(moment)),
    clock: (moment) => calendar.clock(momentAt(moment)),
    day: (moment) => calendar.date(momentAt(moment)),
    hourOfDay: (hour) => createCalendar('UTC', locale).clock(Date.UTC(2026, 0, 1, hour)),
    list: (names) => listLine(names, locale),
  };
}

function threeDigits(value: number): number {
  return Number(value.toPrecision(TURNED_DIGITS));
}
