import type { CurveMark } from '../../daemon/contract/curves.ts';
import type { Gate } from '../../daemon/contract/gate.ts';

/* What is drawn, as plain data in the reader’s units: what no library has to know. */

export type Column = readonly (number | null)[];

export const panelKinds = ['temperature', 'humidity', 'moisture', 'gas', 'changes', 'sum'] as const;
export type PanelKind = (typeof panelKinds)[number];

export const lineKinds = ['air', 'dew', 'humidity', 'moisture', 'gas', 'changes', 'sum'] as const;
export type LineKind = (typeof lineKinds)[number];

export interface PanelLine {
  readonly kind: LineKind;
  /** As many as the panel’s moments; null in a gap. */
  readonly values: Column;
  /** Lowest and highest reading of each stretch, drawn as a band about the line; null without. */
  readonly band: { readonly low: Column; readonly high: Column } | null;
}

/** What a hand meter showed on one board, in the unit of the panel. */
export interface PanelPoint {
  /** Epoch s. */
  readonly at: number;
  readonly value: number;
  /** Counted from 1, in the order they were measured. */
  readonly board: number;
  /** Name of the batch or, where none was named, of the place. */
  readonly of: string;
}

/** What a job needs, in the unit of the panel. */
export interface Need {
  readonly gates: readonly Gate[];
  readonly early: number;
  readonly likely: number;
  readonly late: number;
}

/** The sum to come. */
export interface Fan {
  readonly at: readonly number[];
  readonly early: readonly number[];
  readonly likely: readonly number[];
  readonly late: readonly number[];
}

/** When a verdict expects a job: epoch seconds, null where it does not know or it is past. */
export interface Expected {
  readonly gate: Gate;
  readonly need: number;
  readonly early: number | null;
  readonly likely: number | null;
  readonly late: number | null;
}

export interface Panel {
  readonly kind: PanelKind;
  /** UTC epoch seconds, ascending. */
  readonly at: readonly number[];
  readonly lines: readonly PanelLine[];
  /** Ascending; beside the lines, from people. */
  readonly points: readonly PanelPoint[];
  readonly needs: readonly Need[];
  readonly fan: Fan | null;
  readonly expected: readonly Expected[];
}

/**
 * The newest moment of those at which most lines are known: where there is most to hear of.
 *
 * @param untilAt - what lies after it is forecast, epoch s; answered where no line is known
 */
export function newestTold(panels: readonly Panel[], untilAt: number): number {
  const told = new Map<number, number>();
  let [most, newest] = [0, untilAt];
  for (const { at, lines } of panels) {
    for (const [i, moment] of at.entries()) {
      if (moment > untilAt) break;
      const count =
        (told.get(moment) ?? 0) + lines.filter(({ values }) => values[i] != null).length;
      told.set(moment, count);
      if (count > most || (count === most && moment > newest)) [most, newest] = [count, moment];
    }
  }
  return newest;
}

/** A mark with its moment in epoch seconds. */
export interface PanelMark {
  readonly at: number;
  readonly mark: CurveMark;
}

/** Lowest and highest of a scale, in the unit of the panel. */
export interface Scale {
  readonly low: number;
  readonly high: number;
}

/** What hardly changes is drawn as hardly changing: least height of a scale, in °C, %, ppm or 1/h. */
const leastHeights: Readonly<Record<PanelKind, number>> = {
  temperature: 8,
  humidity: 20,
  moisture: 4,
  gas: 200,
  changes: 1,
  sum: 20,
};

/**
 * The scale of a panel over what is seen.
 *
 * @param from - epoch s
 * @param to - epoch s
 * @param stretch - by how much the reader’s unit is finer than the metric one
 */
export function scaleOf(panel: Panel, from: number, to: number, stretch = 1): Scale {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const see = (value: number | null | undefined) => {
    if (value == null) return;
    low = Math.min(low, value);
    high = Math.max(high, value);
  };
  panel.at.forEach((at, i) => {
    if (at < from || at > to) return;
    for (const { values, band } of panel.lines) {
      see(values[i]);
      see(band?.low[i]);
      see(band?.high[i]);
    }
  });
  for (const { at, value } of panel.points) if (at >= from && at <= to) see(value);
  panel.fan?.at.forEach((at, i) => {
    if (at < from || at > to) return;
    see(panel.fan?.early[i]);
    see(panel.fan?.late[i]);
  });
  const least = leastHeights[panel.kind] * stretch;
  if (panel.kind === 'sum') {
    const needed = Math.max(0, ...panel.needs.map((need) => need.late));
    const top = Math.max(high, panel.fan === null ? 0 : needed, least);
    return { low: 0, high: top * 1.06 };
  }
  if (panel.kind === 'changes') return { low: 0, high: Math.max(high, least) * 1.08 };
  if (low > high) return { low: 0, high: least };
  const missing = Math.max(0, least - (high - low)) / 2;
  const margin = (high - low) * 0.06;
  const scale = { low: low - missing - margin, high: high + missing + margin };
  if (panel.kind === 'humidity') {
    return { low: Math.max(0, scale.low), high: Math.min(100, scale.high) };
  }
  return panel.kind === 'temperature' ? scale : { ...scale, low: Math.max(0, scale.low) };
}
