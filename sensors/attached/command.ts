import { parseArgs } from 'node:util';
import { startAttached } from './attached.ts';
import { listChannels } from './list-channels.ts';
import { type AttachedSettings, AttachedSettingsError, loadAttachedSettings } from './settings.ts';

const HELP = `boardcure-attached: reads sensors wired to this computer and publishes them over MQTT.

  --config <file>   settings (TOML); without it, what can be recognised is read
  --queue <folder>  where readings wait while the broker is away (default ./attached-queue)
  --mqtt <url>      the broker (default mqtt://127.0.0.1:1883)
  --list            shows what can be read, and ends
  --root <folder>   a made tree instead of / (for trying things out)

deploy/wired-sensors.md tells the rest.`;

const flags = {
  config: { type: 'string' },
  queue: { type: 'string' },
  mqtt: { type: 'string' },
  root: { type: 'string', default: '/' },
  list: { type: 'boolean', default: false },
  help: { type: 'boolean', default: false },
} as const;

const say = (line: string) => process.stderr.write(`boardcure-attached: ${line}\n`);

/**
 * Runs until it is asked to stop; sets the exit code.
 *
 * @param args - what stands after the program's name
 */
export async function run(args: string[]): Promise<void> {
  process.exitCode = await attachedCommand(args);
}

async function attachedCommand(args: string[]): Promise<number> {
  let settings: AttachedSettings;
  let root: string;
  try {
    const { values } = parseArgs({ args, options: flags, strict: true });
    if (values.help) {
      process.stdout.write(`${HELP}\n`);
      return 0;
    }
    root = values.root;
    if (values.list) {
      process.stdout.write(`${(await listChannels(root)).join('\n')}\n`);
      return 0;
    }
    const loaded = loadAttachedSettings(values.config ?? null);
    settings = {
      ...loaded,
      mqtt: values.mqtt ?? loaded.mqtt,
      queue: { ...loaded.queue, folder: values.queue ?? loaded.queue.folder },
    };
  } catch (cause) {
    if (!(cause instanceof AttachedSettingsError || cause instanceof TypeError)) throw cause;
    say(cause.message);
    return 2;
  }
  const stopped = new Promise<void>((resolve) => {
    for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => resolve());
  });
  try {
    const attached = await startAttached({ settings, root, say });
    const ready = { event: 'ready', sensors: attached.sensors, ...attached.state() };
    process.stdout.write(`${JSON.stringify(ready)}\n`);
    await stopped;
    await attached.close();
    return 0;
  } catch (cause) {
    say(cause instanceof Error ? cause.message : String(cause));
    return 1;
  }
}
