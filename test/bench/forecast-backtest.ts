import type { CureModel } from '../../daemon/science/cure.ts';
import { cureAhead } from '../../daemon/science/cure-ahead.ts';
import { segmentEquivalentHours } from '../../daemon/science/cure-rate.ts';
import { readyFrom } from '../../daemon/science/forecast.ts';
import { type NeedCurve, needCurve } from '../../daemon/science/need-curve.ts';
import { temperatureOutlook } from '../../daemon/science/temperature-outlook.ts';
import { fitRequirement, quantileReached } from '../../daemon/science/touch.ts';
import { plainTable } from './plain-table.ts';
import type { RecordedSeries } from './recorded-series.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const MODEL: CureModel = { rate: 'nurse-saul', datumC: 5, maxGapHours: 3 };
/** What a coat needs before any test: two to three days at 20 °C. */
const REQUIREMENT = fitRequirement([], { p10: 720, p90: 1080 });
const UNTESTED = needCurve(REQUIREMENT);
/** Coats that take longer than this are left out: they would have been carried into the warm. */
const LONGEST_COAT_MS = 20 * DAY;
/** No error is counted as more than a week, so that "never" can be averaged. */
const LARGEST_ERROR_H = 168;

export const LEADS_H = [12, 24, 48] as const;

/**
 * What a lead of 12, 24 or 48 h means: so long before the coat was really there, or when it still
 * lacked what so many hours at 20 °C give. The first is what an operator would ask; it is chosen
 * with hindsight, which only the second is free of.
 */
export type Lead = 'hours-before' | 'still-lacking';

/** Constants were set on the first, third, … fortnight of a record; the others are held out. */
export type Part = 'tuned-on' | 'held-out' | 'all';

/** How forecasts fared, made so many hours before the coat was really there. */
export type BacktestRow = {
  readonly series: string;
  readonly leadH: number;
  readonly coats: number;
  /** mean absolute errors, h: of `likely`, of 60 hours after the coat, of the last reading for ever */
  readonly oursH: number;
  readonly sixtyH: number;
  readonly lastReadingH: number;
  /** share of coats between early and late, %: the need known, only the air forecast */
  readonly airCoverPercent: number;
  /** the same with the need unknown, drawn from the starting distribution */
  readonly coverPercent: number;
  /** mean width of the band, h, of the two */
  readonly airBandH: number;
  readonly bandH: number;
};

/** A need known for certain, as a step. */
const known = (degreeHours: number): NeedCurve => ({
  ln: [Math.log(degreeHours) - 1e-6, Math.log(degreeHours) + 1e-6],
  probability: [0, 1],
});

/** The record's running sum, and the moment it reaches a sum; gaps make a coat useless. */
function runningSum({ readings }: RecordedSeries) {
  const sums = [0];
  const gaps = [0];
  for (let i = 1; i < readings.length; i++) {
    const [from, to] = [readings[i - 1], readings[i]];
    if (!from || !to) continue;
    const hours = segmentEquivalentHours(MODEL, from.at, from.tempC, to.at, to.tempC);
    sums.push((sums[i - 1] ?? 0) + 15 * hours);
    gaps.push((gaps[i - 1] ?? 0) + (to.at - from.at > 3 * HOUR ? 1 : 0));
  }
  const index = (at: number) => {
    let [low, high] = [0, readings.length];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((readings[middle]?.at ?? 0) <= at) low = middle;
      else high = middle;
    }
    return low;
  };
  return {
    index,
    sumAt: (i: number) => sums[i] ?? 0,
    gapsAt: (i: number) => gaps[i] ?? 0,
    /** straight between readings: at most minutes from the exact crossing */
    reaches(startIndex: number, needed: number): number | null {
      const goal = (sums[startIndex] ?? 0) + needed;
      let i = startIndex + 1;
      while (i < sums.length && (sums[i] ?? 0) < goal) i++;
      const [before, after] = [readings[i - 1], readings[i]];
      if (!before || !after) return null;
      const share = (goal - (sums[i - 1] ?? 0)) / ((sums[i] ?? 0) - (sums[i - 1] ?? 0));
      return before.at + share * (after.at - before.at);
    },
  };
}

type Book = ReturnType<typeof runningSum>;

/** The forecast made at the last reading before a moment, with 28 days behind it at most. */
function forecastAt(series: RecordedSeries, book: Book, startIndex: number, moment: number) {
  const last = book.index(moment);
  const at = series.readings[last]?.at ?? 0;
  const history = series.readings.slice(book.index(at - 28 * DAY), last + 1);
  const outlook = temperatureOutlook(history);
  if (outlook === null || last < startIndex) return null;
  const soFar = book.sumAt(last) - book.sumAt(startIndex);
  return {
    at,
    soFar,
    lastTempC: series.readings[last]?.tempC ?? 0,
    ready: (need: NeedCurve) =>
      readyFrom(cureAhead(outlook, MODEL), { degreeHoursLow: soFar, degreeHoursHigh: soFar }, need),
  };
}

const errorH = (guess: number | null, truth: number) =>
  guess === null ? LARGEST_ERROR_H : Math.min(LARGEST_ERROR_H, Math.abs(guess - truth) / HOUR);

/** A coat followed to its end: what it needed, when it began and when it was really there. */
type Coat = {
  readonly startIndex: number;
  readonly begunAt: number;
  readonly needed: number;
  readonly readyAt: number;
};

