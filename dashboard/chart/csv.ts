import type { AirChanges, BatchCurves, Curves } from '../../daemon/contract/curves.ts';
import { handPoints } from './hand-points.ts';
import type { PanelPoint } from './panel.ts';
import type { Range } from './range.ts';

/**
 * How a text begins that spreadsheets take for a formula.
 *
 * **Source:** OWASP, “CSV Injection” (community page, from memory).
 */
const startsFormula = /^[=+\-@\t\r\n＝＋－＠]/;
/** **Source:** RFC 4180 (2005), section 2, points 5 to 7. */
const wantsQuotes = /[",\r\n]|^\s|\s$/;

/** One cell; a text that a spreadsheet would reckon with gets an apostrophe before it. */
export function csvCell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number') return String(value);
  const tame = startsFormula.test(value) ? `'${value}` : value;
  return wantsQuotes.test(tame) ? `"${tame.replace(/"/g, '""')}"` : tame;
}

/** Heads of the columns, in the reader’s words with metric units. */
export interface CsvHeads {
  readonly time: string;
  readonly low: (name: string, unit: string) => string;
  readonly mean: (name: string, unit: string) => string;
  readonly high: (name: string, unit: string) => string;
  readonly one: (name: string, unit: string) => string;
  readonly early: (name: string, unit: string) => string;
  readonly likely: (name: string, unit: string) => string;
  readonly late: (name: string, unit: string) => string;
  readonly names: {
    readonly air: string;
    readonly dew: string;
    readonly humidity: string;
    readonly moisture: string;
    readonly gas: string;
    readonly changes: string;
    readonly sum: string;
    readonly counted: string;
  };
  /** A board that a hand meter was held to. */
  readonly byHand: (of: string, board: number) => string;
  readonly marks: string;
}

/** A column for each board of each batch or place that was measured by hand. */
function byBoard(curves: Curves, { byHand }: CsvHeads): ReadonlyMap<string, PanelPoint[]> {
  const columns = new Map<string, PanelPoint[]>();
  for (const point of handPoints(curves)) {
    const head = byHand(point.of, point.board);
    columns.set(head, [...(columns.get(head) ?? []), point]);
  }
  return columns;
}

interface CsvColumn {
  readonly head: string;
  readonly at: readonly number[];
  readonly values: readonly (number | string | null)[];
}

/**
 * What is shown as a file: metric figures as the daemon gave them, ISO 8601 times in UTC.
 *
 * @param marks - moments in epoch seconds with their words
 * @returns RFC 4180, with a header
 */
export function curvesCsv(
  curves: Curves | BatchCurves,
  changes: AirChanges | null,
  marks: readonly { readonly at: number; readonly words: string }[],
  range: Range,
  heads: CsvHeads,
): string {
  const columns: CsvColumn[] = [];
  const { at } = curves;
  const add = (head: string, values: CsvColumn['values'], moments = at) =>
    columns.push({ head, at: moments, values });
  const spread = (name: string, unit: string, of: Curves['tempC'], moments = at) => {
    if (of === null) return;
    add(heads.low(name, unit), of.low, moments);
    add(heads.mean(name, unit), of.mean, moments);
    add(heads.high(name, unit), of.high, moments);
  };
  const { names } = heads;
  spread(names.air, '°C', curves.tempC);
  if (curves.dewPointC) add(heads.one(names.dew, '°C'), curves.dewPointC);
  spread(names.humidity, '%', curves.rhPercent);
  spread(names.moisture, '%', curves.woodMoisturePercent);
  for (const [head, points] of byBoard(curves, heads)) {
    add(
      head,
      points.map(({ value }) => value),
      points.map((point) => point.at),
    );
  }
  spread(names.gas, 'ppm', curves.carbonDioxidePpm);
  if (changes?.perHour.some((value) => value !== null)) {
    const { low, perHour, high } = changes;
    spread(names.changes, '1/h', { low, mean: perHour, high }, changes.at);
  }
  if ('degreeHours' in curves && curves.coatId !== null) {
    add(heads.one(names.sum, '°C·h'), curves.degreeHours);
    add(heads.one(names.counted, '°C·h'), curves.countedDegreeHours);
    const { ahead } = curves;
    if (ahead) {
      add(heads.early(names.counted, '°C·h'), ahead.early, ahead.at);
      add(heads.likely(names.counted, '°C·h'), ahead.likely, ahead.at);
      add(heads.late(names.counted, '°C·h'), ahead.late, ahead.at);
    }
  }
  if (marks.length > 0) {
    const byTime = new Map<number, string>();
    for (const { at: moment, words } of marks) {
      const before = byTime.get(moment);
      byTime.set(moment, before === undefined ? words : `${before}; ${words}`);
    }
    add(heads.marks, [...byTime.values()], [...byTime.keys()]);
  }
  const rows = new Map<number, (number | string | null)[]>();
  columns.forEach(({ at: moments, values }, column) => {
    moments.forEach((moment, i) => {
      if (moment < range.from || moment > range.to) return;
      const row = rows.get(moment) ?? new Array<null>(columns.length).fill(null);
      row[column] = values[i] ?? null;
      rows.set(moment, row);
    });
  });
  const line = (cells: readonly (string | number | null)[]) =>
    `${cells.map(csvCell).join(',')}\r\n`;
  const ascending = [...rows.keys()].sort((a, b) => a - b);
  return [
    line([heads.time, ...columns.map(({ head }) => head)]),
    ...ascending.map((moment) =>
      line([new Date(moment * 1000).toISOString(), ...(rows.get(moment) ?? [])]),
    ),
  ].join('');
}
