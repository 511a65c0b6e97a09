import { describe, expect, it } from 'vitest';
import { isOneWireThermometer, oneWireTemperature } from '../../sensors/attached/one-wire.ts';

/*
 * Source of the form, of the power-on value 85.00 and of 127.94: Linux kernel,
 * Documentation/w1/slaves/w1_therm.rst. The bytes are made up: 0x0157 sixteenths are 21.4375 °C.
 */
const slave = (verdict: 'YES' | 'NO', milli: number, bytes = '57 01 4b 46 7f ff 09 10 2f') =>
  `${bytes} : crc=2f ${verdict}\n${bytes} t=${milli}\n`;
const read = (w1Slave: string | null, temperature: string | null = null) =>
  oneWireTemperature({ w1Slave, temperature });

describe('a 1-wire thermometer', () => {
  it('tells its temperature in thousandths where the checksum held', () => {
    expect(0x0157 / 16).toBe(21.4375);
    expect(read(slave('YES', 21437))).toEqual({ kind: 'value', value: 21.437 });
    expect(read(slave('YES', -62))).toEqual({ kind: 'value', value: -0.062 });
  });

  it('is not believed where the checksum did not hold, though a number stands there', () => {
    expect(read(slave('NO', 21437)).kind).toBe('no-value');
    expect(read('57 01 4b 46\n').kind).toBe('no-value');
    expect(read('').kind).toBe('no-value');
  });

  it('is not believed at the value it shows before its first conversion, nor when starved', () => {
    expect(read(slave('YES', 85000)).kind).toBe('no-value');
    expect(read(null, '85000\n').kind).toBe('no-value');
    expect(read(slave('YES', 127937)).kind).toBe('no-value');
    // one step of a twelve-bit conversion beside it is a temperature like any other
    expect(read(slave('YES', 84937))).toEqual({ kind: 'value', value: 84.937 });
  });

  it('is not believed on a line that is held down, though nine zeros have a right checksum', () => {
    expect(read(slave('YES', 0, '00 00 00 00 00 00 00 00 00')).kind).toBe('no-value');
    expect(read(slave('YES', 0, '00 00 4b 46 7f ff 10 10 d4'))).toEqual({
      kind: 'value',
      value: 0,
    });
  });

  it('can be read from `temperature` alone, which is empty while a conversion runs', () => {
    expect(read(null, '19250\n')).toEqual({ kind: 'value', value: 19.25 });
    expect(read(null, '\n').kind).toBe('no-value');
    expect(read(null).kind).toBe('no-value');
  });

  it('is told by the family code of its folder', () => {
    for (const folder of ['10-000802b53835', '28-0316a2790b01', '3b-0000001932ec']) {
      expect(isOneWireThermometer(folder)).toBe(true);
    }
    for (const folder of ['w1_bus_master1', '29-000000100001', '28', '']) {
      expect(isOneWireThermometer(folder)).toBe(false);
    }
  });
});
