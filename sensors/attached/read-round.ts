import {
  channelsByThemselves,
  deviceOf,
  findChannels,
  type PlannedChannel,
  plannedQuantity,
} from './find-channels.ts';
import type { KernelDevice } from './kernel-tree.ts';
import { noValue, type Outcome } from './outcome.ts';
import { channelValue, filesOf } from './read-channel.ts';
import type { Sample } from './senml-pack.ts';
import type { Channel } from './settings.ts';

/** What came of one channel in a round of reading. */
export interface RoundEntry {
  readonly channel: PlannedChannel;
  readonly outcome: Outcome;
}

/** What the settings ask for; with nothing in them, what is recognised by itself. */
export function plannedChannels(
  settings: readonly Channel[],
  devices: readonly KernelDevice[],
): PlannedChannel[] {
  if (settings.length > 0) return settings.map(plannedQuantity);
  return channelsByThemselves(findChannels(devices));
}

/** Reads every channel once, one after the other: a bus is used by one at a time. */
export async function readRound(
  channels: readonly PlannedChannel[],
  devices: readonly KernelDevice[],
): Promise<RoundEntry[]> {
  const entries: RoundEntry[] = [];
  for (const channel of channels) {
    const match = deviceOf(channel, devices);
    const device =
      match.kind === 'device' ? devices.find((one) => one === match.device) : undefined;
    const outcome =
      device === undefined
        ? noValue(match.kind === 'none' ? match.because : 'the device has gone')
        : channelValue(channel, await attributesOf(channel, device));
    entries.push({ channel, outcome });
  }
  return entries;
}

async function attributesOf(channel: PlannedChannel, device: KernelDevice) {
  const attributes = new Map<string, string | null>();
  for (const file of filesOf(channel)) {
    const text = device.files.includes(file) ? await device.text(file) : null;
    attributes.set(file, text);
    // w1_slave tells everything; `temperature` would start a second conversion
    if (channel.bus === 'one-wire' && text !== null) break;
  }
  return attributes;
}

/** The values of a round by sensor; of equal quantities of one sensor the first counts. */
export function samplesOf(entries: readonly RoundEntry[]): Sample[] {
  const bySensor = new Map<string, Map<PlannedChannel['quantity'], number>>();
  for (const { channel, outcome } of entries) {
    if (outcome.kind === 'no-value') continue;
    const values = bySensor.get(channel.sensor) ?? new Map();
    if (!values.has(channel.quantity)) values.set(channel.quantity, outcome.value);
    bySensor.set(channel.sensor, values);
  }
  return [...bySensor].map(([sensor, values]) => ({
    sensor,
    values: [...values].map(([quantity, value]) => ({ quantity, value })),
  }));
}
