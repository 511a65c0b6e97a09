import type { CurveMark } from '../../daemon/contract/curves.ts';
import { plainList } from '../format/lists.ts';
import { type Measure, unitOf } from '../format/units.ts';
import type { Reader } from '../reader.ts';
import type { CsvHeads } from './csv.ts';
import type { Measuring } from './hand-points.ts';
import type { PanelWriting } from './look.ts';
import type { LineKind, Panel, PanelKind } from './panel.ts';
import type { Range } from './range.ts';
import { type TimeTick, timeTicks } from './time-ticks.ts';
import type { ZoneClock } from './zone-clock.ts';

type Written = Pick<Reader, 'words' | 'figures' | 'calendar' | 'units' | 'locale'>;

const measureOf: Readonly<Partial<Record<PanelKind, Measure>>> = {
  temperature: 'tempC',
  sum: 'degreeHours',
};
const panelOf: Readonly<Record<LineKind, PanelKind>> = {
  air: 'temperature',
  dew: 'temperature',
  humidity: 'humidity',
  moisture: 'moisture',
  gas: 'gas',
  changes: 'changes',
  sum: 'sum',
};
const decimalsOf: Readonly<Record<PanelKind, number>> = {
  temperature: 1,
  humidity: 0,
  moisture: 1,
  gas: 0,
  changes: 1,
  sum: 0,
};

/** The unit that a panel is written in. */
export function panelUnit(
  kind: PanelKind,
  { words, units }: Pick<Written, 'words' | 'units'>,
): string {
  const measure = measureOf[kind];
  if (measure !== undefined) return unitOf(measure, units).unit;
  if (kind === 'gas') return 'ppm';
  return kind === 'changes' ? words.chart.perHour : '%';
}

/** How many of the reader’s units a metric unit of the panel is. */
export function panelStretch(kind: PanelKind, units: Written['units']): number {
  const measure = measureOf[kind];
  return measure === undefined ? 1 : unitOf(measure, units).scale;
}

/** A figure of a panel, which is in the reader’s units already. */
export function panelFigure(kind: PanelKind, value: number | null, reader: Written): string {
  if (value === null) return '–';
  const unit = panelUnit(kind, reader);
  return `${plain(kind, value, reader)} ${unit}`;
}

/** The same without its unit. */
export function plain(kind: PanelKind, value: number, { locale }: Written): string {
  return fixed(locale, value, decimalsOf[kind]);
}

export const lineFigure = (kind: LineKind, value: number | null, reader: Written): string =>
  panelFigure(panelOf[kind], value, reader);

const formats = new Map<string, Intl.NumberFormat>();

function fixed(locale: string, value: number, decimals: number): string {
  const key = `${locale} ${decimals}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, {
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
    });
    formats.set(key, format);
  }
  // Minus zero is zero to a reader, and a hyphen is no minus.
  return format
    .format(value)
    .replace(/^-(?=[0.,]*$)/, '')
    .replace('-', '−');
}

/** What the drawing of a panel writes for a reader. */
export function panelWriting(kind: PanelKind, reader: Written, clock: ZoneClock): PanelWriting {
  const { words, calendar, locale } = reader;
  const { chart, jobs } = words;
  // Drawn many times while one moves along: the same range gives the same ticks.
  let known: { key: string; ticks: readonly TimeTick[] } | null = null;
  return {
    ticks(range: Range, most: number) {
      const key = `${range.from} ${range.to} ${Math.floor(most)}`;
      if (known?.key !== key) known = { key, ticks: timeTicks(range, Math.floor(most), clock) };
      return known.ticks;
    },
    tick: ({ at, kind: of }) =>
      of === 'date' ? calendar.date(at * 1000) : calendar.clock(at * 1000),
    scale: (value, decimals) => fixed(locale, value, decimals),
    end: (line, value, isAlone) => {
      const figure = `${plain(kind, value, reader)}${kind === 'changes' ? '' : ` ${panelUnit(kind, reader)}`}`;
      return isAlone ? figure : `${chart.lines[line]} ${figure}`;
    },
    need: (gates) => gates.map((gate) => jobs[gate].noun).join(', '),
    ahead: chart.ahead,
  };
}

/** A mark in the reader’s words. */
export function markWords(mark: CurveMark, { words }: Pick<Written, 'words'>): string {
  const { marks } = words.chart;
  switch (mark.kind) {
    case 'coat':
      return marks.coat(mark.name, mark.batchName);
    case 'test': {
      const job = words.jobs[mark.gate].infinitive;
      return mark.passed ? marks.passed(job, mark.batchName) : marks.failed(job, mark.batchName);
    }
    case 'move':
      return marks.move(mark.batchName, mark.placeName);
    case 'remark': {
      const remark = words.things.remarks[mark.remark];
      return mark.text === null
        ? marks.remark(remark, mark.batchName)
        : marks.remarkWith(remark, mark.text, mark.batchName);
    }
    case 'notice':
      return mark.text;
  }
}

/** What those hear who do not see a panel: from when to when, and of each line the last, lowest, highest. */
export function spokenPanel(panel: Panel, range: Range, reader: Written): string {
  const { words, calendar } = reader;
  const { spoken, panels, lines } = words.chart;
  const said = panel.lines.map(({ kind, values, band }) => {
    let last: number | null = null;
    let low: number | null = null;
    let high: number | null = null;
    panel.at.forEach((at, i) => {
      const value = values[i];
      if (at < range.from || at > range.to || value == null) return;
      last = value;
      low = Math.min(low ?? Number.POSITIVE_INFINITY, band?.low[i] ?? value);
      high = Math.max(high ?? Number.NEGATIVE_INFINITY, band?.high[i] ?? value);
    });
    const figure = (value: number | null) => panelFigure(panel.kind, value, reader);
    return last === null
      ? spoken.nothing(lines[kind])
      : spoken.line(lines[kind], figure(last), figure(low), figure(high));
  });
  const at = (seconds: number) => calendar.exact(seconds * 1000);
  const byHand = panel.points
    .filter((point) => point.at >= range.from && point.at <= range.to)
    .map(({ value }) => value);
  if (byHand.length > 0) {
    const [last, low, high] = [byHand.at(-1) ?? null, Math.min(...byHand), Math.max(...byHand)];
    const figure = (value: number | null) => panelFigure(panel.kind, value, reader);
    said.push(spoken.line(words.chart.byHand.name, figure(last), figure(low), figure(high)));
  }
  return spoken.panel(panels[panel.kind], at(range.from), at(range.to), said.join(' '));
}

/** What was measured on one walk: “South gable, Mon 4 May, 12:00: board 1 14.2 %, board 2 13.0 %”. */
export function measuredWords({ at, of, points }: Measuring, reader: Written): string {
  const { words, figures, calendar } = reader;
  const { byHand } = words.chart;
  const boards = points.map(({ board, value }) =>
    byHand.board(figures.number(board), panelFigure('moisture', value, reader)),
  );
  return byHand.measured(of, calendar.exact(at * 1000), plainList(boards));
}

/** How long a stretch is, in words. */
export function stretchWords(stepS: number, { words }: Pick<Written, 'words'>): string {
  const { stretch } = words.chart;
  if (stepS < 60) return stretch.seconds(stepS);
  if (stepS < 3_600) return stretch.minutes(stepS / 60);
  return stepS < 86_400 ? stretch.hours(stepS / 3_600) : stretch.days(stepS / 86_400);
}

export function csvHeads({ words }: Pick<Written, 'words'>): CsvHeads {
  return words.chart.files;
}
