import { describe, expect, it } from 'vitest';
import { en } from '../../daemon/wording/en.ts';
import { sentence } from '../../daemon/wording/english.ts';
import { contractSpeaker, metricSpeaker } from '../../daemon/wording/metric-speaker.ts';
import { say, told } from '../../daemon/wording/sentence.ts';

const plain = contractSpeaker();

describe('a sentence', () => {
  it('is sent as code, values and English text', () => {
    expect(sentence('air-cold', { tempC: 3.26, limitC: 5 })).toEqual({
      code: 'air-cold',
      values: { tempC: 3.26, limitC: 5 },
      text: 'Too cold to brush: 3.3 °C, at least 5 °C.',
    });
  });

  it('is said from its code and values, after they went over the wire', () => {
    const sent = sentence('cured-so-far', {
      ...{ gate: 'recoat' as const, degreeHours: 700.4 },
      ...{ neededDegreeHours: 880, percent: 80 },
    });
    const got = JSON.parse(JSON.stringify(sent));
    expect(say(en, got, plain)).toBe('700 of about 880 °C·h that recoating needs (80 %).');
    expect(say(en, got, plain)).toBe(sent.text);
  });

  it('is said by its text where it is not known, has no values, or has those of another version', () => {
    const text = 'As it came.';
    for (const sent of [
      { code: 'of-tomorrow', values: {}, text },
      { code: 'toString', values: {}, text },
      { code: 'air-cold', text },
      { code: 'air-cold', values: {}, text },
      { code: 'air-cold', values: { variant: 'of-tomorrow' }, text },
    ]) {
      expect(say(en, sent, plain)).toBe(text);
    }
  });

  it('is said with the figures of the language', () => {
    const sent = told('air-cold', { tempC: -3.26, limitC: 5.5 });
    const [swedish, english] = (['sv', 'en'] as const).map((language) =>
      say(en, sent, metricSpeaker(language, 'Europe/Stockholm')),
    );
    // Decimal comma and the real minus: Unicode CLDR, by way of Intl.
    expect(swedish).toBe('Too cold to brush: \u22123,3 °C, at least 5,5 °C.');
    expect(english).toBe('Too cold to brush: -3.3 °C, at least 5.5 °C.');
  });
});

describe('times and names', () => {
  const at = Date.UTC(2026, 10, 25, 17, 5);
  it('are those of the zone and the language', () => {
    const contract = contractSpeaker('Europe/Stockholm');
    expect([contract.day(at), contract.clock(at)]).toEqual(['2026-11-25', '18:05']);
    expect(contract.moment(at)).toBe('2026-11-25T17:05:00.000Z');
    const german = metricSpeaker('de', 'Europe/Berlin');
    expect(german.moment('2026-11-25T17:05:00.000Z')).toBe('25.11.2026 18:05');
    expect(german.list(['A', 'B', 'C'])).toBe('A, B und C');
    expect(german.span(3.5 * 3_600_000)).toBe('3,5 h');
  });
});
