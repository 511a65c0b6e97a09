import type { Database } from 'better-sqlite3';
import { type OutlineRow, outlineColumns, outlineOfRow } from './packed-days.ts';
import { hourMs, hourOf, type KeptReading, type Outline } from './packed-hour.ts';
import type { PackedHours } from './packed-hours.ts';

/** What a curve is asked for. */
export interface OutlineQuestion {
  sensorKey: number;
  code: number;
  /** Epoch ms, both included. */
  from: number;
  to: number;
  /** How many points are to be drawn. */
  points: number;
  /** When another calibration begins, epoch ms, ascending: no point may speak for both sides of it. */
  changes: readonly number[];
}

/** What a time begins and ends with, where it reaches into a day or an hour, has stretches of its own. */
export const stretchEdges = 2;
/** Where calibrations part more than this share of the points, each hour is looked at. */
export const mostParted = 1 / 4;

/** One reading as an outline of itself. */
export const pieceOf = ({ at, raw }: KeptReading): Outline => ({
  count: 1,
  firstAt: at,
  lastAt: at,
  lowAt: at,
  highAt: at,
  low: raw,
  high: raw,
  sum: raw,
});

/** Adds a piece’s one or two readings to points that ascend. */
export function addPoints(
  points: { at: number; raw: number }[],
  { lowAt, low, highAt, high }: Pick<Outline, 'lowAt' | 'low' | 'highAt' | 'high'>,
): void {
  if (lowAt < highAt) points.push({ at: lowAt, raw: low });
  points.push({ at: highAt, raw: high });
  if (lowAt > highAt) points.push({ at: lowAt, raw: low });
}

/**
 * Looks up the packed hours of a time, ascending: each as one piece, but reading by reading where the
 * time reaches only into a part of it, or a calibration begins within it.
 */
export function hourPieces(db: Database, packed: PackedHours) {
  const rows = db
    .prepare<[number, number, number, number], OutlineRow>(
      `select hour, ${outlineColumns} from packed_hour
        where sensor_key = ? and quantity = ? and hour between ? and ? order by hour`,
    )
    .raw();

  return (question: OutlineQuestion, from: number, to: number): Outline[] => {
    const { sensorKey, code, changes } = question;
    const pieces: Outline[] = [];
    const addEach = (fromAt: number, toAt: number) => {
      const found = packed.between(sensorKey, code, fromAt, toAt, Number.POSITIVE_INFINITY);
      for (const reading of found) pieces.push(pieceOf(reading));
    };
    const firstWhole = Math.ceil(from / hourMs);
    const lastWhole = Math.floor((to + 1) / hourMs) - 1;
    if (from < firstWhole * hourMs) addEach(from, Math.min(to, firstWhole * hourMs - 1));
    const parted = new Set(changes.filter((at) => at % hourMs !== 0).map(hourOf));
    const kept = parted.size > 0 ? packed.keptFrom() : 0;
    // Row by row: the thousands of a year held at once cost more in garbage than in looking up.
    for (const row of rows.iterate(sensorKey, code, firstWhole, lastWhole)) {
      const [hour] = row;
      if (hour >= kept && parted.has(hour)) addEach(hour * hourMs, (hour + 1) * hourMs - 1);
      else pieces.push(outlineOfRow(row, hourMs));
    }
    const lastFrom = Math.max(firstWhole, lastWhole + 1) * hourMs;
    if (lastFrom <= to) addEach(lastFrom, to);
    return pieces;
  };
}
export type HourPieces = ReturnType<typeof hourPieces>;
