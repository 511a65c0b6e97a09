import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import type { BatchCurves, Curves } from '../../daemon/contract/curves.ts';
import { csvCell, curvesCsv } from '../../dashboard/chart/csv.ts';
import { measuredNear, measurings } from '../../dashboard/chart/hand-points.ts';
import { marksNear, panelMarks } from '../../dashboard/chart/marks.ts';
import { newestTold, scaleOf } from '../../dashboard/chart/panel.ts';
import {
  cursorAfterKey,
  panned,
  rangeAfterKey,
  within,
  withMargin,
  zoomed,
} from '../../dashboard/chart/range.ts';
import { tableRows } from '../../dashboard/chart/table-rows.ts';
import { toPanels } from '../../dashboard/chart/to-panels.ts';
import { valueAt } from '../../dashboard/chart/value-at.ts';
import { wholeRangeOf } from '../../dashboard/chart/whole-range.ts';
import { measuredWords, spokenPanel } from '../../dashboard/chart/writing.ts';
import { createZoneClock } from '../../dashboard/chart/zone-clock.ts';
import { createCalendar } from '../../dashboard/format/calendar.ts';
import { createFigures } from '../../dashboard/format/reader-figures.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';

const utc = createZoneClock('UTC');
const start = Date.UTC(2026, 4, 4) / 1000;
const hours = (count: number) => start + count * 3_600;
const iso = (at: number) => new Date(at * 1000).toISOString();

const curves: Curves = {
  ...{ from: iso(start), to: iso(hours(4)), stepS: 3_600, byHour: false },
  at: [0.5, 1.5, 2.5, 3.5].map(hours),
  tempC: { low: [9, 10, null, 14], mean: [10, 11, null, 15], high: [11, 13, null, 15] },
  rhPercent: { low: [60, 61, null, 62], mean: [60, 61, null, 62], high: [60, 61, null, 62] },
  dewPointC: [2.5, 3.25, null, 7.8],
  woodMoisturePercent: null,
  carbonDioxidePpm: null,
  marks: [],
};
const batchCurves: BatchCurves = {
  ...curves,
  batchId: '0198f2a0-0000-7000-8000-000000000001',
  coatId: '0198f2a0-0000-7000-8000-000000000002',
  degreeHours: [null, 6, null, 16],
  countedDegreeHours: [null, 6, null, 16],
  ahead: {
    at: [4, 5, 6].map(hours),
    early: [18, 30, 42],
    likely: [18, 28, 38],
    late: [18, 26, 34],
  },
};
const nobody = { batchId: null, batchName: null, placeId: null, placeName: null };
/** Boards measured before the primer, and once on the rack without a word of which boards. */
const measured: Curves = {
  ...curves,
  handMoisture: [
    { ...nobody, at: iso(hours(1)), batchName: 'South gable', percent: [14.2, 13] },
    { ...nobody, at: iso(hours(3)), placeName: 'Loft', percent: [19.5] },
  ],
};
const metric = { changes: null, coat: null, units: 'metric' } as const;
const reader = {
  words: { ...first, ...rest },
  ...{ locale: 'en-GB', units: 'metric' as const },
  figures: createFigures('en-GB', 'metric'),
  calendar: createCalendar('UTC', 'en-GB'),
};
const all = { from: start, to: hours(4) };

