import { describe, expect, it } from 'vitest';
import { en } from '../../daemon/wording/en.ts';
import { createReader } from '../../dashboard/reader.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';

const words = { ...first, ...rest };
const metric = createReader('en', 'metric', words, en, ['en-GB']);
const us = createReader('en', 'us', words, en, ['en-US']);

const tooCold = {
  code: 'air-cold',
  text: 'Too cold to brush: 3.4 °C, at least 5 °C.',
  values: { tempC: 3.4, limitC: 5 },
};

describe('a sentence of the daemon', () => {
  it('is said in the reader’s units', () => {
    expect(metric.say(tooCold)).toBe(tooCold.text);
    expect(us.say(tooCold)).toBe('Too cold to brush: 38 °F, at least 41 °F.');
  });

  it('is said by its text where its code is new or its values are missing', () => {
    expect(us.say({ code: 'never-heard', text: 'As sent.', values: { a: 1 } })).toBe('As sent.');
    expect(us.say({ code: 'air-cold', text: 'As sent.' })).toBe('As sent.');
  });

  it('gives differences of temperature in degrees of the reader, without the zero of the scale', () => {
    const nearDew = { code: 'air-near-dew', text: '', values: { marginK: 1.5, limitK: 3 } };
    expect(us.say(nearDew)).toContain('2.7 °F above it, at least 5.4 °F');
  });
});
