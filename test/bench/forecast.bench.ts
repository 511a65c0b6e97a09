import { existsSync } from 'node:fs';
import { bench, describe } from 'vitest';
import { cureAhead } from '../../daemon/science/cure-ahead.ts';
import { forecastReady, readyFrom } from '../../daemon/science/forecast.ts';
import { needCurve } from '../../daemon/science/need-curve.ts';
import { temperatureOutlook } from '../../daemon/science/temperature-outlook.ts';
import { fitRequirement } from '../../daemon/science/touch.ts';
import { RECORDED_AIR } from '../house/needs.ts';
import { airBacktest, airTable } from './air-backtest.ts';
import { backtest, backtestTable, type Lead, totals } from './forecast-backtest.ts';
import { hourlyNormals, recordedRooms } from './recorded-series.ts';

/** A coat is begun so often in a long record, h: no divisor of a day, so that every hour has its turn. */
const EVERY_H = 17;

const LEADS: Record<Lead, string> = {
  'hours-before': 'made so many hours before the coat was really there',
  'still-lacking': 'made when the coat still lacked what so many hours at 20 °C give',
};

/** Prints how the forecast fared on recordings that its constants were not set on. */
function printBacktest(): void {
  const recorded = existsSync(RECORDED_AIR);
  if (!recorded) process.stderr.write(`\n*** NOT TESTED: no recordings in ${RECORDED_AIR}\n`);
  const all = [...(recorded ? recordedRooms() : []), hourlyNormals()];
  for (const [lead, words] of Object.entries(LEADS) as [Lead, string][]) {
    const rows = all.flatMap((series) =>
      backtest(series, series.name.startsWith('office') ? 3 : EVERY_H, undefined, lead),
    );
    process.stdout.write(
      `\nForecasts ${words}; coats begun in fortnights that no constant was set on.
ours, 60 h, last: mean absolute error, h, of likely (need known), of 60 h after the coat, of the last reading for ever
air %: truth within early to late, need known; band %: need drawn from the starting distribution
air h, band h: mean width of the two bands
${backtestTable([...rows, ...totals(rows)])}\n`,
    );
  }
  const air = all.flatMap((series) =>
    airBacktest(series, series.name.startsWith('office') ? 3 : EVERY_H),
  );
  process.stdout.write(
    `\nThe air itself, single readings ahead: mean absolute error of the outlook and of the last reading for ever; band %: truth within the middle 80 %
${airTable(air)}\n`,
  );
}

printBacktest();

const HOUR = 3_600_000;
const record = (count: number, stepMs: number) =>
  Array.from({ length: count }, (_, i) => ({
    at: i * stepMs,
    tempC: 12 + 5 * Math.sin((2 * Math.PI * i * stepMs) / (24 * HOUR)),
    rhPercent: 60,
  }));
const nurseSaul = { rate: 'nurse-saul', datumC: 5, maxGapHours: 3 } as const;
const arrhenius = {
  rate: 'arrhenius',
  activationEnergyJPerMol: 50_000,
  referenceC: 20,
  maxGapHours: 3,
} as const;
const soFar = { degreeHoursLow: 100, degreeHoursHigh: 100 };

describe('one forecast', () => {
  const weeks = record(672, HOUR);
  const minutes = record(40_320, 60_000);
  const requirement = fitRequirement([], { p10: 720, p90: 1080 });
  const outlook = temperatureOutlook(weeks);
  if (outlook === null) throw new Error('there are readings');
  const ahead = cureAhead(outlook, nurseSaul);
  const need = needCurve(requirement);
  bench('outlook from four weeks by the hour', () => {
    temperatureOutlook(weeks);
  });
  bench('outlook from four weeks by the minute', () => {
    temperatureOutlook(minutes);
  });
  bench('sums ahead, 60 days, Nurse–Saul', () => {
    cureAhead(outlook, nurseSaul);
  });
  bench('sums ahead, 60 days, Arrhenius', () => {
    cureAhead(outlook, arrhenius);
  });
  bench('what a stage needs, tabulated', () => {
    needCurve(requirement);
  });
  bench('one gate of one coat, all else at hand', () => {
    readyFrom(ahead, soFar, need);
  });
  bench('all at once', () => {
    forecastReady(weeks, soFar, requirement, { model: nurseSaul });
  });
});
