import type { OutgoingReading } from '../../sensors/publish/publisher.ts';
import { Quantity, quantities } from '../contract/quantity.ts';
import { SensorId } from '../contract/sensor.ts';
import type { Layout, ReplayOptions } from './replay-options.ts';
import { ReplayRefusal } from './replay-refusal.ts';
import { readTime } from './replay-time.ts';

/** What one row of a recording holds. */
export interface Row {
  readonly readings: readonly OutgoingReading[];
  /** what could not be used, a sentence each */
  readonly faults: readonly string[];
  /** cells that say there was no reading */
  readonly missing: number;
}

const TIME_COLUMNS = ['time', 'time_utc', 'time_local', 'timestamp'];
const NO_READING = new Set(['', 'na', 'nan', 'null', 'none', '-']);
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/**
 * Makes the reader of a recording's rows from its header.
 *
 * @param header - names of the columns
 * @param options - layout, time column, zone
 * @param delimiter - what separates columns; where it is not a comma, a comma may be decimal
 * @returns reads one row; keeps the last time of each series, so call it in the file's order
 * @throws ReplayRefusal when a column is missing, naming those that are there
 */
export function rowReader(
  header: readonly string[],
  options: Pick<ReplayOptions, 'layout' | 'timeColumn' | 'zone'>,
  delimiter: string,
): (cells: readonly string[]) => Row {
  const { layout, zone } = options;
  const column = (name: string) => {
    const index = header.indexOf(name);
    if (index < 0) throw new ReplayRefusal(missingColumn(name, header, layout));
    return index;
  };
  const timeName =
    options.timeColumn ?? TIME_COLUMNS.find((name) => header.includes(name)) ?? 'time';
  const timeAt = column(timeName);
  const numberOf = (cell: string) => {
    const text = delimiter === ',' ? cell : cell.replace(',', '.');
    return NUMBER.test(text) && Number.isFinite(Number(text)) ? Number(text) : null;
  };
  const lastAt = new Map<string, number>();
  const timeOf = (cells: readonly string[], series: string) => {
    const time = readTime(cells[timeAt] ?? '', zone, lastAt.get(series) ?? null);
    if (time.kind === 'at') lastAt.set(series, time.at);
    return time;
  };
  const nothing = (because: string): Row => ({ readings: [], faults: [because], missing: 0 });

  if (layout.kind === 'wide') {
    const targets = layout.targets.map((target) => ({ ...target, index: column(target.column) }));
    return (cells) => {
      const time = timeOf(cells, '');
      if (time.kind === 'unreadable') return nothing(time.because);
      const readings: OutgoingReading[] = [];
      const faults: string[] = [];
      let missing = 0;
      for (const { column: name, sensor, quantity, index } of targets) {
        const cell = cells[index];
        if (cell === undefined) faults.push(`the row ends before the column ${name}`);
        else if (NO_READING.has(cell.toLowerCase())) missing += 1;
        else {
          const value = numberOf(cell);
          if (value === null) faults.push(`${name} is "${cell}", which is not a number`);
          else readings.push({ sensor, quantity, value, at: time.at });
        }
      }
      return { readings, faults, missing };
    };
  }

  const sensorAt = column(layout.sensor);
  const quantityAt = column(layout.quantity);
  const valueAt = column(layout.value);
  return (cells) => {
    const sensor = SensorId.safeParse(cells[sensorAt]);
    if (!sensor.success) {
      return nothing(
        `"${cells[sensorAt] ?? ''}" is not a sensor's name: up to 64 letters, digits, dots, dashes and underlines`,
      );
    }
    const quantity = Quantity.safeParse(cells[quantityAt]);
    if (!quantity.success) {
      return nothing(
        `"${cells[quantityAt] ?? ''}" is not a quantity; it may be ${quantities.join(', ')}`,
      );
    }
    const time = timeOf(cells, `${sensor.data}/${quantity.data}`);
    if (time.kind === 'unreadable') return nothing(time.because);
    const cell = cells[valueAt];
    if (cell === undefined) return nothing(`the row ends before the column ${layout.value}`);
    if (NO_READING.has(cell.toLowerCase())) return { readings: [], faults: [], missing: 1 };
    const value = numberOf(cell);
    if (value === null) return nothing(`the value is "${cell}", which is not a number`);
    const reading = { sensor: sensor.data, quantity: quantity.data, value, at: time.at };
    return { readings: [reading], faults: [], missing: 0 };
  };
}

function missingColumn(name: string, header: readonly string[], layout: Layout): string {
  const how =
    layout.kind === 'wide'
      ? 'Correct --map or --time-column.'
      : 'Name the columns with --time-column, --sensor-column, --quantity-column and --value-column, or give --map for a table with a column per sensor.';
  return `The file has no column "${name}"; it has ${header.map((each) => `"${each}"`).join(', ')}. ${how}`;
}