describe('curves as panels', () => {
  it('tell most at the newest moment with readings, not in a stretch that has just begun', () => {
    const panels = toPanels({ curves: batchCurves, ...metric });
    expect(newestTold(panels, hours(4))).toBe(hours(3.5));
    expect(newestTold(panels, hours(3))).toBe(hours(1.5));
    expect(newestTold([], hours(3))).toBe(hours(3));
  });

  it('keep gaps as gaps, and have the lowest and highest for a band', () => {
    const [temperature, humidity, ...none] = toPanels({ curves, ...metric });
    expect(none).toEqual([]);
    expect(temperature?.lines.map(({ kind }) => kind)).toEqual(['air', 'dew']);
    expect(temperature?.lines[0]?.values).toEqual([10, 11, null, 15]);
    expect(temperature?.lines[0]?.band?.high).toEqual([11, 13, null, 15]);
    expect(humidity?.lines[0]?.band?.low).toEqual([60, 61, null, 62]);
    expect(temperature?.lines[1]?.band).toBeNull();
  });

  it('are in the reader’s units: °F is 9/5 of °C and 32 more, a sum of °F·h 9/5 alone', () => {
    const panels = toPanels({ curves: batchCurves, ...metric, units: 'us' });
    expect(panels[0]?.lines[0]?.values).toEqual([50, 51.8, null, 59]);
    expect(panels[2]?.lines[0]?.values.map((sum) => sum && Math.round(sum * 10) / 10)).toEqual([
      null,
      10.8,
      null,
      28.8,
    ]);
    expect(panels[2]?.fan?.likely.map((sum) => Math.round(sum * 10) / 10)).toEqual([
      32.4, 50.4, 68.4,
    ]);
  });

  it('have a scale that holds all that is seen, and does not magnify what hardly changes', () => {
    const [temperature, humidity, sum] = toPanels({ curves: batchCurves, ...metric });
    if (!temperature || !humidity || !sum) throw new Error('no panels');
    const t = scaleOf(temperature, all.from, all.to);
    expect(t.low).toBeLessThan(2.5);
    expect(t.high).toBeGreaterThan(15);
    const h = scaleOf(humidity, all.from, all.to);
    expect(h.high - h.low).toBeGreaterThanOrEqual(20);
    expect(scaleOf(sum, all.from, hours(6)).high).toBeGreaterThan(42);
    expect(scaleOf(sum, all.from, all.to).low).toBe(0);
  });
});

describe('what is seen', () => {
  const whole = { from: 0, to: 100_000 };
  it('comes closer about a moment that keeps its place, and never leaves the whole', () => {
    expect(zoomed(whole, whole, 0.5, 25_000)).toEqual({ from: 12_500, to: 62_500 });
    expect(zoomed({ from: 0, to: 10_000 }, whole, 100, 0)).toEqual(whole);
    expect(zoomed(whole, whole, 1e-9, 50_000).to - zoomed(whole, whole, 1e-9, 50_000).from).toBe(
      600,
    );
    expect(panned({ from: 80_000, to: 100_000 }, whole, 5)).toEqual({ from: 80_000, to: 100_000 });
    expect(within({ from: -10, to: 90 }, whole)).toEqual({ from: 0, to: 100 });
    expect(withMargin({ from: 40_000, to: 60_000 }, whole)).toEqual({ from: 35_000, to: 65_000 });
  });

  it('follows the keys', () => {
    const seen = { from: 20_000, to: 60_000 };
    expect(rangeAfterKey('+', seen, whole)).toEqual({ from: 30_000, to: 50_000 });
    expect(rangeAfterKey('-', seen, whole)).toEqual({ from: 0, to: 80_000 });
    expect(rangeAfterKey('ArrowRight', seen, whole)).toEqual({ from: 30_000, to: 70_000 });
    expect(rangeAfterKey('ArrowLeft', seen, whole)).toEqual({ from: 10_000, to: 50_000 });
    expect(rangeAfterKey('Home', seen, whole)).toEqual(whole);
    expect(rangeAfterKey('x', seen, whole)).toBeNull();
  });

  it('has a cursor that Shift and the keys lead along, and that never leaves it', () => {
    const seen = { from: 20_000, to: 60_000 };
    const newest = 50_000;
    expect(cursorAfterKey('ArrowRight', null, newest, seen)).toBe(newest);
    expect(cursorAfterKey('ArrowRight', null, 90_000, seen)).toBe(60_000);
    expect(cursorAfterKey('ArrowRight', 40_000, newest, seen)).toBe(40_800);
    expect(cursorAfterKey('ArrowLeft', 20_100, newest, seen)).toBe(20_000);
    expect(cursorAfterKey('End', 20_100, newest, seen)).toBe(60_000);
    // It was left behind by looking closer.
    expect(cursorAfterKey('ArrowLeft', 90_000, newest, seen)).toBe(newest);
    expect(cursorAfterKey('Tab', 40_000, newest, seen)).toBeNull();
  });

  it('is all from the first reading on, and some of what is to come', () => {
    const late: BatchCurves = {
      ...batchCurves,
      tempC: { low: [null, 10, 11, 12], mean: [null, 10, 11, 12], high: [null, 10, 11, 12] },
      rhPercent: null,
    };
    expect(wholeRangeOf(late)).toEqual({ from: hours(0.5), to: hours(6) });
    expect(wholeRangeOf(curves)).toEqual(all);
  });
});

