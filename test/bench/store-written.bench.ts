import { afterAll, bench, describe } from 'vitest';
import { figure, megabytes, print } from './bench-print.ts';
import { plainTable } from './plain-table.ts';
import { flowStartAt } from './store-flow.ts';
import { openStoreOnDisk } from './store-on-disk.ts';
import { steadyFlow } from './store-written.ts';

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

printWritten();

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
