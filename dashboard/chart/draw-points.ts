import type uPlot from 'uplot';
import { clipped, type Paint, pixels } from './draw-areas.ts';
import { handPath } from './hand-points.ts';
import type { Panel } from './panel.ts';

/** Half the size of a cross, in the pixels of the screen’s drawing. */
const HALF = 5;

/** What was measured by hand: crosses on a ground of their own, so that a line behind is no part of them. */
export function drawPoints(plot: uPlot, { points }: Panel, paint: Paint): void {
  const px = pixels(paint);
  clipped(plot, (ctx) => {
    ctx.lineCap = 'round';
    for (const { at, value } of points) {
      const [x, y] = [plot.valToPos(at, 'x', true), plot.valToPos(value, 'y', true)];
      ctx.save();
      ctx.translate(x - HALF * px, y - HALF * px);
      ctx.scale(px, px);
      const cross = new Path2D(handPath);
      ctx.strokeStyle = paint.colour('--linen');
      ctx.lineWidth = 4.5;
      ctx.stroke(cross);
      ctx.strokeStyle = paint.colour('--ink');
      ctx.lineWidth = 2;
      ctx.stroke(cross);
      ctx.restore();
    }
  });
}

/** Readings that stand alone between two gaps: no line would show them. */
export function lonely(plot: uPlot, series: number): number[] {
  const values = plot.data[series] ?? [];
  const alone: number[] = [];
  for (let i = 0; i < values.length; i++) {
    if (values[i] != null && values[i - 1] == null && values[i + 1] == null) alone.push(i);
  }
  return alone;
}

/** Every reading that there is. */
export function allOf(plot: uPlot, series: number): number[] {
  const all: number[] = [];
  const values = plot.data[series] ?? [];
  for (let i = 0; i < values.length; i++) if (values[i] != null) all.push(i);
  return all;
}
