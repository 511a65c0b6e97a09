import { asDecimal } from '../payload/senml-unit.ts';
import { numberInFile } from './number-file.ts';
import { noValue, type Outcome, value } from './outcome.ts';

/** What an industrial-I/O channel measures, as far as it is of use here. */
export type IioKind = 'temp' | 'humidityrelative' | 'voltage';

export interface IioChannel {
  /** as in the file names after `in_`: `temp`, `temp0`, `humidityrelative`, `voltage0`, `voltage0-voltage1` */
  readonly name: string;
  readonly kind: IioKind;
}

/** Text of an attribute file of the device; null where it does not exist. */
export type AttributeText = (file: string) => string | null;

// the modifiers are those of the ABI page; `ambient` is the air, `object` what is looked at
const channelFile =
  /^in_((temp|humidityrelative|voltage)\d*(?:_ambient|_object)?(?:-voltage\d+)?)_(?:raw|input)$/;

/** Below this a humidity "in milli-percent" would be drier than any air on earth. Assumption. */
const DRIEST_MILLI_PERCENT = 100;

/**
 * The channels of an industrial-I/O device.
 *
 * @param files - names of the files in its folder, any order
 * @returns by name, each once
 *
 * **Source:** Linux kernel, Documentation/ABI/testing/sysfs-bus-iio (`in_temp_input`,
 * `in_humidityrelative_input`, `in_voltageY_raw`, `in_voltageY-voltageZ_raw` …).
 */
export function iioChannels(files: readonly string[]): IioChannel[] {
  const found = new Map<string, IioKind>();
  for (const file of files) {
    const [, name, kind] = channelFile.exec(file) ?? [];
    if (name !== undefined) found.set(name, kind as IioKind);
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, kind]) => ({ name, kind }));
}

/**
 * What a channel measures now: °C, % relative humidity or V.
 *
 * A processed `_input` is taken as it is; else (`_raw` + `_offset`) × `_scale`. Offset and scale may
 * belong to the channel or to all channels of its kind. Thousandths in all three kinds: milli °C,
 * milli-percent, mV.
 *
 * @param channel - one of {@link iioChannels}
 * @param text - of the device's files
 * @returns the number, or what is missing
 *
 * **Source:** Linux kernel, Documentation/ABI/testing/sysfs-bus-iio: "Units after application of
 * scale and offset are millivolts", "… milli degrees Celsius", "… milli percent"; the order of
 * offset and scale from the same page. A few drivers give a processed humidity in per cent all the
 * same: a number up to 100 is taken for that.
 */
export function iioValue({ name, kind }: IioChannel, text: AttributeText): Outcome {
  const input = numberInFile(text(`in_${name}_input`));
  if (input !== null) {
    const inPercent =
      kind === 'humidityrelative' && input > 0 && input <= DRIEST_MILLI_PERCENT ? 1 : 1000;
    return value(asDecimal(input / inPercent));
  }
  const raw = numberInFile(text(`in_${name}_raw`));
  if (raw === null) return noValue(`in_${name}_input and in_${name}_raw hold no number`);
  const scale = ofChannelOrKind(name, kind, 'scale', text);
  // without a scale the raw count has no unit: better nothing than a number of something
  if (scale === null) return noValue(`in_${name}_scale is missing, so in_${name}_raw has no unit`);
  const offset = ofChannelOrKind(name, kind, 'offset', text) ?? 0;
  return value(asDecimal(((raw + offset) * scale) / 1000));
}

function ofChannelOrKind(
  name: string,
  kind: IioKind,
  what: 'scale' | 'offset',
  text: AttributeText,
): number | null {
  const shared = name.includes('-') ? `in_${kind}-${kind}_${what}` : `in_${kind}_${what}`;
  return numberInFile(text(`in_${name}_${what}`) ?? text(shared));
}
