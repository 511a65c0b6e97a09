import { bench, describe } from 'vitest';
import { openSite } from '../monitor/site.ts';

const minute = 60_000;
const start = Date.UTC(2026, 3, 1);

/** A site with one rack and a coat that has cured for some days at a reading a minute. */
function curing(days: number) {
  const site = openSite();
  const rack = site.place('Rack', 'rack');
  site.send([{ sensor: 'a', at: start, value: 18 }]);
  site.put('a', rack);
  const batch = site.batch(rack);
  site.coat(batch, 0, start);
  const readings = Array.from({ length: days * 1440 }, (_, i) => ({
    sensor: 'a',
    at: start + (i + 1) * minute,
    value: 18 + Math.sin(i / 300),
  }));
  site.send(readings);
  site.pack(start + days * 1440 * minute);
  site.coatsAt(batch, start + days * 1440 * minute);
  let at = start + days * 1440 * minute;
  return {
    step(): void {
      at += minute;
      site.send([{ sensor: 'a', at, value: 18 }]);
      site.coatsAt(batch, at);
    },
    late(): void {
      site.send([
        { sensor: 'a', at: start + Math.round(((at - start) * 0.5) / 7) + (at % 997), value: 18 },
      ]);
      site.coatsAt(batch, at);
      at += 1;
    },
  };
}

describe('one more reading and the verdicts after it: flat in the length of the season', () => {
  for (const days of [1, 10, 60]) {
    const site = curing(days);
    bench(`${days} days of readings`, () => site.step());
  }
});

describe('one late reading and the verdicts after it', () => {
  for (const days of [1, 10, 60]) {
    const site = curing(days);
    bench(`${days} days of readings`, () => site.late());
  }
});
