import { describe, expect, it } from 'vitest';
import { en } from '../../daemon/wording/en.ts';
import { createSpeaker } from '../../dashboard/format/reader-speaker.ts';
import { createReader } from '../../dashboard/reader.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';

const words = { ...first, ...rest };
const metric = createReader('en', 'metric', words, en, ['en-GB']);
const us = createReader('en', 'us', words, en, ['en-US']);

/** On the page no line ends between a figure and its unit; here they are compared by what they say. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

const tooCold = {
  code: 'air-cold',
  text: 'Too cold to brush: 3.4 °C, at least 5 °C.',
  values: { tempC: 3.4, limitC: 5 },
};

describe('a sentence of the daemon', () => {
  it('is said in the reader’s units', () => {
    expect(plain(metric.say(tooCold))).toBe(tooCold.text);
    expect(plain(us.say(tooCold))).toBe('Too cold to brush: 38 °F, at least 41 °F.');
  });

  it('is said by its text where its code is new or its values are missing', () => {
    expect(us.say({ code: 'never-heard', text: 'As sent.', values: { a: 1 } })).toBe('As sent.');
    expect(us.say({ code: 'air-cold', text: 'As sent.' })).toBe('As sent.');
  });

  it('measures out at the bench as it is done there', () => {
    const speak = createSpeaker('en-US', 'us', us.figures, us.calendar);
    // A quart is 946.352946 mL, a pound 453.59237 g, an inch 2.54 cm (NIST SP 811, from memory).
    expect(plain(speak.cupVolume(1183))).toBe('1 qt 8 fl oz');
    expect(plain(speak.mass(1219))).toBe('2 lb 11 oz');
    expect(plain(speak.lengthCm(14.2))).toBe('5 9/16 in');
    expect(plain(speak.lengthCm(30, 'as-set'))).toBe('11.8 in');
    expect(plain(speak.volume(0.5, 'two-figures'))).toBe('17 fl oz');
  });

  it('gives differences of temperature in degrees of the reader, without the zero of the scale', () => {
    const nearDew = { code: 'air-near-dew', text: '', values: { marginK: 1.5, limitK: 3 } };
    expect(plain(us.say(nearDew))).toContain('2.7 °F above it, at least 5.4 °F');
  });
});
