import { afterAll, bench, describe } from 'vitest';
import { figure, print } from './bench-print.ts';
import { plainTable } from './plain-table.ts';
import { type Cost, costWithDays, costWithSensors } from './store-growth.ts';
import { openStoreOnDisk } from './store-on-disk.ts';

function printGrowth(): void {
  const head = ['', 'commit µs', 'pack µs', 'late ms', '24 h ms', 'silent ms', 'curve ms'];
  const cells = (cost: Cost) => [
    figure(cost.commitUs),
    figure(cost.packUs),
    figure(cost.lateMs, 2),
    figure(cost.dayMs, 2),
    figure(cost.newestMs, 2),
    figure(cost.curveMs),
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

printGrowth();

const store = openStoreOnDisk();
afterAll(() => store.remove());
describe('a question to an empty store', () => {
  bench('the newest reading of a sensor', () => {
    store.read.readingBefore(1, 'air-temperature', 0, 0);
  });
});