function coats(
  series: RecordedSeries,
  book: Book,
  everyH: number,
  need: (index: number) => number,
  part: Part,
): Coat[] {
  const first = series.readings[0]?.at ?? 0;
  const last = series.readings.at(-1)?.at ?? 0;
  const found: Coat[] = [];
  let count = 0;
  for (let at = first + DAY; at < last; at += everyH * HOUR) {
    const fortnight = Math.floor((at - first) / (14 * DAY));
    if (part !== 'all' && fortnight % 2 !== (part === 'tuned-on' ? 0 : 1)) continue;
    const startIndex = book.index(at);
    const begunAt = series.readings[startIndex]?.at ?? 0;
    const needed = need(count++);
    const readyAt = book.reaches(startIndex, needed);
    if (readyAt === null || readyAt - begunAt > LONGEST_COAT_MS) continue;
    if (book.gapsAt(startIndex) !== book.gapsAt(book.index(readyAt))) continue;
    found.push({ startIndex, begunAt, needed, readyAt });
  }
  return found;
}

const mean = (values: readonly number[]) =>
  values.reduce((a, b) => a + b, 0) / Math.max(1, values.length);

/**
 * Follows coats begun all through a record and asks for a forecast some hours before each was ready.
 *
 * @param series - the record
 * @param everyH - a coat is begun so often, h
 * @param part - coats begun in which fortnights
 * @param lead - what the lead is counted by
 * @returns one row for each lead
 */
export function backtest(
  series: RecordedSeries,
  everyH: number,
  part: Part = series.tunedOn ? 'held-out' : 'all',
  lead: Lead = 'hours-before',
): BacktestRow[] {
  const book = runningSum(series);
  // the golden ratio spreads the drawn needs evenly however many coats there are
  const drawn = (index: number) =>
    quantileReached(REQUIREMENT, ((index + 0.5) * 0.6180339887498949) % 1);
  const middling = coats(series, book, everyH, () => REQUIREMENT.p50, part);
  const various = coats(series, book, everyH, drawn, part);
  return LEADS_H.map((leadH) => {
    const before = ({ startIndex, begunAt, needed, readyAt }: Coat) => {
      const lacking = needed - 15 * leadH;
      const moment =
        lead === 'hours-before'
          ? readyAt - leadH * HOUR
          : lacking < 0
            ? null
            : book.reaches(startIndex, lacking);
      return moment === null || moment < begunAt
        ? null
        : forecastAt(series, book, startIndex, moment);
    };
    const inBand = (coat: Coat, ready: ReturnType<typeof readyFrom>) => ({
      holds:
        ready.early !== null &&
        ready.early <= coat.readyAt &&
        (ready.late === null || coat.readyAt <= ready.late),
      widthH: ((ready.late ?? Number.NaN) - (ready.early ?? Number.NaN)) / HOUR,
    });
    const seen = middling.flatMap((coat) => {
      const forecast = before(coat);
      if (forecast === null) return [];
      const ready = forecast.ready(known(coat.needed));
      const perHour = Math.max(0, forecast.lastTempC - 5);
      const steady = forecast.at + ((coat.needed - forecast.soFar) / perHour) * HOUR;
      return [
        {
          ours: errorH(ready.likely, coat.readyAt),
          sixty: errorH(coat.begunAt + 60 * HOUR, coat.readyAt),
          lastReading: errorH(steady, coat.readyAt),
          ...inBand(coat, ready),
        },
      ];
    });
    const unknown = various.flatMap((coat) => {
      const forecast = before(coat);
      return forecast === null ? [] : [inBand(coat, forecast.ready(UNTESTED))];
    });
    const widths = (list: readonly { readonly widthH: number }[]) =>
      mean(list.map(({ widthH }) => widthH).filter((width) => !Number.isNaN(width)));
    return {
      series: series.name,
      leadH,
      coats: seen.length,
      oursH: mean(seen.map(({ ours }) => ours)),
      sixtyH: mean(seen.map(({ sixty }) => sixty)),
      lastReadingH: mean(seen.map(({ lastReading }) => lastReading)),
      airCoverPercent: 100 * mean(seen.map(({ holds }) => Number(holds))),
      coverPercent: 100 * mean(unknown.map(({ holds }) => Number(holds))),
      airBandH: widths(seen),
      bandH: widths(unknown),
    };
  });
}

/** All series together, every coat counting alike; widths of bands are left out. */
export function totals(rows: readonly BacktestRow[]): BacktestRow[] {
  return LEADS_H.map((leadH) => {
    const own = rows.filter((row) => row.leadH === leadH);
    const coats = own.reduce((sum, row) => sum + row.coats, 0);
    const pooled = (value: (row: BacktestRow) => number) =>
      own.reduce((sum, row) => sum + row.coats * value(row), 0) / coats;
    return {
      series: 'all coats',
      leadH,
      coats,
      oursH: pooled((row) => row.oursH),
      sixtyH: pooled((row) => row.sixtyH),
      lastReadingH: pooled((row) => row.lastReadingH),
      airCoverPercent: pooled((row) => row.airCoverPercent),
      coverPercent: pooled((row) => row.coverPercent),
      airBandH: Number.NaN,
      bandH: Number.NaN,
    };
  });
}

/** The rows as a table for people. */
export function backtestTable(rows: readonly BacktestRow[]): string {
  const head = [
    'series',
    'lead h',
    'coats',
    'ours',
    '60 h',
    'last',
    'air %',
    'band %',
    'air h',
    'band h',
  ];
  const lines = rows.map((row) => [
    row.series,
    `${row.leadH}`,
    `${row.coats}`,
    ...[row.oursH, row.sixtyH, row.lastReadingH].map((value) => value.toFixed(2)),
    ...[row.airCoverPercent, row.coverPercent].map((value) => value.toFixed(0)),
    ...[row.airBandH, row.bandH].map((value) => (Number.isNaN(value) ? '' : value.toFixed(1))),
  ]);
  return plainTable(head, lines);
}
