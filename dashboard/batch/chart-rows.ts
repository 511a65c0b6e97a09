import type { BatchChart } from '../../daemon/contract/series.ts';

export interface ChartRow {
  /** UTC epoch seconds. */
  readonly at: number;
  readonly tempC: number | null;
  readonly rhPercent: number | null;
  readonly degreeHours: number | null;
}

/**
 * The curves as a short table: the first, the last and evenly spaced rows between.
 *
 * @param most - how many rows at most, 2 or more
 */
export function chartRows(
  chart: Pick<BatchChart, 'at' | 'tempC' | 'rhPercent' | 'degreeHours'>,
  most: number,
): ChartRow[] {
  const length = chart.at.length;
  const rows = Math.min(most, length);
  return Array.from({ length: rows }, (_, row) => {
    const index = rows === 1 ? 0 : Math.round((row * (length - 1)) / (rows - 1));
    return {
      at: chart.at[index] ?? 0,
      tempC: chart.tempC[index] ?? null,
      rhPercent: chart.rhPercent[index] ?? null,
      degreeHours: chart.degreeHours[index] ?? null,
    };
  });
}
