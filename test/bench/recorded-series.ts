import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import { RECORDED_AIR } from '../house/needs.ts';

/** A recorded temperature and, where there is one, the humidity beside it. */
export type RecordedSeries = {
  readonly name: string;
  readonly readings: readonly {
    readonly at: number;
    readonly tempC: number;
    readonly rhPercent: number | null;
  }[];
  /** whether every other fortnight of it was used to set the constants */
  readonly tunedOn: boolean;
};

const figure = (text: string | undefined): number | null =>
  text === undefined || text === '' || Number.isNaN(Number(text)) ? null : Number(text);

/** Columns of a table; a local time is read as if it were UTC: one odd hour in spring. */
function columns(
  file: string,
  at: string,
  temp: string,
  rh: string | null,
): RecordedSeries['readings'] {
  const rows = parse(readFileSync(file), { columns: true }) as Record<string, string>[];
  return rows.flatMap((row) => {
    const tempC = figure(row[temp]);
    if (tempC === null) return [];
    const text = row[at] ?? '';
    const rhPercent = rh === null ? null : figure(row[rh]);
    return [{ at: Date.parse(text.endsWith('Z') ? text : `${text}Z`), tempC, rhPercent }];
  });
}

/**
 * Rooms and weather stations recorded by others; they lie beside the project.
 *
 * **Source:** Candanedo and Feldheim 2016, Energy and Buildings 112, 28–39 (office, CC BY 4.0);
 * sample data of the R package ConSciR (London); R package nycflights13, US weather service (CC0).
 */
export function recordedRooms(): RecordedSeries[] {
  const london = join(RECORDED_AIR, 'room-outdoor-hourly-2024-h1.csv');
  const airport = join(RECORDED_AIR, 'outdoor-hourly-2013-jan-aug.csv');
  const office = join(RECORDED_AIR, 'office-minute-2015.csv');
  return [
    {
      name: 'heated room, London',
      readings: columns(london, 'time_local', 'room_temp_c', 'room_rh_pct'),
      tunedOn: true,
    },
    {
      name: 'display case, London',
      readings: columns(london, 'time_local', 'case_temp_c', 'case_rh_pct'),
      tunedOn: true,
    },
    {
      name: 'outdoors, London',
      readings: columns(london, 'time_local', 'outdoor_temp_c', 'outdoor_rh_pct'),
      tunedOn: true,
    },
    {
      name: 'outdoors, airport',
      readings: columns(airport, 'time_utc', 'temp_c', 'rh_pct'),
      tunedOn: true,
    },
    {
      name: 'office, six days',
      readings: columns(office, 'time_local', 'temp_c', 'rh_pct'),
      tunedOn: false,
    },
  ];
}

/**
 * Hourly temperatures that a package brings along: normals, so the mean weather of every hour.
 *
 * **Source:** vega-datasets, seattle-weather-hourly-normals.csv (US weather service; BSD-3).
 */
export function hourlyNormals(): RecordedSeries {
  // the package exports no path to its tables
  const file = fileURLToPath(
    new URL(
      '../../node_modules/vega-datasets/data/seattle-weather-hourly-normals.csv',
      import.meta.url,
    ),
  );
  return {
    name: 'hourly normals, Seattle',
    readings: columns(file, 'date', 'temperature', null),
    tunedOn: false,
  };
}
