import { type Quantity, quantities, quantityFacts } from '../contract/quantity.ts';
import { correction, flagWords } from '../corrected.ts';
import { csvLine } from '../rules/csv-line.ts';
import { type DatabaseSnapshot, isoTime } from '../store/backup-tables.ts';
import type { TextPiece } from './export-folder.ts';

/** Readings taken from the store at once. */
const aPage = 5000;

export const readingColumns = [
  'time',
  'sensor',
  'quantity',
  'raw',
  'corrected',
  'unit',
  'flags',
] as const;

/** The readings of one sensor and quantity, to be written. */
export interface ReadingSeries {
  readonly path: string;
  readonly sensor: string;
  readonly quantity: Quantity;
  readonly firstAt: number;
  readonly lastAt: number;
  pieces(): Iterable<TextPiece>;
}

/** A sensor may be called `..`, and two may differ in capitals alone: the number tells them apart. */
export const seriesName = (sensorKey: number, sensor: string, quantity: Quantity): string =>
  `${String(sensorKey).padStart(4, '0')}_${sensor}_${quantity}`;

/** Every sensor's quantities that have readings, each a file of its own. */
export function* readingSeries(snapshot: DatabaseSnapshot): Iterable<ReadingSeries> {
  const { reader } = snapshot;
  const corrected = correction(reader.calibrations());
  for (const { key, id } of reader.sensors()) {
    for (const quantity of quantities) {
      const extent = reader.readingExtent(key, quantity);
      if (!extent) continue;
      const path = `readings/${seriesName(key, id, quantity)}.csv`;
      const { firstAt, lastAt } = extent;
      yield {
        ...{ path, sensor: id, quantity, firstAt, lastAt },
        *pieces() {
          yield { text: csvLine(readingColumns), rows: 0 };
          const { unit } = quantityFacts[quantity];
          for (let from = firstAt; ; ) {
            const page = reader.readingsBetween(key, quantity, from, lastAt, aPage);
            for (const reading of page) {
              const { at, raw, flags } = reading;
              const value = corrected(reading);
              const cells = [isoTime(at), id, quantity, raw, value, unit, flagWords(flags)];
              yield { text: csvLine(cells), rows: 1 };
            }
            const last = page.at(-1);
            if (last === undefined || page.length < aPage) return;
            from = last.at + 1;
          }
        },
      };
    }
  }
}
