import { createReadStream } from 'node:fs';
import { parseArgs } from 'node:util';
import { parse } from 'csv-parse';
import { publishOnce } from '../../sensors/publish/publish-once.ts';
import type { CommandIo } from './command-io.ts';

const usage = [
  'Usage: boardcure forecast <file.csv> [--mqtt mqtt://host:port] [--site shed]',
  '  Sends a weather forecast for outdoors to a running daemon: columns time (ISO 8601 with an',
  '  offset, or epoch seconds) and tempC (°C), hourly or every few hours; where there are columns',
  '  rhPercent and rainMm (rain within the hour), they are sent too.',
].join('\n');

/** `boardcure forecast`: publishes a forecast from a CSV file, retained. Returns the exit code. */
export async function forecast(args: string[], io: CommandIo): Promise<number> {
  let given: ReturnType<typeof read>;
  try {
    given = read(args);
  } catch (cause) {
    io.stderr(`${cause instanceof Error ? cause.message : cause}\n${usage}`);
    return 2;
  }
  if (given.help || given.file === undefined) {
    io.stderr(usage);
    return given.help ? 0 : 2;
  }
  const points: ForecastRow[] = [];
  try {
    const rows = createReadStream(given.file).pipe(parse({ columns: true, trim: true, bom: true }));
    for await (const row of rows as AsyncIterable<Record<string, string>>) {
      const tempC = Number(row.tempC);
      if (!row.time || !row.tempC || Number.isNaN(tempC)) {
        throw new Error(`Point ${points.length + 1} has no time or no number for tempC.`);
      }
      const isEpoch = /^\d+(?:\.\d+)?$/.test(row.time);
      points.push({
        time: isEpoch ? Number(row.time) : row.time,
        tempC,
        ...more(row, points.length + 1),
      });
    }
    await publishOnce({
      url: given.mqtt,
      topic: `boardcure/${given.site}/forecast/outdoors`,
      payload: JSON.stringify(points),
      retain: true,
    });
  } catch (cause) {
    io.stderr(
      `The forecast ${given.file} was not sent: ${cause instanceof Error ? cause.message : cause}`,
    );
    return 1;
  }
  io.stdout(JSON.stringify({ event: 'forecast-sent', points: points.length }));
  return 0;
}

interface ForecastRow {
  time: string | number;
  tempC: number;
  rhPercent?: number;
  rainMm?: number;
}

/** What a row tells beside the temperature. @throws Error naming the point */
function more(row: Record<string, string>, number: number): Partial<ForecastRow> {
  const told: Partial<ForecastRow> = {};
  for (const name of ['rhPercent', 'rainMm'] as const) {
    if (!row[name]) continue;
    const value = Number(row[name]);
    if (Number.isNaN(value)) throw new Error(`Point ${number} has no number for ${name}.`);
    told[name] = value;
  }
  return told;
}

function read(args: string[]) {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      mqtt: { type: 'string', default: 'mqtt://127.0.0.1:1883' },
      site: { type: 'string', default: 'shed' },
      help: { type: 'boolean', default: false },
    },
  });
  return { ...values, file: positionals[0] };
}
