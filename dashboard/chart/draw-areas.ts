import type uPlot from 'uplot';
import { lineLooks, type PanelWriting } from './look.ts';
import type { Column, Panel } from './panel.ts';

/** Colours and sizes of one drawing. */
export interface Paint {
  /** @param name - a custom property of the style sheet */
  colour(name: string): string;
  /** Sizes are multiplied by it. */
  readonly scale: number;
  /** Too narrow for words beside the drawing. */
  readonly isNarrow: boolean;
  readonly fontFamily: string;
}

/** Canvas pixels to a CSS pixel of the screen’s drawing. */
export const pixels = ({ scale }: Pick<Paint, 'scale'>) => scale * devicePixelRatio;

/** Draws within the axes only. */
export function clipped(plot: uPlot, draw: (ctx: CanvasRenderingContext2D) => void): void {
  const { ctx, bbox } = plot;
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
  ctx.clip();
  draw(ctx);
  ctx.restore();
}

/** On its own ground, so that a line behind does not strike it through. */
export function onGround(
  ctx: CanvasRenderingContext2D,
  text: string,
  x: number,
  y: number,
  paint: Paint,
  cover = 1,
): void {
  ctx.lineWidth = 4 * pixels(paint);
  ctx.lineJoin = 'round';
  ctx.strokeStyle = paint.colour('--linen');
  ctx.globalAlpha = cover;
  ctx.strokeText(text, x, y);
  ctx.globalAlpha = 1;
  ctx.fillText(text, x, y);
}

const toX = (plot: uPlot) => (at: number) => plot.valToPos(at, 'x', true);
const toY = (plot: uPlot) => (value: number) => plot.valToPos(value, 'y', true);

/** From the lowest to the highest of each stretch; air changes as whiskers, for they are estimates apart. */
export function drawBands(plot: uPlot, panel: Panel, paint: Paint): void {
  const [x, y, px] = [toX(plot), toY(plot), pixels(paint)];
  clipped(plot, (ctx) => {
    for (const { kind, band, values } of panel.lines) {
      if (band === null) continue;
      const colour = paint.colour(lineLooks[kind].colour);
      ctx.fillStyle = ctx.strokeStyle = colour;
      if (kind === 'changes') {
        ctx.globalAlpha = 0.7;
        ctx.lineWidth = 1.5 * px;
        ctx.beginPath();
        panel.at.forEach((at, i) => {
          const [low, high] = [band.low[i], band.high[i]];
          if (low == null || high == null) return;
          ctx.moveTo(x(at), y(low));
          ctx.lineTo(x(at), y(high));
        });
        ctx.stroke();
        continue;
      }
      // Where no reading fell into a stretch the band is as narrow as the line.
      const edge = (of: Column, i: number) => y(of[i] ?? values[i] ?? 0);
      ctx.globalAlpha = 0.22;
      for (const [first, last] of runs(values)) {
        ctx.beginPath();
        for (let i = first; i <= last; i++) ctx.lineTo(x(panel.at[i] ?? 0), edge(band.high, i));
        for (let i = last; i >= first; i--) ctx.lineTo(x(panel.at[i] ?? 0), edge(band.low, i));
        ctx.closePath();
        ctx.fill();
      }
    }
  });
}

/** Stretches without a gap, as first and last index. */
function runs(values: readonly (number | null)[]): [number, number][] {
  const found: [number, number][] = [];
  let start = -1;
  for (let i = 0; i <= values.length; i++) {
    const isThere = i < values.length && values[i] !== null;
    if (isThere && start === -1) start = i;
    if (!isThere && start !== -1) {
      found.push([start, i - 1]);
      start = -1;
    }
  }
  return found;
}

