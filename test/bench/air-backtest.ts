import { temperatureOutlook } from '../../daemon/science/temperature-outlook.ts';
import { LEADS_H } from './forecast-backtest.ts';
import { plainTable } from './plain-table.ts';
import type { RecordedSeries } from './recorded-series.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** Standard deviations from the middle to the 10 and 90 % points. */
const TENTH = 1.2816;

/** How a quantity was foretold, one hour's reading so many hours ahead. */
export type AirRow = {
  readonly series: string;
  readonly quantity: 'temperature, K' | 'humidity, %';
  readonly leadH: number;
  readonly forecasts: number;
  /** mean absolute errors: of the outlook, of the last reading */
  readonly ours: number;
  readonly lastReading: number;
  /** share of readings within the middle 80 % of the outlook, % */
  readonly coverPercent: number;
};

/**
 * Foretells temperature and humidity of single hours all through a record.
 *
 * @param series - the record; only the fortnights that no constant was set on
 * @param everyH - a forecast is made so often, h
 * @returns one row for each quantity and lead
 */
export function airBacktest({ name, readings, tunedOn }: RecordedSeries, everyH: number): AirRow[] {
  const byHour = new Map(readings.map((reading) => [Math.round(reading.at / HOUR), reading]));
  const first = readings[0]?.at ?? 0;
  const last = readings.at(-1)?.at ?? 0;
  const seen = { temp: new Map<number, Seen[]>(), damp: new Map<number, Seen[]>() };
  for (let at = first + DAY; at < last; at += everyH * HOUR) {
    if (tunedOn && Math.floor((at - first) / (14 * DAY)) % 2 === 0) continue;
    const history = readings.filter((one) => one.at <= at && one.at > at - 28 * DAY);
    const now = history.at(-1);
    const outlook = temperatureOutlook(history, { horizonHours: 60 });
    if (now === undefined || outlook === null || at - now.at > HOUR) continue;
    for (const leadH of LEADS_H) {
      const truth = byHour.get(Math.round(outlook.fromAt / HOUR) + leadH);
      if (truth === undefined) continue;
      // a reading on the hour lies between two hours' means
      const between = (list: readonly number[]) =>
        ((list[leadH - 1] ?? Number.NaN) + (list[leadH] ?? Number.NaN)) / 2;
      note(seen.temp, leadH, {
        error: Math.abs(truth.tempC - between(outlook.tempC)),
        lastError: Math.abs(truth.tempC - now.tempC),
        spread: between(outlook.errorK),
      });
      if (truth.rhPercent === null || now.rhPercent === null) continue;
      note(seen.damp, leadH, {
        error: Math.abs(truth.rhPercent - between(outlook.rhPercent ?? [])),
        lastError: Math.abs(truth.rhPercent - now.rhPercent),
        spread: between(outlook.rhErrorPercent ?? []),
      });
    }
  }
  return [...rows(name, 'temperature, K', seen.temp), ...rows(name, 'humidity, %', seen.damp)];
}

type Seen = { readonly error: number; readonly lastError: number; readonly spread: number };

function note(into: Map<number, Seen[]>, leadH: number, one: Seen): void {
  into.set(leadH, [...(into.get(leadH) ?? []), one]);
}

function rows(
  series: string,
  quantity: AirRow['quantity'],
  seen: ReadonlyMap<number, readonly Seen[]>,
): AirRow[] {
  return [...seen].map(([leadH, all]) => {
    const mean = (value: (one: Seen) => number) =>
      all.reduce((sum, one) => sum + value(one), 0) / all.length;
    return {
      series,
      quantity,
      leadH,
      forecasts: all.length,
      ours: mean(({ error }) => error),
      lastReading: mean(({ lastError }) => lastError),
      coverPercent: 100 * mean(({ error, spread }) => Number(error <= TENTH * spread)),
    };
  });
}

/** The rows as a table for people. */
export function airTable(rows: readonly AirRow[]): string {
  return plainTable(
    ['series', 'quantity', 'lead h', 'forecasts', 'ours', 'last', 'band %'],
    rows.map((row) => [
      row.series,
      row.quantity,
      `${row.leadH}`,
      `${row.forecasts}`,
      row.ours.toFixed(2),
      row.lastReading.toFixed(2),
      row.coverPercent.toFixed(0),
    ]),
  );
}
