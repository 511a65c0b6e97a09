import { beforeAll, describe, expect, it } from 'vitest';
import { type AirRow, airBacktest } from '../bench/air-backtest.ts';
import { type BacktestRow, backtest, LEADS_H, totals } from '../bench/forecast-backtest.ts';
import { hourlyNormals, recordedRooms } from '../bench/recorded-series.ts';
import { needs } from '../house/needs.ts';

/** All coats at one lead. */
function at(rows: readonly BacktestRow[], leadH: number): BacktestRow {
  const found = totals(rows).find((row) => row.leadH === leadH);
  if (found === undefined) throw new Error(`no row for ${leadH} h`);
  return found;
}

describe('hourly normals of a weather service, none of them used to set the constants', () => {
  let rows: BacktestRow[] = [];
  beforeAll(() => {
    rows = backtest(hourlyNormals(), 53);
  }, 60_000);

  it.each(LEADS_H)('%d h ahead the forecast beats 60 hours and the last reading', (leadH) => {
    const seen = at(rows, leadH);
    expect(seen.coats).toBeGreaterThan(100);
    expect(seen.oursH).toBeLessThan(seen.sixtyH / 5);
    expect(seen.oursH).toBeLessThan(seen.lastReadingH / 5);
    expect(seen.coverPercent).toBeGreaterThan(75);
    expect(seen.coverPercent).toBeLessThan(88);
  });
});

needs('recorded-air')('recorded rooms and weather, fortnights held out', () => {
  let rows: BacktestRow[] = [];
  beforeAll(() => {
    rows = recordedRooms().flatMap((series) =>
      backtest(series, series.name.startsWith('office') ? 3 : 23),
    );
  }, 60_000);

  it.each(LEADS_H)('%d h ahead the forecast beats 60 hours and the last reading', (leadH) => {
    const seen = at(rows, leadH);
    expect(seen.coats).toBeGreaterThan(200);
    expect(seen.oursH).toBeLessThan(seen.sixtyH / 3);
    expect(seen.oursH).toBeLessThan(seen.lastReadingH);
  });

  it.each(LEADS_H)('%d h ahead early to late holds the truth 75 to 88 %% of the time', (leadH) => {
    const { coverPercent } = at(rows, leadH);
    expect(coverPercent).toBeGreaterThan(75);
    expect(coverPercent).toBeLessThan(88);
  });

  describe('the air itself, single readings ahead', () => {
    let air: AirRow[] = [];
    beforeAll(() => {
      air = recordedRooms().flatMap((series) => airBacktest(series, 31));
    }, 60_000);
    const over = (quantity: AirRow['quantity'], leadH: number) => {
      const own = air.filter((row) => row.quantity === quantity && row.leadH === leadH);
      const sum = (value: (row: AirRow) => number) =>
        own.reduce((total, row) => total + row.forecasts * value(row), 0);
      return {
        ratio: sum((row) => row.ours) / sum((row) => row.lastReading),
        coverPercent: sum((row) => row.coverPercent) / sum(() => 1),
      };
    };

    it('half a day ahead it beats the last reading, by a third in temperature', () => {
      expect(over('temperature, K', 12).ratio).toBeLessThan(0.67);
      expect(over('humidity, %', 12).ratio).toBeLessThan(0.9);
    });

    it.each([24, 48])(
      'at the same hour %d h on it is about as good as the last reading',
      (leadH) => {
        // the same hour of a like day is hard to beat; what the outlook adds is every hour between
        expect(over('temperature, K', leadH).ratio).toBeLessThan(1.08);
        expect(over('humidity, %', leadH).ratio).toBeLessThan(1.08);
      },
    );

    it.each(LEADS_H)('its middle 80 %% holds 70 to 88 %% of the readings %d h ahead', (leadH) => {
      for (const quantity of ['temperature, K', 'humidity, %'] as const) {
        const { coverPercent } = over(quantity, leadH);
        expect(coverPercent).toBeGreaterThan(70);
        expect(coverPercent).toBeLessThan(88);
      }
    });
  });
});
