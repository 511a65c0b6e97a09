import type { Curves } from '../../daemon/contract/curves.ts';
import type { PanelPoint } from './panel.ts';

/** A cross in a square of 10 × 10: where the meter’s pins went in. No line and no mark looks like it. */
export const handPath = 'M1.5 1.5L8.5 8.5M8.5 1.5L1.5 8.5';

/** What meters showed, a point for each board, ascending. */
export function handPoints({ handMoisture = [] }: Pick<Curves, 'handMoisture'>): PanelPoint[] {
  return handMoisture.flatMap(({ at, batchName, placeName, percent }) =>
    percent.map((value, board) => ({
      at: Date.parse(at) / 1000,
      value,
      board: board + 1,
      of: batchName ?? placeName ?? '',
    })),
  );
}

/** Points that were measured together: one walk along one batch. */
export interface Measuring {
  /** Epoch s. */
  readonly at: number;
  readonly of: string;
  readonly points: readonly PanelPoint[];
}

/** The points by when and on what they were measured, in their order. */
export function measurings(points: readonly PanelPoint[]): Measuring[] {
  const found: { at: number; of: string; points: PanelPoint[] }[] = [];
  for (const point of points) {
    const last = found.at(-1);
    // The first board begins another one, also where two were written down for the same moment.
    if (last?.at === point.at && last.of === point.of && point.board > 1) last.points.push(point);
    else found.push({ at: point.at, of: point.of, points: [point] });
  }
  return found;
}

/** What was measured nearest to a moment; null with nothing near it. */
export function measuredNear(
  points: readonly PanelPoint[],
  at: number,
  withinS: number,
): Measuring | null {
  const apart = (one: Measuring) => Math.abs(one.at - at);
  return measurings(points)
    .filter((one) => apart(one) <= withinS)
    .reduce<Measuring | null>(
      (nearest, one) => (nearest === null || apart(one) < apart(nearest) ? one : nearest),
      null,
    );
}
