import type { Quantity } from '../../daemon/contract/quantity.ts';
import { type IioChannel, iioChannels } from './iio-channel.ts';
import { isOneWireThermometer } from './one-wire.ts';
import type { Channel } from './settings.ts';

/** Which of the kernel's interfaces a device speaks. */
export type Bus = 'iio' | 'one-wire' | 'hwmon';

/** A device as far as telling its channels goes. */
export interface FoundDevice {
  readonly bus: Bus;
  readonly folder: string;
  readonly calledBy: readonly string[];
  readonly files: readonly string[];
}

/** A channel that can be read. */
export interface FoundChannel {
  readonly device: FoundDevice;
  /** null for a 1-wire thermometer, which has one only */
  readonly channel: string | null;
  readonly quantity: Quantity | null;
  /** whether it is read without being named in the settings, and if not why */
  readonly byItself: { readonly kind: 'yes' } | { readonly kind: 'no'; readonly because: string };
}

const YES = { kind: 'yes' } as const;
const no = (because: string) => ({ kind: 'no', because }) as const;

const hwmonFile = /^(temp\d+)_input$/;

/**
 * Everything that could be read.
 *
 * Recognised by themselves are a 1-wire thermometer, and a chip that measures humidity together with
 * its temperature. A temperature alone is mostly that of a processor or a converter, and a voltage
 * says nothing without its divider: those have to be named in the settings.
 */
export function findChannels(devices: readonly FoundDevice[]): FoundChannel[] {
  return devices.flatMap((device): FoundChannel[] => {
    if (device.bus === 'one-wire') {
      if (!isOneWireThermometer(device.folder)) return [];
      return [{ device, channel: null, quantity: 'air-temperature', byItself: YES }];
    }
    if (device.bus === 'hwmon') {
      return device.files.flatMap((file) => {
        const channel = hwmonFile.exec(file)?.[1];
        const byItself = no('mostly the temperature inside a chip of the computer');
        return channel === undefined
          ? []
          : [{ device, channel, quantity: 'air-temperature' as const, byItself }];
      });
    }
    const channels = iioChannels(device.files);
    const humid = channels.filter(({ kind }) => kind === 'humidityrelative').length;
    return channels.map((channel) => ({
      device,
      channel: channel.name,
      quantity: quantityOf(channel),
      byItself: ofIio(channel, humid, channels),
    }));
  });
}

function ofIio({ kind }: IioChannel, humid: number, channels: readonly IioChannel[]) {
  if (kind === 'voltage') return no('needs the divider it is measured at');
  if (humid === 0) return no('a temperature without humidity may be that of a chip');
  const alike = channels.filter((other) => other.kind === kind).length;
  return alike === 1 ? YES : no('there are several of its kind on this chip');
}

function quantityOf({ kind, name }: IioChannel): Quantity {
  if (kind === 'humidityrelative') return 'relative-humidity';
  if (kind === 'voltage') return 'wood-resistance';
  return name.endsWith('_object') ? 'surface-temperature' : 'air-temperature';
}

/** A channel with all that is needed to read and publish it. */
export interface PlannedChannel extends Channel {
  readonly quantity: Quantity;
}

/**
 * What to read when the settings name nothing: what is recognised by itself, each device as a sensor
 * named after its bus address or label.
 */
export function channelsByThemselves(found: readonly FoundChannel[]): PlannedChannel[] {
  return found.flatMap(({ device, channel, quantity, byItself }) => {
    if (byItself.kind === 'no' || quantity === null) return [];
    const { bus, folder } = device;
    return [{ sensor: sensorName(device), bus, device: folder, channel, quantity, divider: null }];
  });
}

/** The address on its bus outlives a restart; the number in the folder's name may not. */
function sensorName({ bus, folder, calledBy }: FoundDevice): string {
  const address = calledBy.find((name) => /^\d+-[0-9a-f]{4}$/.test(name));
  const best = bus === 'one-wire' ? folder : (address ?? folder);
  return `wired-${best.replace(/[^A-Za-z0-9._-]/g, '-')}`.slice(0, 64);
}

/** Which device a channel of the settings means. */
export type Match =
  | { readonly kind: 'device'; readonly device: FoundDevice }
  | { readonly kind: 'none'; readonly because: string };

/**
 * Finds the device of a channel in the settings.
 *
 * @param channel - `bus` and `device`: its folder, name, label or address on the bus
 */
export function deviceOf(
  channel: Pick<Channel, 'bus' | 'device'>,
  devices: readonly FoundDevice[],
): Match {
  const { bus, device: wanted } = channel;
  const matching = devices.filter(
    (device) => device.bus === bus && device.calledBy.includes(wanted),
  );
  const [first, second] = matching;
  if (first === undefined) {
    const there = devices.filter((device) => device.bus === bus).map(({ folder }) => folder);
    return {
      kind: 'none',
      because: `no ${bus} device is called ${wanted}; there ${there.length === 0 ? 'are none' : `is ${there.join(', ')}`}`,
    };
  }
  if (second !== undefined) {
    const folders = matching.map(({ folder }) => folder).join(', ');
    return {
      kind: 'none',
      because: `several ${bus} devices are called ${wanted} (${folders}); name one by its address on the bus`,
    };
  }
  return { kind: 'device', device: first };
}

/** The quantity of a channel in the settings, from its kind where it is not said. */
export function plannedQuantity(channel: Channel): PlannedChannel {
  const { quantity, divider } = channel;
  if (quantity !== null) return { ...channel, quantity };
  if (divider !== null) return { ...channel, quantity: 'wood-resistance' };
  const humid = channel.channel?.startsWith('humidityrelative') ?? false;
  return { ...channel, quantity: humid ? 'relative-humidity' : 'air-temperature' };
}
