import { quantityFacts } from '../../daemon/contract/quantity.ts';
import { asDecimal } from '../payload/senml-unit.ts';
import { probeResistance } from './divider.ts';
import type { PlannedChannel } from './find-channels.ts';
import { type IioKind, iioValue } from './iio-channel.ts';
import { numberInFile } from './number-file.ts';
import { oneWireTemperature } from './one-wire.ts';
import { noValue, type Outcome, value } from './outcome.ts';

/** Text of the device's attribute files, already read; null where missing. */
export type Attributes = ReadonlyMap<string, string | null>;

/** The attribute files that a channel needs, in the order in which they are read. */
export function filesOf({ bus, channel }: PlannedChannel): string[] {
  // w1_slave first: reading it makes the conversion, and carries the checksum
  if (bus === 'one-wire') return ['w1_slave', 'temperature'];
  if (bus === 'hwmon') return [`${channel}_fault`, `${channel}_input`];
  const kind = kindOf(channel ?? '');
  const shared = channel?.includes('-') ? `${kind}-${kind}` : kind;
  return [
    ...['input', 'raw', 'offset', 'scale'].map((what) => `in_${channel}_${what}`),
    ...['offset', 'scale'].map((what) => `in_${shared}_${what}`),
  ];
}

function kindOf(channel: string): IioKind {
  const kinds: readonly IioKind[] = ['humidityrelative', 'voltage', 'temp'];
  return kinds.find((kind) => channel.startsWith(kind)) ?? 'temp';
}

/**
 * What a channel measures, in the unit of its quantity.
 *
 * @param channel - from the settings or found
 * @param attributes - text of {@link filesOf}
 * @returns a number within the limits of the quantity, or why there is none
 */
export function channelValue(channel: PlannedChannel, attributes: Attributes): Outcome {
  const measured = measuredValue(channel, (file) => attributes.get(file) ?? null);
  if (measured.kind === 'no-value') return measured;
  const { low, high, unit, words } = quantityFacts[channel.quantity];
  if (measured.value >= low && measured.value <= high) return measured;
  return noValue(`${measured.value} ${unit} is no ${words}`);
}

function measuredValue(
  { bus, channel, divider }: PlannedChannel,
  text: (file: string) => string | null,
): Outcome {
  if (bus === 'one-wire') {
    return oneWireTemperature({ w1Slave: text('w1_slave'), temperature: text('temperature') });
  }
  if (bus === 'hwmon') return hwmonTemperature(text(`${channel}_fault`), text(`${channel}_input`));
  const name = channel ?? '';
  const read = iioValue({ name, kind: kindOf(name) }, text);
  if (read.kind === 'no-value' || divider === null) return read;
  return probeResistance(read.value, divider);
}

/**
 * A temperature as hardware monitoring shows it.
 *
 * @returns °C, or why there is none
 *
 * **Source:** Linux kernel, Documentation/hwmon/sysfs-interface.rst (from memory): `temp[1-*]_input`
 * in thousandths of °C, `temp[1-*]_fault` 1 where the sensor is open or shorted.
 */
function hwmonTemperature(fault: string | null, input: string | null): Outcome {
  if (numberInFile(fault) === 1) return noValue('the kernel says that the sensor is faulty');
  const milliC = numberInFile(input);
  return milliC === null ? noValue('its file holds no number') : value(asDecimal(milliC / 1000));
}
