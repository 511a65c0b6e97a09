import { addLineToHours, hourMs } from '../rules/cure-span.ts';
import type { HourBlock, HourSum } from '../rules/hour-facts.ts';
import type { Sample } from '../rules/place-series.ts';
import type { CureModel } from '../science/cure.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { HourSource } from './ports.ts';

/** A cure model with the name its hour sums are kept under. */
export interface NamedModel {
  name: string;
  model: CureModel;
  /** Temperature above which cure is not trusted, °C. */
  capC: number;
}

/** The model that rules, and the one carried beside it. */
export interface ModelPair {
  ruling: NamedModel;
  beside: NamedModel;
}

/** The hour sums of one place in memory: one unbroken stretch up to its newest sample. */
export interface HourBook {
  placeId: string;
  fromHour: number;
  /** Time of the newest sample that is in the sums; null before any. */
  lastAt: number | null;
  /** By model, then by hour; an hour that gathered nothing has no entry. */
  hours: Map<string, Map<number, HourSum>>;
}

export const curing = 'air-temperature';
export const hourOf = (at: number) => Math.floor(at / hourMs);

export function hoursIn(book: HourBook, model: string): Map<number, HourSum> {
  let hours = book.hours.get(model);
  if (!hours) {
    hours = new Map();
    book.hours.set(model, hours);
  }
  return hours;
}

/** Opens what the store kept of a place; an empty book when it kept nothing that fits. */
export function openBook(
  source: HourSource,
  placeId: string,
  models: readonly NamedModel[],
): HourBook {
  const book: HourBook = {
    placeId,
    fromHour: Number.POSITIVE_INFINITY,
    lastAt: null,
    hours: new Map(),
  };
  const ranges = models.map(({ name }) => source.hourRange(placeId, name));
  const range = ranges[0];
  if (!range || ranges.some((r) => r?.fromHour !== range.fromHour || r?.toHour !== range.toHour)) {
    return book;
  }
  book.fromHour = range.fromHour;
  // The hour after the kept ones was open: it is reckoned anew from its start.
  book.lastAt = (range.toHour + 1) * hourMs;
  for (const { name } of models) {
    const kept = source.hoursBetween(placeId, name, range.fromHour, range.toHour);
    book.hours.set(name, new Map(kept.map((sum) => [sum.hour, sum])));
  }
  return book;
}

/** Reckons a range of hours from the readings; both ends included. */
export function reckon(
  book: HourBook,
  air: PlaceAirReader,
  models: readonly NamedModel[],
  fromHour: number,
  toHour: number,
): void {
  const within = { fromHour, toHour };
  const sums = models.map((named) => ({ ...named, hours: hoursIn(book, named.name) }));
  for (const { hours } of sums) {
    for (let hour = fromHour; hour <= toHour; hour++) hours.delete(hour);
  }
  let a: Sample | null = null;
  const [startAt, endAt] = [fromHour * hourMs, (toHour + 1) * hourMs];
  for (const b of air.eachSample(book.placeId, curing, startAt, endAt)) {
    for (const { hours, model, capC } of sums) {
      if (a) addLineToHours(hours, a, b, model, capC, within);
    }
    a = b;
  }
}

/** The closed hours of a book from one on, as the store keeps them. */
export function blocksOf(
  book: HourBook,
  models: readonly NamedModel[],
  fromHour: number,
  toHour: number,
  endsHere: boolean,
): HourBlock[] {
  return models.map(({ name }) => {
    const hours = hoursIn(book, name);
    const sums: HourSum[] = [];
    for (let hour = fromHour; hour <= toHour; hour++) {
      const sum = hours.get(hour);
      if (sum) sums.push({ ...sum });
    }
    return { placeId: book.placeId, model: name, fromHour, toHour, sums, endsHere };
  });
}
