import { afterAll, bench, describe } from 'vitest';
import { plainTable } from './plain-table.ts';
import { flowStartAt } from './store-flow.ts';
import { type Cost, costWithDays, costWithSensors } from './store-growth.ts';
import { openStoreOnDisk } from './store-on-disk.ts';
import { steadyFlow } from './store-written.ts';
import { askDaemon, fillDays, sensors } from './store-year.ts';

const figure = (value: number, digits = 1) => value.toFixed(digits);
const megabytes = (bytes: number) => (bytes / 1e6).toFixed(0);
const print = (text: string) => process.stdout.write(`\n${text}\n`);

/** Hours that are counted; each is measured with its packing. */
const flows = [
  { perSecond: 1, spacing: 0, hours: 1 },
  { perSecond: 1, spacing: 1, hours: 1 },
  { perSecond: 1, spacing: 2, hours: 2 },
  { perSecond: 1, spacing: 5, hours: 3 },
  { perSecond: 20, spacing: 1, hours: 1 },
  { perSecond: 20, spacing: 2, hours: 1 },
  { perSecond: 20, spacing: 5, hours: 2 },
] as const;

function printWritten(): void {
  const rows = flows.map(({ perSecond, spacing, hours }) => {
    const written = steadyFlow(perSecond, spacing, hours);
    return [
      `${perSecond} a second, ${spacing === 0 ? 'each alone' : `every ${spacing} s`}`,
      figure(written.readings / written.commits, 0),
      figure(written.bytesAReading, 0),
      megabytes(written.bytesADay),
    ];
  });
  print(
    `Bytes written, by the kernel’s counter, log and packing included
${plainTable(['commits', 'readings each', 'B a reading', 'MB a day'], rows)}`,
  );
}

function printGrowth(): void {
  const head = ['', 'commit µs', 'pack µs', 'late ms', '24 h ms', 'silent ms'];
  const cells = (cost: Cost) => [
    figure(cost.commitUs),
    figure(cost.packUs),
    figure(cost.lateMs, 2),
    figure(cost.dayMs, 2),
    figure(cost.newestMs, 2),
  ];
  const rows = [10, 100, 1000].map((count) => [
    `${count} sensors`,
    ...cells(costWithSensors(count)),
  ]);
  for (const [name, days] of [
    ['1 day', 1],
    ['1 year', 365],
    ['5 years', 5 * 365],
  ] as const) {
    rows.push([`${name} of one sensor`, ...cells(costWithDays(days))]);
  }
  print(
    `What one more costs: a reading committed in a group of 100, packed, late and merged; and looked up
${plainTable(head, rows)}`,
  );
}

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

printWritten();
printGrowth();
await printYear();

const store = openStoreOnDisk();
let at = flowStartAt;
afterAll(() => store.remove());

describe('1,000 readings taken in, by the size of a commit', () => {
  for (const size of [1, 20, 200, 1000]) {
    bench(`${size} a commit`, () => {
      for (let i = 0; i < 1000; i += size) {
        const readings = Array.from({ length: size }, (_, k) => ({
          sensor: `n${k % 20}`,
          quantity: 'air-temperature' as const,
          at: at++,
          raw: 18.25,
          flags: 0,
        }));
        store.write.commitReadings({ readings, refused: [], arrivedAt: at });
      }
    });
  }
});
