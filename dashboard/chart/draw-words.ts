import type uPlot from 'uplot';
import { clipped, onGround, type Paint, pixels } from './draw-areas.ts';
import { lineLooks, type PanelWriting } from './look.ts';
import { markShapes, shapeOf } from './marks.ts';
import type { Panel, PanelLine, PanelMark } from './panel.ts';

const LINE_HEIGHT = 15;

/** A thin line at each mark, through every panel; its shape stands above the first. */
export function drawMarks(
  plot: uPlot,
  marks: readonly PanelMark[],
  isFirst: boolean,
  paint: Paint,
): void {
  const { ctx, bbox } = plot;
  const px = pixels(paint);
  clipped(plot, () => {
    ctx.strokeStyle = paint.colour('--ink-soft');
    ctx.globalAlpha = 0.55;
    ctx.lineWidth = px;
    ctx.beginPath();
    for (const { at } of marks) {
      const x = plot.valToPos(at, 'x', true);
      ctx.moveTo(x, bbox.top);
      ctx.lineTo(x, bbox.top + bbox.height);
    }
    ctx.stroke();
  });
  if (!isFirst) return;
  ctx.save();
  ctx.fillStyle = ctx.strokeStyle = paint.colour('--ink');
  for (const { at, mark } of marks) {
    const x = plot.valToPos(at, 'x', true);
    if (x < bbox.left - 1 || x > bbox.left + bbox.width + 1) continue;
    const { path, open } = markShapes[shapeOf(mark)];
    ctx.save();
    ctx.translate(x - 5.5 * px, bbox.top - 14 * px);
    ctx.scale(1.1 * px, 1.1 * px);
    ctx.lineWidth = 1.4;
    if (open) ctx.stroke(new Path2D(path));
    else ctx.fill(new Path2D(path));
    ctx.restore();
  }
  ctx.restore();
}

/** The last figure at the end of each line, and the names of jobs at the lines of what they need. */
export function drawEnds(plot: uPlot, panel: Panel, writing: PanelWriting, paint: Paint): void {
  const { ctx, bbox } = plot;
  const px = pixels(paint);
  ctx.save();
  ctx.font = `${Math.round(12.5 * px)}px ${paint.fontFamily}`;
  ctx.textBaseline = 'middle';
  nameNeeds(plot, panel, writing, paint);
  const ends = panel.lines
    .map((line) => ({ line, end: endOf(plot, panel, line) }))
    .flatMap(({ line, end }) => (end === null ? [] : [{ line, ...end }]))
    .sort((a, b) => a.y - b.y);
  let lastY = Number.NEGATIVE_INFINITY;
  for (const { line, x, y, value } of ends) {
    const text = writing.end(line.kind, value, panel.lines.length === 1 || paint.isNarrow);
    const width = ctx.measureText(text).width;
    const top = Math.max(y, lastY + LINE_HEIGHT * px);
    const beside = x + 7 * px;
    const fits = beside + width <= ctx.canvas.width;
    const isLow = y + 24 * px > bbox.top + bbox.height;
    // What is to come rises from the end: the figure stands below it, at the foot before or above it.
    const goesOn = panel.fan !== null && fits;
    const isBefore = goesOn && isLow && x - 8 * px - width > bbox.left;
    lastY = fits ? top : Number.NEGATIVE_INFINITY;
    ctx.textAlign = fits && !isBefore ? 'left' : 'right';
    const at = isBefore ? x - 8 * px : fits ? beside : bbox.left + bbox.width - 3 * px;
    const above = Math.max(bbox.top + 9 * px, y - (goesOn ? 16 : 12) * px);
    const height = goesOn ? (isLow ? above : y + 15 * px) : fits ? top : above;
    ctx.fillStyle = paint.colour(lineLooks[line.kind].colour);
    onGround(ctx, text, at, height, paint);
  }
  ctx.restore();
}

/** The last point of a line that is seen. */
function endOf(plot: uPlot, panel: Panel, line: PanelLine) {
  const [low, high] = [plot.scales.x?.min ?? 0, plot.scales.x?.max ?? 0];
  for (let i = panel.at.length - 1; i >= 0; i--) {
    const [at, value] = [panel.at[i] ?? 0, line.values[i]];
    if (value == null || at > high) continue;
    if (at < low) return null;
    return { value, x: plot.valToPos(at, 'x', true), y: plot.valToPos(value, 'y', true) };
  }
  return null;
}

function nameNeeds(plot: uPlot, panel: Panel, writing: PanelWriting, paint: Paint): void {
  const { ctx, bbox } = plot;
  const px = pixels(paint);
  ctx.fillStyle = paint.colour('--ink-soft');
  ctx.textAlign = 'left';
  // Names of lines that are close stand one after the other instead of one on the other.
  let last = { y: Number.POSITIVE_INFINITY, right: bbox.left };
  for (const { likely, gates } of panel.needs) {
    const y = plot.valToPos(likely, 'y', true) - 8 * px;
    if (y < bbox.top) continue;
    const x = (last.y - y < LINE_HEIGHT * px ? last.right : bbox.left) + 8 * px;
    const text = writing.need(gates);
    // On a phone they stand over the bars, which are paler behind them then.
    if (paint.isNarrow) onGround(ctx, text, x, y, paint, 0.7);
    else ctx.fillText(text, x, y);
    last = { y, right: x + ctx.measureText(text).width };
  }
}
