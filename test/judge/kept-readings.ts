import type { ReadingSource } from '../../daemon/monitor/ports.ts';
import type { ReadingFact } from '../../daemon/rules/facts.ts';
import { runOf } from '../../daemon/rules/reading-run.ts';

/** Readings in memory, for whoever looks them up thousands of times. The store has them as well. */
export function keptReadings() {
  const series = new Map<string, ReadingFact[]>();
  const of = (sensorKey: number, quantity: string) => series.get(`${sensorKey} ${quantity}`) ?? [];

  /** The first place whose reading is at a moment or later. */
  function firstFrom(list: readonly ReadingFact[], at: number): number {
    let low = 0;
    let high = list.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((list[middle]?.at ?? 0) < at) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  const source: ReadingSource = {
    readingsBetween(sensorKey, quantity, from, to) {
      const list = of(sensorKey, quantity);
      return list.slice(firstFrom(list, from), firstFrom(list, to + 1));
    },
    readingRun(sensorKey, quantity, from, to, limit) {
      return runOf(source.readingsBetween(sensorKey, quantity, from, to).slice(0, limit));
    },
    readingBefore(sensorKey, quantity, at, without) {
      const list = of(sensorKey, quantity);
      for (let index = firstFrom(list, at) - 1; index >= 0; index--) {
        const reading = list[index];
        if (reading && (reading.flags & without) === 0) return reading;
      }
      return null;
    },
    readingAfter(sensorKey, quantity, at, without) {
      const list = of(sensorKey, quantity);
      return (
        list.slice(firstFrom(list, at + 1)).find(({ flags }) => (flags & without) === 0) ?? null
      );
    },
  };

  return {
    source,
    keep(fresh: readonly ReadingFact[]): void {
      for (const reading of fresh) {
        const key = `${reading.sensorKey} ${reading.quantity}`;
        const list = series.get(key) ?? [];
        series.set(key, list);
        // nearly always the newest; a sensor with a wrong clock sends older ones
        list.splice(firstFrom(list, reading.at), 0, reading);
      }
    },
  };
}
