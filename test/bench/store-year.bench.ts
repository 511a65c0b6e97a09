import { afterAll, bench, describe } from 'vitest';
import { figure, megabytes, print } from './bench-print.ts';
import { plainTable } from './plain-table.ts';
import { openStoreOnDisk } from './store-on-disk.ts';
import { askDaemon, fillDays, sensors } from './store-year.ts';

async function printYear(): Promise<void> {
  const filled = fillDays(365);
  try {
    const daemon = await askDaemon(filled);
    const bytes = filled.store.bytes();
    print(
      `A year of ${sensors} sensors with 3 quantities a minute
${plainTable(
  ['what', 'figure'],
  [
    ['readings, million', figure(filled.readings / 1e6, 2)],
    ['database, MB', megabytes(bytes)],
    ['bytes a reading', figure(bytes / filled.readings, 2)],
    ['filled in, s', figure(filled.seconds, 0)],
    ['from start to ready, ms', figure(daemon.startMs, 0)],
    ['resident when ready, MiB', figure(daemon.residentMb, 0)],
    ['resident after the questions, MiB', figure(daemon.residentAfterMb, 0)],
    ['resident after 25 curves of the year, MiB', figure(daemon.residentAfterCurvesMb, 0)],
    ['curves of a sensor, the year, ms', figure(daemon.curvesMs)],
    [`season, ${daemon.seasonPoints} points, ms`, figure(daemon.seasonMs)],
    [`last 24 h, ${daemon.dayReadings} readings, ms`, figure(daemon.dayMs)],
    ['one hour, ms', figure(daemon.hourMs)],
    ['that hour is what was sent', daemon.hourIsExact ? 'yes' : 'NO'],
  ],
)}`,
    );
  } finally {
    filled.store.remove();
  }
}

await printYear();

const store = openStoreOnDisk();
afterAll(() => store.remove());
describe('a question to an empty store', () => {
  bench('a curve', () => {
    store.read.readingOutline(1, 'air-temperature', 0, 1);
  });
});
