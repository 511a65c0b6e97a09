import type { Gate } from '../../daemon/contract/gate.ts';
import type { LineKind, PanelKind } from './panel.ts';
import type { Range } from './range.ts';
import type { TimeTick } from './time-ticks.ts';

/** How a line is told apart without its colour, and the custom property that holds its colour. */
export interface LineLook {
  readonly colour: string;
  readonly width: number;
  readonly dash: readonly number[];
}

export const lineLooks: Readonly<Record<LineKind, LineLook>> = {
  air: { colour: '--chart-temp', width: 2, dash: [] },
  dew: { colour: '--chart-dew', width: 2, dash: [2, 3] },
  humidity: { colour: '--chart-damp', width: 2, dash: [7, 4] },
  moisture: { colour: '--chart-wood', width: 2, dash: [9, 3, 2, 3] },
  gas: { colour: '--chart-gas', width: 1.5, dash: [] },
  changes: { colour: '--chart-change', width: 1.5, dash: [4, 4] },
  sum: { colour: '--chart-sum', width: 2.5, dash: [] },
};

/** What a panel writes, in the reader’s words and figures. */
export interface PanelWriting {
  ticks(range: Range, most: number): readonly TimeTick[];
  tick(tick: TimeTick): string;
  /** A figure of the scale. */
  scale(value: number, decimals: number): string;
  /** At the end of a line: its last figure, with its name where there are several lines. */
  end(kind: LineKind, value: number, isAlone: boolean): string;
  need(gates: readonly Gate[]): string;
  /** At the end of the sum to come. */
  ahead: { readonly early: string; readonly likely: string; readonly late: string };
}

/** How high a panel is, CSS pixels, without its time axis. */
export function heightOf(kind: PanelKind, width: number): number {
  const share = width < 600 ? 0.42 : 0.16;
  const factor = kind === 'sum' ? 1.5 : kind === 'temperature' ? 1.15 : 0.85;
  return Math.round(Math.min(220, Math.max(120, width * share)) * factor);
}
