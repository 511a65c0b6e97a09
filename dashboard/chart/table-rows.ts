import type { Column, Panel } from './panel.ts';
import type { Range } from './range.ts';
import type { ZoneClock } from './zone-clock.ts';

/** Lowest, mean and highest of a row; null where nothing is known. */
export interface RowSpread {
  readonly low: number;
  readonly mean: number;
  readonly high: number;
}

export interface TableRow {
  /** Begin of the row, UTC epoch seconds. */
  readonly at: number;
  /** One for each line, in order. */
  readonly cells: readonly (RowSpread | null)[];
}

export interface RowTable {
  /** Whether a row is a day or longer: its hour is of no interest. */
  readonly byDay: boolean;
  readonly rows: readonly TableRow[];
}

const HOUR_S = 3_600;
const DAY_S = 24 * HOUR_S;
const minuteSteps = [5, 10, 15, 30].map((minutes) => minutes * 60);
const steps = [...minuteSteps, ...[1, 2, 3, 6, 12, 24, 48, 168, 336, 720].map((h) => h * HOUR_S)];

/**
 * The lines of panels as a table of few rows, each a stretch of the reader’s own clock.
 *
 * @param most - how many rows at most, about
 */
export function tableRows(
  panels: readonly Panel[],
  range: Range,
  most: number,
  clock: ZoneClock,
): RowTable {
  const stepS = steps.find((step) => (range.to - range.from) / step <= most) ?? 720 * HOUR_S;
  const starts = rowStarts(range, stepS, clock);
  const rows = starts.map((at, i) => {
    const end = starts[i + 1] ?? Number.POSITIVE_INFINITY;
    const cells = panels.flatMap((panel) =>
      panel.lines.map(({ values, band }) =>
        spreadBetween(panel.at, values, band, Math.max(at, range.from), Math.min(end, range.to)),
      ),
    );
    return { at, cells };
  });
  return {
    byDay: stepS >= DAY_S,
    rows: rows.filter(({ cells }) => cells.some((cell) => cell !== null)),
  };
}

/** When rows begin: at whole hours and days of the clock. */
export function rowStarts(range: Range, stepS: number, clock: ZoneClock): number[] {
  const { year, month, day } = clock.read(range.from * 1000);
  const days = Math.max(1, Math.round(stepS / DAY_S));
  const perDay = Math.max(1, Math.round(DAY_S / stepS));
  const starts: number[] = [];
  for (let n = 0; n < 4_000; n++) {
    for (let i = 0; i < perDay; i++) {
      const minute = (i * stepS) / 60;
      const time = { year, month, day: day + n * days, hour: 0, minute };
      const at = clock.set(stepS >= DAY_S ? { ...time, minute: 0 } : time) / 1000;
      if (at > range.to) return withoutEarly(starts, range.from);
      if (at > (starts.at(-1) ?? Number.NEGATIVE_INFINITY)) starts.push(at);
    }
  }
  return withoutEarly(starts, range.from);
}

/** From the row in which the range begins. */
function withoutEarly(starts: readonly number[], from: number): number[] {
  const after = starts.findIndex((at) => at > from);
  return starts.slice(Math.max(0, after === -1 ? starts.length - 1 : after - 1));
}

function spreadBetween(
  at: readonly number[],
  values: Column,
  band: { readonly low: Column; readonly high: Column } | null,
  from: number,
  to: number,
): RowSpread | null {
  const read = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY, sum: 0, count: 0 };
  const between = { ...read };
  for (let i = 0; i < at.length; i++) {
    const moment = at[i] ?? 0;
    const value = values[i];
    if (moment < from || moment >= to || value == null) continue;
    // Stretches without a reading of their own lie between two: they count only where there is no other.
    const isRead = band === null || band.low[i] != null;
    const into = isRead ? read : between;
    into.low = Math.min(into.low, band?.low[i] ?? value);
    into.high = Math.max(into.high, band?.high[i] ?? value);
    into.sum += value;
    into.count++;
  }
  const { low, high, sum, count } = read.count > 0 ? read : between;
  return count === 0 ? null : { low, mean: sum / count, high };
}