/** What each job needs: a soft band from early to late with a dotted line at likely. */
export function drawNeeds(plot: uPlot, panel: Panel, paint: Paint): void {
  const [y, px] = [toY(plot), pixels(paint)];
  const { left, width } = plot.bbox;
  clipped(plot, (ctx) => {
    for (const need of panel.needs) {
      ctx.fillStyle = paint.colour('--chart-band');
      ctx.fillRect(left, y(need.late), width, y(need.early) - y(need.late));
      ctx.strokeStyle = paint.colour('--chart-need');
      ctx.lineWidth = px;
      ctx.setLineDash([2 * px, 3 * px]);
      ctx.beginPath();
      ctx.moveTo(left, y(need.likely));
      ctx.lineTo(left + width, y(need.likely));
      ctx.stroke();
    }
  });
}

/** The sum to come as a fan, and from when to when a verdict expects each job. */
export function drawAhead(plot: uPlot, panel: Panel, writing: PanelWriting, paint: Paint): void {
  const { fan } = panel;
  if (fan === null) return;
  const [x, y, px] = [toX(plot), toY(plot), pixels(paint)];
  clipped(plot, (ctx) => {
    const along = (sums: readonly number[]) => {
      for (const [i, at] of fan.at.entries()) ctx.lineTo(x(at), y(sums[i] ?? 0));
    };
    ctx.fillStyle = ctx.strokeStyle = paint.colour('--chart-sum');
    ctx.globalAlpha = 0.16;
    ctx.beginPath();
    along(fan.early);
    for (let i = fan.at.length - 1; i >= 0; i--) ctx.lineTo(x(fan.at[i] ?? 0), y(fan.late[i] ?? 0));
    ctx.closePath();
    ctx.fill();
    ctx.globalAlpha = 1;
    ctx.lineWidth = 2 * px;
    ctx.setLineDash([5 * px, 4 * px]);
    ctx.beginPath();
    along(fan.likely);
    ctx.stroke();
    ctx.setLineDash([]);
    drawExpected(plot, panel, paint);
    nameFan(plot, panel, writing, paint);
  });
}

/** Along the line of what a job needs: a bar from early to late, a stroke at likely. */
function drawExpected(plot: uPlot, panel: Panel, paint: Paint): void {
  const { ctx } = plot;
  const [x, y, px] = [toX(plot), toY(plot), pixels(paint)];
  const named = new Set(panel.needs.map(({ gates }) => gates[0]));
  ctx.strokeStyle = paint.colour('--chart-need');
  for (const { gate, need, early, likely, late } of panel.expected) {
    if (!named.has(gate) || late === null) continue;
    const start = early ?? panel.fan?.at[0] ?? late;
    ctx.lineWidth = 3 * px;
    ctx.beginPath();
    ctx.moveTo(x(start), y(need));
    ctx.lineTo(x(late), y(need));
    ctx.stroke();
    if (likely === null) continue;
    ctx.lineWidth = 2 * px;
    ctx.beginPath();
    ctx.moveTo(x(likely), y(need) - 6 * px);
    ctx.lineTo(x(likely), y(need) + 6 * px);
    ctx.stroke();
  }
}

/** The three ways of the fan are named where they leave the drawing. */
function nameFan(plot: uPlot, { fan }: Panel, writing: PanelWriting, paint: Paint): void {
  if (fan === null) return;
  const { ctx, bbox } = plot;
  const [x, y, px] = [toX(plot), toY(plot), pixels(paint)];
  const right = bbox.left + bbox.width;
  const end = fan.at.reduce((last, at, i) => (x(at) <= right + px ? i : last), -1);
  if (end < 1) return;
  const width = x(fan.at[end] ?? 0) - x(fan.at[0] ?? 0);
  const tall = y(fan.late[end] ?? 0) - y(fan.early[end] ?? 0);
  if (width < 90 * px || tall < 44 * px) return;
  ctx.fillStyle = paint.colour('--ink-soft');
  ctx.font = `${Math.round(12 * px)}px ${paint.fontFamily}`;
  ctx.textAlign = 'right';
  const at = x(fan.at[end] ?? 0) - 6 * px;
  onGround(ctx, writing.ahead.early, at, y(fan.early[end] ?? 0) + 16 * px, paint, 0.7);
  onGround(ctx, writing.ahead.late, at, y(fan.late[end] ?? 0) - 7 * px, paint, 0.7);
}
