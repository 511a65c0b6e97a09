import { afterAll, bench, describe } from 'vitest';
import { figure, print } from './bench-print.ts';
import { plainTable } from './plain-table.ts';
import { liveFlow } from './store-live.ts';
import { openStoreOnDisk } from './store-on-disk.ts';

/** The end of an hour, when it is packed, would count for 24 of them. */
const seconds = 120;
const aims = new Map([
  [1, 200],
  [20, 1000],
]);

const rows = await Promise.all(
  [...aims].map(async ([perSecond, aim]) => {
    const { megabytesADay, readings, medianMs, longestMs } = await liveFlow(perSecond, seconds);
    return [
      `${perSecond} a second`,
      ...[figure(megabytesADay / aim, 2), figure(megabytesADay, 0), String(aim), String(readings)],
      ...[figure(medianMs / 1000), figure(longestMs / 1000)],
    ];
  }),
);
print(
  `Bytes written by a whole daemon with default settings, by the kernel’s counter, ${seconds} s of real time, log included, packing left out
${plainTable(['', 'of the aim', 'MB a day', 'aim', 'readings', 'ack s', 'longest s'], rows)}`,
);

const store = openStoreOnDisk();
afterAll(() => store.remove());
describe('a question to an empty store', () => {
  bench('the newest reading of a sensor', () => {
    store.read.readingBefore(1, 'air-temperature', 0, 0);
  });
});
