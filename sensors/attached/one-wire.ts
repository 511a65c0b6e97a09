import { asDecimal } from '../payload/senml-unit.ts';
import { numberInFile } from './number-file.ts';
import { noValue, type Outcome, value } from './outcome.ts';

/**
 * Family codes of thermometers, the first two hexadecimal digits of the folder's name.
 * **Source:** Linux kernel, Documentation/w1/slaves/w1_therm.rst.
 */
const THERMOMETERS: ReadonlySet<string> = new Set(['10', '22', '28', '3b', '42']);

/** What such a chip shows before its first conversion, °C. **Source:** the same page. */
const POWER_ON_C = 85;
/** What it shows when the line gave it too little power, °C (printed 127.94). **Source:** the same page. */
const STARVED_C = 127.9;

/** Whether a folder under `/sys/bus/w1/devices` is a thermometer, such as `28-0316a2790b01`. */
export function isOneWireThermometer(folder: string): boolean {
  const [family, serial] = folder.toLowerCase().split('-');
  return serial !== undefined && THERMOMETERS.has(family ?? '');
}

/**
 * The temperature of a 1-wire thermometer.
 *
 * @param files - `w1_slave` (two lines, the first ending in YES where the checksum held) and
 *   `temperature` (thousandths of °C; empty while a conversion runs); null where absent
 * @returns °C, or why there is none
 *
 * **Source:** Linux kernel, Documentation/w1/slaves/w1_therm.rst and
 * Documentation/ABI/testing/sysfs-driver-w1_therm.
 */
export function oneWireTemperature(files: {
  readonly w1Slave: string | null;
  readonly temperature: string | null;
}): Outcome {
  const { w1Slave, temperature } = files;
  if (w1Slave === null) return plausible(numberInFile(temperature));
  const [first = '', second = ''] = w1Slave.trim().split('\n');
  if (/\bNO\s*$/.test(first)) {
    return noValue('the checksum did not hold: look at the line, its length and its pull-up');
  }
  if (!/\bYES\s*$/.test(first)) return noValue('w1_slave has no line that ends in YES');
  // a pulled-down line reads as nine zeros, whose checksum is zero as well
  if (/^(?:00 ){9}/.test(first)) return noValue('the line is held down: nine zeros were read');
  const milli = /\bt=(-?\d+)\s*$/.exec(second)?.[1];
  return plausible(milli === undefined ? null : Number(milli));
}

function plausible(milliC: number | null): Outcome {
  if (milliC === null) return noValue('no temperature was read; a conversion may still be running');
  const tempC = asDecimal(milliC / 1000);
  if (tempC === POWER_ON_C) {
    return noValue('85 °C is what the chip shows before its first conversion: look at its supply');
  }
  if (tempC >= STARVED_C) return noValue('the chip had too little power for a conversion');
  return value(tempC);
}
