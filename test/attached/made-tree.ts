import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A folder that looks like the kernel's files of a computer with wired sensors. */
export function madeTree() {
  const root = mkdtempSync(join(tmpdir(), 'boardcure-tree-'));
  const put = (path: string, text: string) => {
    const file = join(root, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  };
  const link = (path: string, target: string) => {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    symlinkSync(join(root, target), join(root, path));
  };
  /** A chip for humidity and temperature at address 0x44 of the first bus. */
  const climate = 'sys/devices/i2c-1/1-0044/iio:device0';
  put(`${climate}/name`, 'climate\n');
  put(`${climate}/in_temp_raw`, '26200\n');
  put(`${climate}/in_temp_offset`, '-20000\n');
  put(`${climate}/in_temp_scale`, '2.68127\n');
  put(`${climate}/in_humidityrelative_input`, '61500\n');
  link('sys/bus/iio/devices/iio:device0', climate);
  /** A converter with one channel that measures a divider, and its own temperature. */
  const converter = 'sys/devices/i2c-1/1-0048/iio:device1';
  put(`${converter}/name`, 'converter\n');
  put(`${converter}/in_voltage0_raw`, '13200\n');
  put(`${converter}/in_voltage_scale`, '0.125\n');
  put(`${converter}/in_temp_input`, '38000\n');
  link('sys/bus/iio/devices/iio:device1', converter);
  const wire = 'sys/devices/w1_bus_master1/28-0316a2790b01';
  const bytes = '57 01 4b 46 7f ff 09 10 2f';
  const thermometer = (milli: number, verdict = 'YES') =>
    put(`${wire}/w1_slave`, `${bytes} : crc=2f ${verdict}\n${bytes} t=${milli}\n`);
  thermometer(21437);
  put(`${wire}/temperature`, '21437\n');
  link('sys/bus/w1/devices/28-0316a2790b01', wire);
  put('sys/devices/w1_bus_master1/w1_master_slaves', '28-0316a2790b01\n');
  link('sys/bus/w1/devices/w1_bus_master1', 'sys/devices/w1_bus_master1');
  put('sys/class/hwmon/hwmon0/name', 'cpu\n');
  put('sys/class/hwmon/hwmon0/temp1_input', '47250\n');
  put('proc/sys/kernel/random/boot_id', 'a-boot\n');
  // a time service has set the clock
  put('run/systemd/timesync/synchronized', '');
  return {
    root,
    put,
    thermometer,
    converterVolts: (volts: number) =>
      put(`${converter}/in_voltage0_raw`, `${Math.round(volts / 0.000125)}\n`),
    remove: () => rmSync(root, { recursive: true, force: true }),
  };
}
