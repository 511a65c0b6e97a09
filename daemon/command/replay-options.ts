import { isAbsolute, join } from 'node:path';
import { parseArgs } from 'node:util';
import { Quantity, quantities } from '../contract/quantity.ts';
import { SensorId } from '../contract/sensor.ts';
import { ReplayRefusal } from './replay-refusal.ts';
import { type ZoneOffset, zoneOffset } from './replay-time.ts';

/** Where a wide table's column goes. */
export interface ColumnTarget {
  readonly column: string;
  readonly sensor: string;
  readonly quantity: Quantity;
}

/** How the columns of the file are to be read. */
export type Layout =
  | {
      readonly kind: 'long';
      readonly sensor: string;
      readonly quantity: string;
      readonly value: string;
    }
  | { readonly kind: 'wide'; readonly targets: readonly ColumnTarget[] };

export interface ReplayOptions {
  readonly file: string;
  readonly url: string;
  readonly site: string;
  readonly layout: Layout;
  /** null: the first known name that the header has */
  readonly timeColumn: string | null;
  readonly zone: ZoneOffset;
  /** null: as fast as it is acknowledged */
  readonly speed: number | null;
  /** null: found from the header line */
  readonly delimiter: string | null;
}

export const REPLAY_USAGE = `boardcure replay <file.csv> [options]: send a recording to a running daemon

  --mqtt <host:port>        the daemon's broker (mqtt://127.0.0.1:1883)
  --site <name>             site in the topics (shed)
  --map <column=sensor/quantity>   for a wide table, once per column, for example
                            --map 'temp_c=office/air-temperature'
                            without it: columns time, sensor, quantity, value
  --time-column, --sensor-column, --quantity-column, --value-column <name>
  --zone <zone>             of times without an offset: Europe/Oslo, +01:00 (UTC)
  --speed <factor|max>      how many times faster than it was recorded (max)
  --delimiter <character>   between columns (found from the header line)

Quantities: ${quantities.join(', ')}`;

const PROTOCOLS = ['mqtt:', 'mqtts:', 'ws:', 'wss:'];

/**
 * Reads the command line of `replay`.
 *
 * @param args - what follows the word `replay`
 * @param cwd - folder that a relative file name is taken from
 * @returns the options, or null when only help was asked for
 * @throws ReplayRefusal naming the option and what it may be
 */
export function replayOptions(args: readonly string[], cwd: string): ReplayOptions | null {
  const { values, positionals } = parsed(args);
  if (values.help === true) return null;
  const [file, ...rest] = positionals;
  if (file === undefined || rest.length > 0) {
    throw new ReplayRefusal(`Give one file to replay.\n\n${REPLAY_USAGE}`);
  }
  const zone = zoneOffset(values.zone);
  if (zone === null) {
    throw new ReplayRefusal(
      `--zone ${values.zone} is not a time zone; give one such as Europe/Oslo, or a fixed +01:00.`,
    );
  }
  if (!/^[^/+#\s]+$/.test(values.site)) {
    throw new ReplayRefusal(
      `--site ${values.site} cannot stand in a topic; leave out / + # and spaces.`,
    );
  }
  return {
    file: isAbsolute(file) ? file : join(cwd, file),
    url: brokerUrl(values.mqtt),
    site: values.site,
    layout: layoutOf(values),
    timeColumn: values['time-column'] ?? null,
    zone,
    speed: speedOf(values.speed),
    delimiter: values.delimiter === undefined ? null : delimiterOf(values.delimiter),
  };
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        help: { type: 'boolean', short: 'h' },
        mqtt: { type: 'string', default: 'mqtt://127.0.0.1:1883' },
        site: { type: 'string', default: 'shed' },
        map: { type: 'string', multiple: true, default: [] },
        'time-column': { type: 'string' },
        'sensor-column': { type: 'string' },
        'quantity-column': { type: 'string' },
        'value-column': { type: 'string' },
        zone: { type: 'string', default: 'UTC' },
        speed: { type: 'string', default: 'max' },
        delimiter: { type: 'string' },
      },
    });
  } catch (cause) {
    throw new ReplayRefusal(`${(cause as Error).message}\n\n${REPLAY_USAGE}`, { cause });
  }
}

type Values = ReturnType<typeof parsed>['values'];

function layoutOf(values: Values): Layout {
  const { 'sensor-column': sensor, 'quantity-column': quantity, 'value-column': value } = values;
  if (values.map.length === 0) {
    return {
      kind: 'long',
      sensor: sensor ?? 'sensor',
      quantity: quantity ?? 'quantity',
      value: value ?? 'value',
    };
  }
  if (sensor !== undefined || quantity !== undefined || value !== undefined) {
    throw new ReplayRefusal(
      '--map is for a table with a column per sensor; it cannot be used with --sensor-column, --quantity-column or --value-column.',
    );
  }
  return { kind: 'wide', targets: values.map.map(targetOf) };
}

function targetOf(text: string): ColumnTarget {
  const match = /^(.+)=([^=/]+)\/([^=/]+)$/.exec(text);
  const sensor = SensorId.safeParse(match?.[2]);
  if (match?.[1] === undefined || !sensor.success) {
    throw new ReplayRefusal(
      `--map ${text} is not column=sensor/quantity, for example temp_c=office/air-temperature; a sensor's name has only letters, digits, dot, dash and underline.`,
    );
  }
  const quantity = Quantity.safeParse(match[3]);
  if (!quantity.success) {
    throw new ReplayRefusal(
      `--map ${text}: ${match[3]} is not a quantity; it may be ${quantities.join(', ')}.`,
    );
  }
  return { column: match[1], sensor: sensor.data, quantity: quantity.data };
}

function brokerUrl(text: string): string {
  const address = /^\d+$/.test(text) ? `127.0.0.1:${text}` : text;
  const full = address.includes('://') ? address : `mqtt://${address}`;
  const url = URL.canParse(full) ? new URL(full) : null;
  if (url === null || url.hostname === '' || !PROTOCOLS.includes(url.protocol)) {
    throw new ReplayRefusal(
      `--mqtt ${text} is not a broker's address; give host:port, for example 127.0.0.1:1883.`,
    );
  }
  return full;
}

function speedOf(text: string): number | null {
  if (text === 'max') return null;
  const speed = Number(text);
  if (!(speed > 0 && Number.isFinite(speed))) {
    throw new ReplayRefusal(`--speed ${text} is neither max nor a factor above 0, for example 60.`);
  }
  return speed;
}

function delimiterOf(text: string): string {
  const character = text === '\\t' || text === 'tab' ? '\t' : text;
  if (character.length !== 1) {
    throw new ReplayRefusal(`--delimiter ${text} is not one character; write tab for a tabulator.`);
  }
  return character;
}
