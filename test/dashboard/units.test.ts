import { describe, expect, it } from 'vitest';
import { createFigures } from '../../dashboard/format/reader-figures.ts';
import {
  type Measure,
  measures,
  preferredUnits,
  toMetric,
  toReaders,
} from '../../dashboard/format/units.ts';
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
