import { describe, expect, it } from 'vitest';
import { oddsLine } from '../../dashboard/format/odds.ts';
import { createFigures } from '../../dashboard/format/reader-figures.ts';
import { shownNumber, typedNumber } from '../../dashboard/format/typed-number.ts';
import { times } from '../../dashboard/words/en/times.ts';

const figures = createFigures('en-GB', 'metric');

describe('figures on a page', () => {
  it('carry their unit, and a dash where they are missing', () => {
    expect(figures.temperature(14.23)).toBe('14.2 °C');
    expect(figures.temperature(-3.5)).toBe('−3.5 °C');
    expect(figures.temperature(null)).toBe('–');
    expect(figures.humidity(71.4)).toBe('71 %');
    expect(figures.humidity(null)).toBe('–');
    expect(figures.degreeHours(1234.6)).toBe('1,235 °C·h');
    expect(figures.hours(3.25)).toBe('3.3 h');
    expect(figures.hours(41.4)).toBe('41 h');
    expect(figures.number(-12.3456)).toBe('−12.346');
  });

  it('say a chance in words that do not pretend to be exact', () => {
    const odds = (probability: number) => oddsLine(probability, times);
    expect(odds(0.003)).toBe('next to none');
    expect(odds(0.04)).toBe('less than 1 in 10');
    expect(odds(0.68)).toBe('7 in 10');
    expect(odds(0.97)).toBe('more than 9 in 10');
    expect(odds(0.99)).toBe('almost surely');
  });
});

describe('a typed number', () => {
  it('may have a comma as its decimal point', () => {
    expect(typedNumber(' 2,5 ')).toBe(2.5);
    expect(typedNumber('4 200')).toBe(4200);
  });

  it('may have a fraction, as a tape is read in inches', () => {
    expect(typedNumber('5 9/16')).toBe(5.5625);
    expect(typedNumber('11-1/4')).toBe(11.25);
    expect(typedNumber('3/8')).toBe(0.375);
    expect(typedNumber('3/0')).toBeNaN();
  });

  it('is shown with the decimal sign of the reader, and read back', () => {
    for (const [locale, shown] of [
      ['en-GB', '2.5'],
      ['de-DE', '2,5'],
      ['fi-FI', '2,5'],
    ] as const) {
      expect(shownNumber('2.5', locale)).toBe(shown);
      expect(typedNumber(shown)).toBe(2.5);
    }
    expect(shownNumber('10 5 1', 'de-DE')).toBe('10 5 1');
    expect(typedNumber('−3,5')).toBe(-3.5);
  });

  it('is no number when it is none, so that the daemon names the field', () => {
    expect(typedNumber('many')).toBeNaN();
    expect(typedNumber('')).toBeNaN();
    expect(JSON.stringify({ count: typedNumber('many') })).toBe('{"count":null}');
  });
});
