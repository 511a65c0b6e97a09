import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import { drawAhead, drawBands, drawNeeds } from './draw-areas.ts';
import { allOf, drawPoints, lonely } from './draw-points.ts';
import { drawEnds, drawMarks } from './draw-words.ts';
import { heightOf, lineLooks, type PanelWriting } from './look.ts';
import { type Panel, type PanelMark, type Scale, scaleOf } from './panel.ts';
import type { Range } from './range.ts';
import { tickDecimals, valueTicks } from './value-ticks.ts';

/** What is drawn of a panel. */
export interface PanelView {
  readonly panel: Panel;
  readonly range: Range;
  readonly marks: readonly PanelMark[];
  readonly writing: PanelWriting;
}

/** How and where it is drawn. */
export interface PanelFrame {
  /** Panels with the same key share their cursor. */
  readonly syncKey: string;
  /** The first panel has the marks above it, the last one the time axis below it. */
  readonly isFirst: boolean;
  readonly isLast: boolean;
  /** By how much all is larger than on the screen; for a picture. */
  readonly scale: number;
  /** Width in CSS pixels; that of the target when left out. */
  readonly width?: number;
  /** Height of a unit of the scale beside the metric one. */
  readonly stretch: number;
  onCursor(at: number | null): void;
}

export interface DrawnPanel {
  show(view: PanelView): void;
  /** Stands the cursor at a moment (epoch s) without anybody pointing; null takes it away. */
  stand(at: number | null): void;
  readonly canvas: HTMLCanvasElement;
  close(): void;
}

const AXIS_WIDTH = 50;
const TIME_AXIS_HEIGHT = 30;
const MARKS_HEIGHT = 20;
const LEAST_TICK_WIDTH = 82;
const LEAST_TICK_HEIGHT = 34;
const NARROW = 600;

