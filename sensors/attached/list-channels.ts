import { findChannels, type PlannedChannel } from './find-channels.ts';
import { kernelDevices } from './kernel-tree.ts';
import { readRound } from './read-round.ts';

/**
 * A line for everything that could be read, with what it shows now.
 *
 * @param root - `/`, or a made tree
 */
export async function listChannels(root: string): Promise<string[]> {
  const devices = await kernelDevices(root);
  const found = findChannels(devices);
  const lines: string[] = [];
  for (const { device, channel, quantity, byItself } of found) {
    const planned: PlannedChannel = {
      sensor: 'listed',
      bus: device.bus,
      device: device.folder,
      channel,
      quantity: quantity ?? 'air-temperature',
      divider: null,
    };
    const isVoltage = quantity === 'wood-resistance';
    const [entry] = isVoltage ? [] : await readRound([planned], devices);
    const shown = entry === undefined ? '' : shownValue(entry.outcome, planned.quantity);
    const others = device.calledBy.filter((name) => name !== device.folder).join(', ');
    lines.push(
      [
        `bus = "${device.bus}", device = "${device.folder}"${others === '' ? '' : ` (or ${others})`}`,
        ...(channel === null ? [] : [`channel = "${channel}"`]),
        ...(shown === '' ? [] : [shown]),
        byItself.kind === 'yes' ? 'read by itself' : `name it to read it: ${byItself.because}`,
      ].join('; '),
    );
  }
  return lines.length > 0
    ? lines
    : ['Nothing was found under sys/bus/iio, sys/bus/w1 and sys/class/hwmon.'];
}

function shownValue(
  outcome: { kind: 'value'; value: number } | { kind: 'no-value'; because: string },
  quantity: string,
): string {
  return outcome.kind === 'value' ? `${quantity} ${outcome.value}` : outcome.because;
}
