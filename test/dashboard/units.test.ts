import { describe, expect, it } from 'vitest';
import { createFigures } from '../../dashboard/format/reader-figures.ts';
import {
  type Measure,
  measures,
  preferredUnits,
  toMetric,
  toReaders,
} from '../../dashboard/format/units.ts';
import { tinSizes } from '../../dashboard/pot/tin-sizes.ts';
import { languageOf, localeFor, preferredLanguage } from '../../dashboard/words/language.ts';

describe('US units', () => {
  // Source: NIST SP 811 (2008), appendix B.8 and B.9, from memory: factors to seven digits.
  it.each([
    ['lengthMm', 25.4, 1],
    ['lengthM', 0.3048, 1],
    ['areaM2', 0.09290304, 1],
    ['volumeM3', 0.028316846592, 1],
    ['litres', 3.785411784, 1],
    ['massKg', 0.45359237, 1],
    ['massG', 28.349523125, 1],
    ['densityKgPerL', 0.11982642730074, 1],
    ['filmUm', 25.4, 1],
    ['tempC', 100, 212],
    ['tempC', -40, -40],
    ['differenceK', 5, 9],
  ] as const)('%s: %d is %d', (measure, metric, us) => {
    expect(toReaders(measure, metric, 'us')).toBeCloseTo(us, 9);
  });

  it('come back as they went, whatever is measured', () => {
    for (const measure of Object.keys(measures) as Measure[]) {
      for (const units of ['metric', 'us'] as const) {
        expect(toMetric(measure, toReaders(measure, 12.34, units), units)).toBeCloseTo(12.34, 9);
      }
    }
  });

  it('are usual where the device says it is in the United States', () => {
    expect(preferredUnits(['en-US', 'de'])).toBe('us');
    expect(preferredUnits(['de-DE', 'en-US'])).toBe('metric');
    expect(preferredUnits([])).toBe('metric');
  });
});

describe('amounts at the bench', () => {
  const us = createFigures('en-US', 'us');
  const metric = createFigures('en-GB', 'metric');

  // Source: NIST Handbook 44, appendix C, from memory: 1 gallon = 4 quarts = 128 fluid ounces;
  // 1 gallon = 3.785411784 L, so that a quart is 0.946352946 L and a fluid ounce 29.5735 mL.
  it.each([
    [3.785411784, '1 gal', '1 gal'],
    [5.678117676, '1.5 gal', '1 gal 2 qt'],
    [3.785, '1 gal', '1 gal'],
    [0.946, '1 qt', '1 qt'],
    [1.182941183, '1.25 qt', '1 qt 8 fl oz'],
    [0.0295735, '1 fl oz', '1 fl oz'],
    [0.5, '16.9 fl oz', '16.9 fl oz'],
    [18.927, '5 gal', '5 gal'],
  ])('%d L are %s, poured as %s', (litres, volume, poured) => {
    expect(us.volume(litres)).toBe(volume);
    expect(us.tin(litres)).toBe(volume);
    expect(us.poured(litres)).toBe(poured);
  });

  it('are litres and millilitres where those are usual', () => {
    expect(metric.volume(2.5)).toBe('2.50 L');
    expect(metric.tin(2.5)).toBe('2.5 L');
    expect(metric.poured(0.4502)).toBe('450 mL');
    expect(metric.volume(null)).toBe('–');
  });

  // Source: NIST Handbook 44, appendix C, from memory: an avoirdupois pound is 16 ounces of 28.349523125 g.
  it.each([
    [453.59237, '1 lb'],
    [1219, '2 lb 11 oz'],
    [100, '3.5 oz'],
    [0, '0 oz'],
    [453.5, '1 lb'],
  ])('%d g weigh %s', (grams, weight) => {
    expect(us.weighed(grams)).toBe(weight);
  });

  // Source: an inch is 25.4 mm (NIST SP 811), read on a tape to sixteenths.
  it.each([
    [2.54, '1'],
    [14.2, '5 9/16'],
    [1.27, '1/2'],
    [15.9, '6 1/4'],
    [0.2, '1/16'],
    [2.52, '1'],
  ])('a mark at %d cm is at %s in', (cm, inches) => {
    expect(us.mark(cm)).toBe(inches);
  });

  it('have marks in tenths of a centimetre where those are usual', () => {
    expect(metric.mark(14.2)).toBe('14.2');
    expect(createFigures('de-DE', 'metric').mark(14.2)).toBe('14,2');
  });

  it('have no more decimals than they need', () => {
    expect(metric.asSet('densityKgPerL', 1.5)).toBe('1.5 kg/L');
    expect(us.asSet('densityKgPerL', 1.5)).toBe('12.52 lb/gal');
    expect(metric.sizes('lengthMm', 4200, 145, 22.5)).toBe('4,200 × 145 × 22.5 mm');
    expect(us.sizes('lengthMm', 101.6, 50.8)).toBe('4 × 2 in');
  });
});

describe('the sizes of tins', () => {
  it('are read as people write them, in litres or gallons', () => {
    expect(tinSizes('10; 5; 2,5', 'metric')).toBe('10,5,2.5');
    expect(tinSizes('5 1 0.25', 'us')).toBe('18.927,3.785,0.946');
    expect(tinSizes('  ', 'us')).toBeUndefined();
    expect(tinSizes('big', 'us')).toBe('big');
  });
});

describe('figures in a reader’s own way', () => {
  it('have the reader’s decimal sign, grouping and unit', () => {
    expect(createFigures('en-GB', 'metric').temperature(-3.5)).toBe('−3.5 °C');
    expect(createFigures('de-DE', 'metric').degreeHours(1234.6)).toBe('1.235 °C·h');
    expect(createFigures('fi-FI', 'metric').temperature(-3.5)).toBe('−3,5 °C');
    expect(createFigures('en-US', 'us').temperature(20)).toBe('68 °F');
    expect(createFigures('en-US', 'us').measure('lengthMm', 145)).toBe('5.71 in');
    expect(createFigures('sv-SE', 'metric').share(0.684)).toBe('68 %');
  });

  it('are a dash where missing, and never minus nothing', () => {
    const figures = createFigures('en-GB', 'metric');
    expect(figures.humidity(null)).toBe('–');
    expect(figures.measure('differenceK', -0.01)).toBe('0.0 K');
  });
});

describe('the language of a device', () => {
  it('is the first that the pages speak', () => {
    expect(preferredLanguage(['fr-FR', 'nn-NO', 'en'])).toBe('nb');
    expect(preferredLanguage(['fr'])).toBe('en');
    expect(languageOf('DE-at')).toBe('de');
  });

  it('keeps the ways of its region', () => {
    expect(localeFor('de', ['de-AT', 'en'])).toBe('de-AT');
    expect(localeFor('en', ['fi-FI'])).toBe('en-GB');
    expect(localeFor('nb', ['no-NO'])).toBe('nb-NO');
  });
});
