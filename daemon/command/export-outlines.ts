import { type Quantity, quantities, quantityFacts } from '../contract/quantity.ts';
import { csvLine } from '../rules/csv-line.ts';
import { type DatabaseSnapshot, isoTime } from '../store/backup-tables.ts';
import type { LapsedOutline } from '../store/lapsed-outlines.ts';
import type { TextPiece } from './export-folder.ts';
import { seriesName } from './export-readings.ts';

export const outlineColumns = [
  ...['span', 'from', 'sensor', 'quantity', 'count', 'first', 'last'],
  ...['low', 'lowAt', 'high', 'highAt', 'mean', 'unit'],
] as const;

/** What is left of one sensor's readings of a quantity that are no longer kept, to be written. */
export interface OutlineFile {
  readonly path: string;
  readonly sensor: string;
  readonly quantity: Quantity;
  pieces(): Iterable<TextPiece>;
}

/** Every sensor's quantities of which readings were let go, each as JSON and as CSV. */
export function* outlineFiles(snapshot: DatabaseSnapshot): Iterable<OutlineFile> {
  const { reader } = snapshot;
  for (const { key, id: sensor } of reader.sensors()) {
    for (const quantity of quantities) {
      const [first] = reader.lapsedOutlines(key, quantity);
      if (!first) continue;
      const name = `outlines/${seriesName(key, sensor, quantity)}`;
      const rows = () => rowsOf(reader.lapsedOutlines(key, quantity), sensor, quantity);
      yield { ...{ path: `${name}.json`, sensor, quantity }, pieces: () => asJson(rows()) };
      yield { ...{ path: `${name}.csv`, sensor, quantity }, pieces: () => asCsv(rows()) };
    }
  }
}

type OutlineRow = Record<(typeof outlineColumns)[number], string | number | null>;

function* rowsOf(
  outlines: Iterable<LapsedOutline>,
  sensor: string,
  quantity: Quantity,
): Iterable<OutlineRow> {
  const { unit } = quantityFacts[quantity];
  for (const { span, from, count, firstAt, lastAt, low, lowAt, high, highAt, sum } of outlines) {
    yield {
      ...{ span, from: isoTime(from), sensor, quantity, count },
      ...{ first: isoTime(firstAt), last: isoTime(lastAt) },
      ...{ low, lowAt: isoTime(lowAt), high, highAt: isoTime(highAt), mean: sum / count, unit },
    };
  }
}

/** A JSON array with one row a line. */
function* asJson(rows: Iterable<OutlineRow>): Iterable<TextPiece> {
  let before = '[\n';
  for (const row of rows) {
    yield { text: `${before}${JSON.stringify(row)}`, rows: 1 };
    before = ',\n';
  }
  yield { text: '\n]\n', rows: 0 };
}

function* asCsv(rows: Iterable<OutlineRow>): Iterable<TextPiece> {
  yield { text: csvLine(outlineColumns), rows: 0 };
  for (const row of rows) {
    yield { text: csvLine(outlineColumns.map((column) => row[column])), rows: 1 };
  }
}
