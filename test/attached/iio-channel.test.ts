import { describe, expect, it } from 'vitest';
import { iioChannels, iioValue } from '../../sensors/attached/iio-channel.ts';

/*
 * Source of names and units: Linux kernel, Documentation/ABI/testing/sysfs-bus-iio.
 */
const attributes = (files: Record<string, string>) => (file: string) => files[file] ?? null;
const temp = { name: 'temp', kind: 'temp' } as const;
const humid = { name: 'humidityrelative', kind: 'humidityrelative' } as const;
const volt = (name: string) => ({ name, kind: 'voltage' }) as const;

describe('the channels of an industrial-I/O device', () => {
  it('are told by the names of its files, each once', () => {
    const files = [
      'name',
      'in_temp_raw',
      'in_temp_scale',
      'in_temp_input',
      'in_humidityrelative_raw',
      'in_voltage0_raw',
      'in_voltage0-voltage1_raw',
      'in_voltage_scale',
      'in_temp_object_raw',
      'in_temp_peak_raw',
      'in_pressure_input',
      'sampling_frequency',
    ];
    expect(iioChannels(files).map(({ name }) => name)).toEqual([
      'humidityrelative',
      'temp',
      'temp_object',
      'voltage0',
      'voltage0-voltage1',
    ]);
  });

  it('give a processed value in thousandths: milli °C and milli-percent', () => {
    expect(iioValue(temp, attributes({ in_temp_input: '21437\n' }))).toEqual(value(21.437));
    expect(iioValue(temp, attributes({ in_temp_input: '-5250\n' }))).toEqual(value(-5.25));
    const files = { in_humidityrelative_input: '61500\n' };
    expect(iioValue(humid, attributes(files))).toEqual(value(61.5));
  });

  it('add the offset to the raw count before the scale', () => {
    // worked by hand: (26200 − 20000) × 2.68127 / 1000 = 16.623874
    const files = { in_temp_raw: '26200', in_temp_offset: '-20000', in_temp_scale: '2.68127' };
    expect(iioValue(temp, attributes(files))).toEqual(value(16.623874));
  });

  it('take a scale that all channels of a kind share, and their own before it', () => {
    // 17,600 counts of 0.125 mV are 2.2 V
    const shared = { in_voltage0_raw: '17600', in_voltage_scale: '0.125' };
    expect(iioValue(volt('voltage0'), attributes(shared))).toEqual(value(2.2));
    const own = { ...shared, in_voltage0_scale: '0.0625' };
    expect(iioValue(volt('voltage0'), attributes(own))).toEqual(value(1.1));
    const differential = { 'in_voltage0-voltage1_raw': '-800', 'in_voltage-voltage_scale': '0.5' };
    expect(iioValue(volt('voltage0-voltage1'), attributes(differential))).toEqual(value(-0.4));
  });

  it('take a processed humidity up to 100 for per cent, as a few drivers give it', () => {
    const files = { in_humidityrelative_input: '41.074000000\n' };
    expect(iioValue(humid, attributes(files))).toEqual(value(41.074));
  });

  it('give no number without a scale, from an empty file or from words', () => {
    for (const files of [
      { in_temp_raw: '26200' },
      { in_temp_input: '' },
      { in_temp_input: 'nan' },
      { in_temp_input: '0x12' },
      { in_temp_raw: '1e', in_temp_scale: '1' },
      {},
    ]) {
      expect(iioValue(temp, attributes(files)).kind).toBe('no-value');
    }
  });
});

const value = (number: number) => ({ kind: 'value', value: number });
