import type { Reader } from '../reader.ts';
import { type DrawnPanel, drawPanel } from './draw-panel.ts';
import { handPath } from './hand-points.ts';
import { lineLooks } from './look.ts';
import { markShapeKinds, markShapes, shapeOf } from './marks.ts';
import type { Panel, PanelMark } from './panel.ts';
import type { Range } from './range.ts';
import { panelStretch, panelUnit, panelWriting } from './writing.ts';
import type { ZoneClock } from './zone-clock.ts';

interface PictureParts {
  title: string;
  panels: readonly Panel[];
  marks: readonly PanelMark[];
  range: Range;
  reader: Reader;
  clock: ZoneClock;
}

/** Pixels of a picture to a pixel of the screen’s measure. */
const FINE = 2;
const WIDTH = 1_120;
const MARGIN = 28;
const TITLE_HEIGHT = 76;
const CAPTION_HEIGHT = 30;
const FOOT_HEIGHT = 34;

/**
 * All panels on one canvas with title, key and axis, in the light of the page.
 *
 * @param desk - an element of the page, not seen, in which they are drawn once more, larger
 * @returns null where the browser makes no picture
 */
export async function drawPicture(desk: HTMLElement, parts: PictureParts): Promise<Blob | null> {
  const { panels, range, marks, reader, clock } = parts;
  const scale = FINE / devicePixelRatio;
  const drawn: DrawnPanel[] = panels.map((panel, i) => {
    const target = document.createElement('div');
    target.className = 'chart';
    desk.append(target);
    const view = { panel, range, marks, writing: panelWriting(panel.kind, reader, clock) };
    return drawPanel(target, view, {
      ...{ syncKey: 'picture', scale, width: WIDTH },
      isFirst: i === 0,
      isLast: i === panels.length - 1,
      stretch: panelStretch(panel.kind, reader.units),
      onCursor: () => {},
    });
  });
  // The library draws in a microtask of its own.
  await new Promise((resolve) => setTimeout(resolve));
  try {
    return await toBlob(compose(desk, parts, drawn));
  } finally {
    for (const panel of drawn) panel.close();
    desk.replaceChildren();
  }
}

function compose(
  desk: HTMLElement,
  { title, panels, marks, range, reader }: PictureParts,
  drawn: readonly DrawnPanel[],
): HTMLCanvasElement {
  const style = getComputedStyle(desk);
  const colour = (name: string) => style.getPropertyValue(name).trim();
  const heights = drawn.map(({ canvas }) => canvas.height / FINE);
  const shapes = markShapeKinds.filter((kind) => marks.some(({ mark }) => shapeOf(mark) === kind));
  const foot = shapes.length > 0 ? FOOT_HEIGHT : 0;
  const height =
    TITLE_HEIGHT + heights.reduce((sum, one) => sum + one + CAPTION_HEIGHT, 0) + foot + MARGIN;
  const canvas = document.createElement('canvas');
  canvas.width = (WIDTH + 2 * MARGIN) * FINE;
  canvas.height = Math.round(height * FINE);
  const ctx = canvas.getContext('2d');
  if (ctx === null) return canvas;
  ctx.scale(FINE, FINE);
  ctx.fillStyle = colour('--linen');
  ctx.fillRect(0, 0, canvas.width, canvas.height);
  const write = (text: string, x: number, y: number, font: string, ink: string) => {
    ctx.font = font;
    ctx.fillStyle = colour(ink);
    ctx.fillText(text, x, y);
    return x + ctx.measureText(text).width;
  };
  const serif = style.getPropertyValue('--serif');
  const { fontFamily } = style;
  const { words, calendar } = reader;
  const at = (seconds: number) => calendar.exact(seconds * 1000);
  write(title, MARGIN, 40, `600 26px ${serif}`, '--ink');
  write(
    words.chart.files.span(at(range.from), at(range.to)),
    MARGIN,
    62,
    `14px ${fontFamily}`,
    '--ink-soft',
  );
  let y = TITLE_HEIGHT;
  panels.forEach((panel, i) => {
    const panelCanvas = drawn[i]?.canvas;
    const heading = `${words.chart.panels[panel.kind]}, ${panelUnit(panel.kind, reader)}`;
    let x = write(heading, MARGIN, y + 20, `600 16px ${serif}`, '--ink') + 24;
    for (const { kind } of panel.lines) {
      const look = lineLooks[kind];
      ctx.strokeStyle = colour(look.colour);
      ctx.lineWidth = look.width;
      ctx.setLineDash([...look.dash]);
      ctx.beginPath();
      ctx.moveTo(x, y + 15);
      ctx.lineTo(x + 30, y + 15);
      ctx.stroke();
      ctx.setLineDash([]);
      x = write(words.chart.lines[kind], x + 37, y + 20, `14px ${fontFamily}`, '--ink-soft') + 20;
    }
    if (panel.points.some((point) => point.at >= range.from && point.at <= range.to)) {
      ctx.save();
      ctx.translate(x + 4, y + 10);
      ctx.strokeStyle = colour('--ink');
      ctx.lineWidth = 2;
      ctx.lineCap = 'round';
      ctx.stroke(new Path2D(handPath));
      ctx.restore();
      write(words.chart.byHand.name, x + 22, y + 20, `14px ${fontFamily}`, '--ink-soft');
    }
    y += CAPTION_HEIGHT;
    const panelHeight = heights[i] ?? 0;
    if (panelCanvas) ctx.drawImage(panelCanvas, MARGIN, y, panelCanvas.width / FINE, panelHeight);
    y += panelHeight;
  });
  let x = MARGIN;
  for (const shape of shapes) {
    const { path, open } = markShapes[shape];
    ctx.save();
    ctx.translate(x, y + 10);
    ctx.fillStyle = ctx.strokeStyle = colour('--ink');
    ctx.lineWidth = 1.4;
    if (open) ctx.stroke(new Path2D(path));
    else ctx.fill(new Path2D(path));
    ctx.restore();
    const name = words.chart.marks.kinds[shape];
    x = write(name, x + 16, y + 20, `14px ${fontFamily}`, '--ink-soft') + 22;
  }
  return canvas;
}

const toBlob = (canvas: HTMLCanvasElement): Promise<Blob | null> =>
  new Promise((resolve) => canvas.toBlob(resolve, 'image/png'));
