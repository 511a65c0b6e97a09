import { createReadStream } from 'node:fs';
import { open } from 'node:fs/promises';
import { type Info, parse } from 'csv-parse';
import { ReplayRefusal } from './replay-refusal.ts';

/** One record of the file, or one that could not be split into columns. */
export type CsvRecord =
  | {
      readonly kind: 'cells';
      readonly cells: readonly string[];
      readonly line: number;
      readonly bytes: number;
    }
  | { readonly kind: 'broken'; readonly because: string; readonly line: number };

export interface CsvFile {
  readonly bytes: number;
  readonly delimiter: string;
  /** the header first */
  records(): AsyncGenerator<CsvRecord>;
}

const DELIMITERS = [',', ';', '\t'] as const;
const HEADER_BYTES = 65_536;
const LONGEST_RECORD = 1_000_000;

/**
 * Opens a table of text, to be read record by record.
 *
 * @param path - of the file
 * @param delimiter - between columns; null takes whichever of comma, semicolon and tabulator the
 *   first line has most of
 * @returns the file
 * @throws ReplayRefusal when it cannot be opened or is empty
 */
export async function openCsv(path: string, delimiter: string | null): Promise<CsvFile> {
  const { bytes, start } = await startOf(path);
  const firstLine = start.split(/\r?\n/, 1)[0] ?? '';
  if (firstLine.trim() === '') throw new ReplayRefusal(`${path} is empty or has no header line.`);
  const chosen = delimiter ?? mostFrequent(firstLine);
  return { bytes, delimiter: chosen, records: () => recordsOf(path, chosen) };
}

async function startOf(path: string): Promise<{ bytes: number; start: string }> {
  try {
    const file = await open(path);
    try {
      const stat = await file.stat();
      if (stat.isDirectory()) throw new ReplayRefusal(`${path} is a folder; give a CSV file.`);
      const { buffer, bytesRead } = await file.read(Buffer.alloc(HEADER_BYTES), 0, HEADER_BYTES, 0);
      return { bytes: stat.size, start: buffer.toString('utf8', 0, bytesRead) };
    } finally {
      await file.close();
    }
  } catch (cause) {
    if (cause instanceof ReplayRefusal) throw cause;
    const { code } = cause as NodeJS.ErrnoException;
    const why =
      code === 'ENOENT'
        ? 'there is no such file; check the name and the folder you are in'
        : code === 'EACCES'
          ? 'this user may not read it; change its rights or copy it'
          : (cause as Error).message;
    throw new ReplayRefusal(`${path} cannot be read: ${why}.`, { cause });
  }
}

function mostFrequent(line: string): string {
  const count = (each: string) => line.split(each).length;
  return DELIMITERS.reduce((most, each) => (count(each) > count(most) ? each : most));
}

async function* recordsOf(path: string, delimiter: string): AsyncGenerator<CsvRecord> {
  const broken: CsvRecord[] = [];
  const parser = parse({
    delimiter,
    bom: true,
    info: true,
    skip_empty_lines: true,
    relax_column_count: true,
    relax_quotes: true,
    skip_records_with_error: true,
    max_record_size: LONGEST_RECORD,
  });
  let lastLine = 0;
  parser.on('skip', (error) => {
    const unclosed = error?.code === 'CSV_QUOTE_NOT_CLOSED';
    const because = unclosed
      ? 'a quotation mark opens here and is never closed, so all that follows was left out; remove it and replay again'
      : (error?.message ?? 'unreadable');
    const atLine = Number((error as { lines?: unknown } | undefined)?.lines ?? lastLine + 1);
    broken.push({ kind: 'broken', because, line: unclosed ? lastLine + 1 : atLine });
  });
  const input = createReadStream(path);
  input.on('error', (error) => parser.destroy(error));
  input.pipe(parser);
  try {
    for await (const { record, info } of parser as AsyncIterable<{
      record: string[];
      info: Info;
    }>) {
      yield* broken.splice(0);
      lastLine = info.lines;
      const cells = record.map((cell) => cell.trim());
      yield { kind: 'cells', cells, line: lastLine, bytes: info.bytes };
    }
    yield* broken.splice(0);
  } finally {
    input.destroy();
  }
}