/** Draws one panel; its colours are read from the style sheet, and anew when the light changes. */
export function drawPanel(target: HTMLElement, first: PanelView, frame: PanelFrame): DrawnPanel {
  let view = first;
  /** Where the cursor was stood, epoch s. */
  let stoodAt: number | null = null;
  /** What the pointer had done last by then. */
  let doneBefore: MouseEvent | null = null;
  const isNarrow = () => size().width / frame.scale < NARROW;
  let madeNarrow = isNarrow();
  let plot = make();

  function make(): uPlot {
    madeNarrow = isNarrow();
    return new uPlot(options(), data(), target);
  }

  function data(): uPlot.AlignedData {
    const { at, lines } = view.panel;
    const columns = lines.map(({ values }) => values);
    // Points alone have no line, but the library gives a scale to none but a line’s.
    if (columns.length === 0) columns.push(at.map(() => null));
    return [at, ...columns] as unknown as uPlot.AlignedData;
  }

  function size() {
    const width = Math.max(240, frame.width ?? target.clientWidth);
    const height = heightOf(view.panel.kind, width);
    const around = (frame.isFirst ? MARKS_HEIGHT : 6) + (frame.isLast ? TIME_AXIS_HEIGHT : 6);
    return { width: width * frame.scale, height: (height + around) * frame.scale };
  }

  function options(): uPlot.Options {
    const { scale } = frame;
    const style = getComputedStyle(target);
    const colour = (name: string) => style.getPropertyValue(name).trim();
    const font = `${Math.round(12.5 * scale)}px ${style.fontFamily}`;
    const { kind, lines } = view.panel;
    // Asked for several times in one drawing.
    let scaled: { of: PanelView; is: Scale } | null = null;
    const y = () => {
      if (scaled?.of !== view) {
        const { from, to } = view.range;
        scaled = { of: view, is: scaleOf(view.panel, from, to, frame.stretch) };
      }
      return scaled.is;
    };
    const rows = () => heightOf(kind, size().width / scale) / LEAST_TICK_HEIGHT;
    const columns = () => (size().width / scale - AXIS_WIDTH) / LEAST_TICK_WIDTH;
    const axis = {
      stroke: colour('--ink-soft'),
      font,
      ticks: { show: false },
      grid: { stroke: colour('--line'), width: scale },
      gap: 5 * scale,
    };
    const paint = { colour, scale, isNarrow: madeNarrow, fontFamily: style.fontFamily };
    return {
      ...size(),
      legend: { show: false },
      padding: [
        (frame.isFirst ? MARKS_HEIGHT : 6) * scale,
        (madeNarrow ? 10 : 132) * scale,
        frame.isLast ? 0 : 6 * scale,
        0,
      ],
      cursor: {
        show: scale === 1,
        sync: { key: frame.syncKey },
        drag: { x: false, y: false, setScale: false },
        y: false,
        points: { size: 8 },
      },
      scales: {
        x: { time: false, range: () => [view.range.from, view.range.to] },
        y: { range: () => [y().low, y().high] },
      },
      axes: [
        {
          ...axis,
          size: frame.isLast ? TIME_AXIS_HEIGHT * scale : 0,
          splits: () => view.writing.ticks(view.range, columns()).map(({ at }) => at),
          values: () =>
            view.writing
              .ticks(view.range, columns())
              .map((tick) => (frame.isLast ? view.writing.tick(tick) : '')),
        },
        {
          ...axis,
          size: AXIS_WIDTH * scale,
          splits: () => valueTicks(y().low, y().high, rows()),
          values: (_plot, ticks) => {
            const decimals = tickDecimals(ticks);
            return ticks.map((tick) => view.writing.scale(tick, decimals));
          },
        },
      ],
      series: [
        {},
        ...(lines.length === 0 ? [{}] : []),
        ...lines.map((line) => {
          const look = lineLooks[line.kind];
          return {
            stroke: colour(look.colour),
            width: look.width * scale,
            dash: look.dash.map((length) => length * scale),
            points: {
              show: true,
              size: 5 * scale,
              width: scale,
              fill: colour(look.colour),
              filter: (of: uPlot, series: number) =>
                line.kind === 'changes' ? allOf(of, series) : lonely(of, series),
            },
          };
        }),
      ],
      hooks: {
        drawClear: [
          (drawn) => {
            drawNeeds(drawn, view.panel, paint);
            drawBands(drawn, view.panel, paint);
            drawAhead(drawn, view.panel, view.writing, paint);
          },
        ],
        draw: [
          (drawn) => {
            drawMarks(drawn, view.marks, frame.isFirst, paint);
            drawPoints(drawn, view.panel, paint);
            drawEnds(drawn, view.panel, view.writing, paint);
          },
        ],
        setCursor: [
          (drawn) => {
            const { left } = drawn.cursor;
            // The library tells of a cursor that was stood there too when it draws anew, and where it
            // stood before there was any width.
            if (stoodAt !== null && (drawn.cursor.event ?? null) === doneBefore) {
              if (left !== leftOf(stoodAt)) stand(stoodAt);
              return;
            }
            frame.onCursor(left == null || left < 0 ? null : drawn.posToVal(left, 'x'));
          },
        ],
      },
    };
  }

  const resized = new ResizeObserver(() => {
    const { width, height } = size();
    // A tablet was turned: what stands beside the drawing has another room.
    if (madeNarrow !== isNarrow()) again();
    else if (Math.abs(plot.width - width) >= 1) plot.setSize({ width, height });
  });
  if (frame.width === undefined) resized.observe(target);
  const relit = new MutationObserver(again);
  relit.observe(document.documentElement, { attributeFilter: ['data-light'] });

  function again(): void {
    plot.destroy();
    plot = make();
    if (stoodAt !== null) stand(stoodAt);
  }

  function leftOf(at: number): number {
    const { from, to } = view.range;
    const width = plot.over.clientWidth;
    return at < from || at > to ? -10 : ((at - from) / (to - from)) * width;
  }

  function stand(at: number | null): void {
    stoodAt = at;
    doneBefore = plot.cursor.event ?? null;
    const left = at === null ? -10 : leftOf(at);
    plot.setCursor({ left, top: left < 0 ? -10 : 0 }, false);
  }

  return {
    show(next) {
      const isSame =
        next.panel.lines.map(({ kind }) => kind).join() ===
        view.panel.lines.map(({ kind }) => kind).join();
      view = next;
      if (isSame) plot.setData(data());
      else again();
    },
    stand,
    get canvas() {
      return plot.ctx.canvas;
    },
    close() {
      resized.disconnect();
      relit.disconnect();
      plot.destroy();
    },
  };
}