describe('the table beside the curves', () => {
  it('has the lowest, mean and highest of each row, and no row where there is nothing', () => {
    const panels = toPanels({ curves, ...metric });
    const { rows, byDay } = tableRows(panels, all, 2, utc);
    expect(byDay).toBe(false);
    expect(rows.map(({ at }) => at)).toEqual([hours(0), hours(2)]);
    expect(rows[0]?.cells[0]).toEqual({ low: 9, mean: 10.5, high: 13 });
    expect(rows[1]?.cells).toEqual([
      { low: 14, mean: 15, high: 15 },
      { low: 7.8, mean: 7.8, high: 7.8 },
      { low: 62, mean: 62, high: 62 },
    ]);
  });

  it('is no longer than one reads, from an hour to a year', () => {
    for (const days of [0.05, 1, 7, 183, 366]) {
      const count = 500;
      const length = days * 86_400;
      const at = Array.from({ length: count }, (_, i) => start + ((i + 0.5) * length) / count);
      const values = at.map((_, i) => i);
      const long = {
        ...curves,
        ...{ at, rhPercent: null, dewPointC: null },
        tempC: { low: values, mean: values, high: values },
      };
      const range = { from: start, to: start + length };
      const { rows } = tableRows(toPanels({ curves: long, ...metric }), range, 48, utc);
      expect(rows.length).toBeGreaterThan(10);
      expect(rows.length).toBeLessThanOrEqual(50);
      expect(rows[0]?.cells[0]?.low).toBe(0);
      expect(rows[rows.length - 1]?.cells[0]?.high).toBe(count - 1);
    }
  });
});

describe('what was measured by hand', () => {
  it('is a point for each board beside the line, also where no pins measure', () => {
    const panels = toPanels({ curves: measured, ...metric });
    expect(panels.map(({ kind }) => kind)).toEqual(['temperature', 'humidity', 'moisture']);
    const moisture = panels[2];
    if (!moisture) throw new Error('no panel');
    expect(moisture.lines).toEqual([]);
    expect(moisture.points).toEqual([
      { at: hours(1), value: 14.2, board: 1, of: 'South gable' },
      { at: hours(1), value: 13, board: 2, of: 'South gable' },
      { at: hours(3), value: 19.5, board: 1, of: 'Loft' },
    ]);
    const { low, high } = scaleOf(moisture, all.from, all.to);
    expect(low).toBeLessThan(13);
    expect(high).toBeGreaterThan(19.5);
    const pins = { low: [12, 12, 12, 12], mean: [12, 12, 12, 12], high: [12, 12, 12, 12] };
    const both = toPanels({ curves: { ...measured, woodMoisturePercent: pins }, ...metric })[2];
    expect([both?.lines.length, both?.points.length]).toEqual([1, 3]);
  });

  it('is told board by board with its moment where somebody points', () => {
    const { points } = toPanels({ curves: measured, ...metric })[2] ?? { points: [] };
    expect(measurings(points).map((one) => one.points.length)).toEqual([2, 1]);
    const near = measuredNear(points, hours(1.05), 600);
    if (near === null) throw new Error('nothing near');
    expect(measuredWords(near, reader)).toBe(
      'South gable, Mon 4 May, 01:00: board 1 14.2 %, board 2 13.0 %',
    );
    expect(measuredNear(points, hours(2), 600)).toBeNull();
  });

  it('keeps a curve that began with it in view', () => {
    const early = { ...measured, tempC: null, rhPercent: null, dewPointC: null };
    expect(wholeRangeOf(early)).toEqual(all);
    const [, last] = measured.handMoisture ?? [];
    expect(wholeRangeOf({ ...early, handMoisture: last ? [last] : [] }).from).toBe(hours(2));
  });

  it('has a column for each board in the file', () => {
    const text = curvesCsv(measured, null, [], all, rest.chart.files);
    const rows = parse(text, { columns: true }) as Record<string, string>[];
    const of = (head: string) => rows.flatMap((row) => row[head] || []);
    expect(of('wood moisture by hand, South gable, board 1 (%)')).toEqual(['14.2']);
    expect(of('wood moisture by hand, South gable, board 2 (%)')).toEqual(['13']);
    expect(of('wood moisture by hand, Loft, board 1 (%)')).toEqual(['19.5']);
    expect(rows.map((row) => row['time (UTC)'])).toContain(iso(hours(3)));
  });

  it('is heard with the panel', () => {
    const moisture = toPanels({ curves: measured, ...metric })[2];
    if (!moisture) throw new Error('no panel');
    expect(spokenPanel(moisture, all, reader)).toContain(
      'By hand: last 19.5 %, lowest 13.0 %, highest 19.5 %.',
    );
  });
});

