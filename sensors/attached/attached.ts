import { readFileSync } from 'node:fs';
import { computerClock } from './computer-clock.ts';
import { openDiskQueue } from './disk-queue.ts';
import { kernelDevices } from './kernel-tree.ts';
import { plannedChannels, type RoundEntry, readRound, samplesOf } from './read-round.ts';
import { startSender } from './sender.ts';
import type { AttachedSettings } from './settings.ts';
import { sampleText } from './waiting-sample.ts';

export interface AttachedParts {
  readonly settings: AttachedSettings;
  /** `/`, or a made tree */
  readonly root: string;
  readonly say: (line: string) => void;
}

/** The running program. */
export interface Attached {
  /** sensors of the first round */
  readonly sensors: readonly string[];
  state(): AttachedState;
  close(): Promise<void>;
}

export interface AttachedState {
  readonly sent: number;
  readonly waiting: number;
  readonly dropped: number;
  readonly undatable: number;
}

/** So many wait in memory while the disk takes nothing. */
const MOST_UNWRITTEN = 1000;

/**
 * Reads the wired sensors in a steady rhythm and sends what they measured, by way of the disk.
 *
 * @throws Error when the queue's folder, password or certificate file cannot be used
 */
export async function startAttached({ settings, root, say }: AttachedParts): Promise<Attached> {
  const queue = openDiskQueue(settings.queue.folder, settings.queue.maxBytes);
  const { damaged } = queue.counts();
  if (damaged > 0) say(`${damaged} readings in the queue were damaged and are left out`);
  const clock = computerClock(root);
  let newestAt: number | null = null;
  const now = () => clock.now(newestAt);
  const { username, passwordFile, caFile } = settings;
  const sender = startSender({
    url: settings.mqtt,
    site: settings.site,
    login: {
      ...(username === null ? {} : { username }),
      ...(passwordFile === null ? {} : { password: readFileSync(passwordFile, 'utf8').trim() }),
      ...(caFile === null ? {} : { ca: readFileSync(caFile) }),
    },
    queue,
    now,
    say,
  });
  const report = channelReport(say);
  let unwritten: string[] = [];
  let lostInMemory = 0;
  let saidDropped = queue.counts().dropped;

  async function round(): Promise<string[]> {
    const devices = await kernelDevices(root);
    const channels = plannedChannels(settings.channels, devices);
    if (channels.length === 0) report.nothing();
    const samples = [];
    for (const sample of samplesOf(report.look(await readRound(channels, devices)))) {
      const { boot, monotonicMs, wallMs } = now();
      samples.push(sample.sensor);
      unwritten.push(sampleText({ sample, taken: { boot, monotonicMs, at: wallMs } }));
      newestAt = wallMs ?? newestAt;
    }
    write();
    sender.wake();
    return samples;
  }

  function write(): void {
    if (unwritten.length === 0) return;
    try {
      queue.append(unwritten);
      unwritten = [];
    } catch (cause) {
      lostInMemory += Math.max(0, unwritten.length - MOST_UNWRITTEN);
      unwritten = unwritten.slice(-MOST_UNWRITTEN);
      say(
        `the queue cannot be written, tried again in the next round: ${(cause as Error).message}`,
      );
    }
    const { dropped } = queue.counts();
    if (dropped > saidDropped) {
      say(`the queue is full: ${dropped} of the oldest readings were dropped in all`);
      saidDropped = dropped;
    }
  }

  const sensors = await round();
  let running: Promise<unknown> | null = null;
  const timer = setInterval(() => {
    // a round that takes longer than its period is not run beside itself
    running ??= round()
      .catch((error: Error) => say(`a round of reading failed: ${error.message}`))
      .finally(() => {
        running = null;
      });
  }, settings.periodS * 1000);

  return {
    sensors,
    state: () => {
      const { waiting, dropped } = queue.counts();
      const { sent, undatable } = sender.counts();
      return { sent, waiting, dropped: dropped + lostInMemory, undatable };
    },
    async close() {
      clearInterval(timer);
      await running;
      await sender.close();
      queue.close();
    },
  };
}

/** Says once what is amiss with a channel, and once that it is well again. */
function channelReport(say: (line: string) => void) {
  const said = new Map<string, string>();
  return {
    nothing(): void {
      if (said.has('')) return;
      said.set('', 'nothing');
      say(
        'nothing to read was recognised; --list shows what there is, deploy/wired-sensors.md what to do',
      );
    },
    look(entries: readonly RoundEntry[]): readonly RoundEntry[] {
      for (const { channel, outcome } of entries) {
        const key = `${channel.sensor} ${channel.quantity}`;
        const before = said.get(key);
        if (outcome.kind === 'value') {
          if (before !== undefined) say(`${key}: reads again`);
          said.delete(key);
        } else if (before !== outcome.because) {
          say(`${key}: ${outcome.because}`);
          said.set(key, outcome.because);
        }
      }
      return entries;
    },
  };
}
