import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';

/** What a job needs, °C·h, drawn as a soft band with a line in its middle. */
export interface NeedBand {
  readonly name: string;
  readonly early: number;
  readonly likely: number;
  readonly late: number;
}

/** Columns as the chart library wants them: UTC epoch seconds first, null for gaps. */
export type Columns = [at: number[], ...values: (number | null)[][]];

export interface DrawnChart {
  show(columns: Columns, bands: readonly NeedBand[]): void;
  close(): void;
}

interface Line {
  /** Custom property of the style sheet that holds the colour. */
  readonly colour: string;
  readonly scale: string;
  readonly unit: string;
  readonly dash?: number[];
  readonly width: number;
}

const CURSOR_KEY = 'batch';
const AXIS_SIZE = 52;
const LEAST_SPAN_C = 8;

/** Draws temperature and humidity. */
export function drawAir(target: HTMLElement): DrawnChart {
  return draw(target, [
    { colour: '--chart-temp', scale: 'C', unit: '°', width: 2 },
    { colour: '--chart-damp', scale: '%', unit: ' %', width: 2, dash: [6, 4] },
  ]);
}

/** Draws the sum of degree-hours over what each job needs. */
export function drawCure(target: HTMLElement): DrawnChart {
  return draw(target, [{ colour: '--chart-sum', scale: 'sum', unit: '', width: 3 }]);
}

function draw(target: HTMLElement, lines: readonly Line[]): DrawnChart {
  let bands: readonly NeedBand[] = [];
  let columns: Columns = [[], ...lines.map(() => [])];
  let plot = make();

  function make(): uPlot {
    return new uPlot(
      options(target, lines, () => bands),
      columns as uPlot.AlignedData,
      target,
    );
  }

  const resized = new ResizeObserver(() => plot.setSize(sizeOf(target)));
  resized.observe(target);
  // Colours are read when a chart is made, so the change from day to night makes it anew.
  const relit = new MutationObserver(() => {
    plot.destroy();
    plot = make();
  });
  relit.observe(document.documentElement, { attributeFilter: ['data-light'] });

  return {
    show(next, nextBands) {
      bands = nextBands;
      columns = next;
      plot.setData(columns as uPlot.AlignedData);
    },
    close() {
      resized.disconnect();
      relit.disconnect();
      plot.destroy();
    },
  };
}

function sizeOf(target: HTMLElement): { width: number; height: number } {
  const width = Math.max(240, target.clientWidth);
  return { width, height: Math.round(Math.min(280, Math.max(180, width * 0.34))) };
}

function options(
  target: HTMLElement,
  lines: readonly Line[],
  bandsNow: () => readonly NeedBand[],
): uPlot.Options {
  const style = getComputedStyle(target);
  const colour = (name: string) => style.getPropertyValue(name).trim();
  const font = `13px ${style.fontFamily}`;
  const axis = { stroke: colour('--ink-soft'), font, ticks: { show: false } };
  const grid = { stroke: colour('--line'), width: 1 };
  return {
    ...sizeOf(target),
    legend: { show: false },
    // One chart has an axis on the right, the other has not; their times must lie below each other.
    padding: [null, lines.length > 1 ? null : AXIS_SIZE, null, null],
    cursor: { sync: { key: CURSOR_KEY }, points: { size: 8 } },
    scales: {
      sum: {
        range: (_plot, _low, high) => {
          const latest = Math.max(0, ...bandsNow().map((band) => band.late));
          return [0, Math.max(high ?? 0, latest, 1) * 1.04];
        },
      },
      '%': { range: [0, 100] },
      // A degree up and down is no weather: what hardly changes is drawn as hardly changing.
      C: { range: (_plot, low, high) => atLeastWide(low ?? 0, high ?? 20, LEAST_SPAN_C) },
    },
    axes: [
      { ...axis, grid: { show: false }, values: timeLabels },
      ...lines.map((line, index) => ({
        ...axis,
        scale: line.scale,
        side: index === 0 ? (3 as const) : (1 as const),
        size: AXIS_SIZE,
        grid: index === 0 ? grid : { show: false },
        values: (_plot: uPlot, ticks: number[]) => ticks.map((tick) => `${tick}${line.unit}`),
      })),
    ],
    series: [
      {},
      ...lines.map((line) => ({
        stroke: colour(line.colour),
        width: line.width,
        scale: line.scale,
        points: { show: false },
        ...(line.dash === undefined ? {} : { dash: line.dash }),
      })),
    ],
    hooks: {
      drawClear: [
        (plot) => {
          if (lines.some((line) => line.scale === 'sum')) {
            drawBands(plot, bandsNow(), {
              band: colour('--chart-band'),
              line: colour('--chart-need'),
              text: colour('--ink-soft'),
              font,
            });
          }
        },
      ],
    },
  };
}

const timeLabels: uPlot.Axis.Values = [
  // tick step, label, then what stands below it when the year, month, day, hour … changes
  [86_400, '{D} {MMM}', null, null, null, null, null, null, 1],
  [3_600, '{HH}:{mm}', '\n{D} {MMM}', null, '\n{D} {MMM}', null, null, null, 1],
  [60, '{HH}:{mm}', '\n{D} {MMM}', null, '\n{D} {MMM}', null, null, null, 1],
  [1, '{HH}:{mm}:{ss}', '\n{D} {MMM}', null, '\n{D} {MMM}', null, null, null, 1],
];

function drawBands(
  plot: uPlot,
  bands: readonly NeedBand[],
  look: { band: string; line: string; text: string; font: string },
): void {
  const { ctx } = plot;
  const { left, width } = plot.bbox;
  const ratio = devicePixelRatio;
  const y = (sum: number) => plot.valToPos(sum, 'sum', true);
  ctx.save();
  for (const band of bands) {
    ctx.fillStyle = look.band;
    ctx.fillRect(left, y(band.late), width, y(band.early) - y(band.late));
    ctx.strokeStyle = look.line;
    ctx.lineWidth = ratio;
    ctx.setLineDash([2 * ratio, 3 * ratio]);
    ctx.beginPath();
    ctx.moveTo(left, y(band.likely));
    ctx.lineTo(left + width, y(band.likely));
    ctx.stroke();
  }
  ctx.fillStyle = look.text;
  ctx.font = look.font.replace(/^(\d+)px/, (_, size: string) => `${Number(size) * ratio}px`);
  ctx.textAlign = 'left';
  // Names of lines that are close stand one after the other instead of one on the other.
  let last = { y: Number.POSITIVE_INFINITY, right: left };
  const inOrder = [...bandNames(bands)].sort(([a], [b]) => a - b);
  for (const [sum, names] of inOrder) {
    const nameY = y(sum) - 4 * ratio;
    const nameX = (last.y - nameY < 16 * ratio ? last.right : left) + 8 * ratio;
    ctx.fillText(names, nameX, nameY);
    last = { y: nameY, right: nameX + ctx.measureText(names).width };
  }
  ctx.restore();
}

/** Jobs that need the same share a line, so their names stand beside each other. */
function bandNames(bands: readonly NeedBand[]): Map<number, string> {
  const names = new Map<number, string>();
  for (const band of bands) {
    const before = names.get(band.likely);
    names.set(band.likely, before === undefined ? band.name : `${before}, ${band.name}`);
  }
  return names;
}

function atLeastWide(low: number, high: number, span: number): [number, number] {
  const missing = Math.max(0, span - (high - low)) / 2;
  return [Math.floor(low - missing - 0.5), Math.ceil(high + missing + 0.5)];
}