describe('the file of what is shown', () => {
  const told = [
    { at: hours(1), words: '=cmd: "runs", and\nmore' },
    { at: hours(1), words: 'felt' },
  ];
  const text = curvesCsv(batchCurves, null, told, { from: start, to: hours(5) }, rest.chart.files);
  // RFC 4180 as a parser of its own reads it.
  const rows = parse(text, { columns: true }) as Record<string, string>[];

  it('is read again to the same figures, each to its full length, in metric units', () => {
    const temperature = rows.flatMap((row) => row['air temperature, mean (°C)'] || []);
    expect(temperature.map(Number)).toEqual([10, 11, 15]);
    expect(rows.flatMap((row) => row['dew point (°C)'] || [])).toEqual(['2.5', '3.25', '7.8']);
    expect(rows.map((row) => row['time (UTC)'])).toEqual(
      [0.5, 1, 1.5, 2.5, 3.5, 4, 5].map((at) => iso(hours(at))),
    );
    const likely = rows.flatMap(
      (row) => row['degree-hours that count to come, likely (°C·h)'] || [],
    );
    expect(likely).toEqual(['18', '28']);
  });

  it('lets no name be taken for a formula', () => {
    expect(rows[1]?.marks).toBe('\'=cmd: "runs", and\nmore; felt');
    expect(csvCell('+1')).toBe("'+1");
    expect(csvCell(-1)).toBe('-1');
  });

  it('ends each line as RFC 4180 has it', () => {
    expect(text.endsWith('\r\n')).toBe(true);
    expect(text.replace(/"[^"]*(""[^"]*)*"/g, '').match(/(?<!\r)\n/)).toBeNull();
  });
});

describe('a panel in words', () => {
  it('says from when to when, the last, the lowest and the highest', () => {
    const [temperature] = toPanels({ curves, ...metric });
    if (!temperature) throw new Error('no panel');
    expect(spokenPanel(temperature, all, reader)).toBe(
      'Temperature from Mon 4 May, 00:00 to Mon 4 May, 04:00. Air: last 15.0 °C, lowest 9.0 °C, highest 15.0 °C. Dew point: last 7.8 °C, lowest 2.5 °C, highest 7.8 °C.',
    );
  });
});

describe('what is pointed at', () => {
  it('is the figure of the nearest stretch, and nothing in a gap', () => {
    expect(valueAt(curves.at, curves.tempC?.mean ?? [], hours(1.2))).toBe(11);
    expect(valueAt(curves.at, curves.tempC?.mean ?? [], hours(2.4))).toBeNull();
    expect(valueAt([], [], 0)).toBeNull();
  });

  it('are the marks near by, the nearest first', () => {
    const of = { batchId: batchCurves.batchId, batchName: 'B' };
    const marks = panelMarks([
      { kind: 'coat', at: iso(hours(1)), ...of, name: 'Primer' },
      { kind: 'test', at: iso(hours(2)), ...of, gate: 'turn', passed: true },
    ]);
    expect(marksNear(marks, hours(1.9), 3_600).map(({ mark }) => mark.kind)).toEqual([
      'test',
      'coat',
    ]);
    expect(marksNear(marks, hours(4), 60)).toEqual([]);
  });
});
