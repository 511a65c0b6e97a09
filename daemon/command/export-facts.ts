import { csvLine } from '../rules/csv-line.ts';
import {
  type DatabaseSnapshot,
  type ExportedTable,
  exportedTables,
} from '../store/backup-tables.ts';
import type { TextPiece } from './export-folder.ts';

/** A table of facts in one of its two forms, to be written. */
export interface FactFile {
  readonly path: string;
  readonly table: ExportedTable;
  pieces(): Iterable<TextPiece>;
}

/** Every table of facts, as JSON and as CSV. */
export function* factFiles(snapshot: DatabaseSnapshot): Iterable<FactFile> {
  for (const [table, name] of Object.entries(exportedTables) as [ExportedTable, string][]) {
    yield { path: `facts/${name}.json`, table, pieces: () => asJson(snapshot, table) };
    yield { path: `facts/${name}.csv`, table, pieces: () => asCsv(snapshot, table) };
  }
}

/** A JSON array with one row a line, so that it can be read line by line too. */
function* asJson(snapshot: DatabaseSnapshot, table: ExportedTable): Iterable<TextPiece> {
  let before = '[\n';
  for (const row of snapshot.rows(table)) {
    yield { text: `${before}${JSON.stringify(row)}`, rows: 1 };
    before = ',\n';
  }
  yield { text: before === '[\n' ? '[]\n' : '\n]\n', rows: 0 };
}

function* asCsv(snapshot: DatabaseSnapshot, table: ExportedTable): Iterable<TextPiece> {
  const columns = snapshot.columns(table);
  yield { text: csvLine(columns), rows: 0 };
  for (const row of snapshot.rows(table)) {
    yield { text: csvLine(columns.map((column) => row[column] ?? null)), rows: 1 };
  }
}
