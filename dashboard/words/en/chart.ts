import { names } from '../../../daemon/wording/en/thing-names.ts';
import type { MarkShape } from '../../chart/marks.ts';
import type { LineKind, PanelKind } from '../../chart/panel.ts';
import { capitalized } from '../capitalized.ts';
import type { Node } from '../node.ts';
import { plural } from '../plural.ts';

const { quantities } = names;
const named = capitalized(quantities);

/** Curves: panels, their lines, marks, table and files. */
export const chart = {
  panels: {
    temperature: 'Temperature',
    humidity: named['relative-humidity'],
    moisture: named['wood-moisture'],
    gas: named['carbon-dioxide'],
    changes: 'Air changes',
    sum: 'Degree-hours',
  } satisfies Record<PanelKind, string>,
  lines: {
    air: 'Air',
    dew: 'Dew point',
    humidity: 'Humidity',
    moisture: 'Moisture',
    gas: named['carbon-dioxide'],
    changes: 'Air changes',
    sum: 'Sum',
  } satisfies Record<LineKind, string>,
  /** What a figure of air changes is counted in. */
  perHour: 'an hour',
  changesNote:
    'Estimated from the day before each point, with a 90 % interval. No point: it cannot be told.',
  sumNote:
    'Bands: what a job needs, early to late. The fan: the sum to come, from what one future in ten passes to what nine in ten reach. The bar on a line: from when to when the verdict expects that job.',
  bandNote: (length: string) =>
    `Each point stands for ${length}; the pale band reaches from the lowest to the highest reading.`,
  ahead: { early: '1 in 10', likely: 'likely', late: '9 in 10' },
  stretch: {
    minutes: (count: number) => plural('en', count, { one: '# minute', other: '# minutes' }),
    hours: (count: number) => plural('en', count, { one: '# hour', other: '# hours' }),
    days: (count: number) => plural('en', count, { one: '# day', other: '# days' }),
    seconds: (count: number) => plural('en', count, { one: '# second', other: '# seconds' }),
  },
  marks: {
    title: 'Marks',
    kinds: {
      coat: 'coat finished',
      passed: 'felt ready',
      failed: 'felt too soon',
      move: 'moved',
      remark: 'remark',
      notice: 'notice',
    } satisfies Record<MarkShape, string>,
    coat: (coat: string, batch: string) => `${batch}: ${coat} finished`,
    passed: (job: string, batch: string) => `${batch}: felt ready ${job}`,
    failed: (job: string, batch: string) => `${batch}: felt not yet ready ${job}`,
    move: (batch: string, place: string) => `${batch}: moved to ${place}`,
    remark: (remark: string, batch: string) => `${batch}: ${remark}`,
    remarkWith: (remark: string, text: string, batch: string) => `${batch}: ${remark}: ${text}`,
  },
  /** Moisture that somebody measured by hand, drawn as crosses. */
  byHand: {
    name: 'By hand',
    board: (board: string, figure: string) => `board ${board} ${figure}`,
    measured: (of: string, moment: string, boards: string) => `${of}, ${moment}: ${boards}`,
    caption: 'Wood moisture measured by hand',
    where: 'Boards or place',
    boards: 'What the meter showed',
  },
  cursor: {
    /** One of the figures at a moment, for those who hear it. */
    line: (name: string, figure: string) => `${name}: ${figure}`,
    figures: (figures: string) => `: ${figures}`,
    nothing: 'no readings then',
  },
  /** What those hear who do not see a panel. */
  spoken: {
    panel: (panel: string, from: string, to: string, lines: string) =>
      `${panel} from ${from} to ${to}. ${lines}`,
    line: (line: string, last: string, low: string, high: string) =>
      `${line}: last ${last}, lowest ${low}, highest ${high}.`,
    nothing: (line: string) => `${line}: no readings.`,
  },
  controls: {
    title: (chart: string) => `Look closer at: ${chart}`,
    closer: 'Closer',
    wider: 'Wider',
    earlier: 'Earlier',
    later: 'Later',
    all: 'All of it',
    how: 'Drag along it to move, pinch or hold Ctrl and turn the wheel to look closer. With the keyboard: + and −, the arrows, Home for all of it; Shift with the arrows moves the cursor, Escape takes it away.',
  },
  from: 'From',
  to: 'To',
  nothing: 'No readings over this time, so there is nothing to draw.',
  notRead: 'The curves could not be read. They are asked for again.',
  table: {
    open: 'The same as a table',
    caption: (from: string, to: string) => `Lowest, mean and highest from ${from} to ${to}`,
    when: 'When',
    head: (name: string, unit: string) => `${name}, ${unit}`,
    marksCaption: 'What was done, felt, seen and told',
    what: 'What',
    noMarks: 'Nothing was recorded over this time.',
  },
  files: {
    csv: 'As a table (CSV)',
    png: 'As a picture (PNG)',
    note: 'The file holds what is shown: metric units, times in UTC.',
    time: 'time (UTC)',
    low: (name: string, unit: string) => `${name}, lowest (${unit})`,
    mean: (name: string, unit: string) => `${name}, mean (${unit})`,
    high: (name: string, unit: string) => `${name}, highest (${unit})`,
    one: (name: string, unit: string) => `${name} (${unit})`,
    early: (name: string, unit: string) => `${name} to come, early (${unit})`,
    likely: (name: string, unit: string) => `${name} to come, likely (${unit})`,
    late: (name: string, unit: string) => `${name} to come, late (${unit})`,
    names: {
      air: quantities['air-temperature'],
      dew: 'dew point',
      humidity: quantities['relative-humidity'],
      moisture: quantities['wood-moisture'],
      gas: quantities['carbon-dioxide'],
      changes: 'air changes',
      sum: 'degree-hours',
      counted: 'degree-hours that count',
    },
    marks: 'marks',
    byHand: (of: string, board: number) => `wood moisture by hand, ${of}, board ${board} (%)`,
    /** Over a picture. */
    span: (from: string, to: string) => `${from} to ${to}`,
  },
  batch: {
    title: 'Curves of this coat',
    which: 'Which coat',
  },
  air: {
    title: 'Air',
    titleOf: (place: string) => `The air at ${place}`,
    lead: 'Any place or sensor, over a day or a season.',
    place: 'Place',
    sensor: 'Sensor',
    allSensors: 'What counts there',
    span: 'How long',
    spans: { day: 'Day', week: 'Week', season: 'Season', own: 'From – to' },
    show: 'Show',
    noPlaces: (setUp: Node) => [
      'No place has readings yet. Places and sensors are made under ',
      setUp,
      '.',
    ],
    setUp: 'Set up',
  },
};
