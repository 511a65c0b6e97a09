import { describe, expect, it } from 'vitest';
import { ruleForm } from '../../daemon/rules/topic-rule-fact.ts';
import { quantityNamed } from '../../sensors/payload/guess-quantity.ts';
import { suggestedRule } from '../../sensors/payload/suggest-rule.ts';
import { compiledRule } from '../../sensors/payload/topic-rule.ts';

const at = Date.UTC(2026, 4, 4, 7, 30);
const suggest = (topic: string, text: string) =>
  suggestedRule({ topic, text, byteLength: text.length }, 2048, at);
const guesses = (topic: string, text: string) =>
  suggest(topic, text)?.values.map(({ pointer, name, guess }) =>
    [pointer || name, guess?.quantity, guess?.value]
      .filter((one) => one !== '' && one !== undefined)
      .join(' '),
  );

describe('what a number may be', () => {
  it.each([
    ['farm/attic/temperature', '17.2', ['air-temperature 17.2']],
    ['farm/attic/temperature', '17,2 °C', ['air-temperature 17.2']],
    ['farm/attic/temp_f', '70.7', ['air-temperature 21.5']],
    ['farm/attic/temp', '70.7', ['air-temperature 21.5']],
    ['farm/attic/temp', '294.65', ['air-temperature 21.5']],
    ['farm/attic/temp', '215', ['air-temperature 21.5']],
    ['farm/attic/temp', '2150', ['air-temperature 21.5']],
    ['farm/attic/humidity', '0.55', ['relative-humidity 55']],
    [
      'farm/attic/x',
      '{"tempC":17.2,"rh":55,"rssi":-70}',
      ['/tempC air-temperature 17.2', '/rh relative-humidity 55', '/rssi'],
    ],
    ['farm/attic/temperature', '{"value":17.2,"seq":12}', ['/value air-temperature 17.2', '/seq']],
    ['farm/board-temp', '{"value":17.2}', ['/value surface-temperature 17.2']],
    [
      'farm/x',
      '{"data":{"co2":612,"pins_kohm":470}}',
      ['/data/co2 carbon-dioxide 612', '/data/pins_kohm wood-resistance 470000'],
    ],
    ['farm/x', '{"battery":3.1}', ['/battery']],
    ['farm/x', '{"battery":"93 %"}', ['/battery battery 93']],
    ['farm/x', '{"temp_max":40,"voltage":3.1}', ['/temp_max', '/voltage']],
    ['farm/x', '{"temp":-127}', ['/temp']],
    ['farm/x', '[{"bn":"n1:","n":"temp","u":"Cel","v":17.2}]', ['temp air-temperature 17.2']],
    ['farm/x', '5', ['']],
  ])('%s %s', (topic, text, expected) => {
    expect(guesses(topic, text)).toEqual(expected);
  });

  it.each(['on', '', '{"state":"on"}', '[]', '{', 'a/b'])('%j holds no number', (text) => {
    expect(suggest('farm/x', text)).toBeNull();
  });

  it('is told by the words of a name, in whatever way they are joined', () => {
    for (const name of ['airTemp', 'air_temp', 'air-temp', 'Temp 2', 'TEMPERATURE', 't1']) {
      expect(quantityNamed(name), name).toBe('air-temperature');
    }
    expect(quantityNamed('attempt')).toBeNull();
    expect(quantityNamed('temp_setpoint')).toBe('other');
  });
});

describe('the rule that is suggested', () => {
  it('calls the sensor by what tells it apart in the topic', () => {
    expect(suggest('farm/attic/temperature', '17.2')?.draft.sensor).toBe('farm-attic');
    expect(suggest('farm/attic/humidity', '55')?.draft.sensor).toBe('farm-attic');
    expect(suggest('temperature', '17.2')?.draft.sensor).toBe('temperature');
    expect(suggest('boardcure/barn/sensor/n1/air-temperature', '3')?.draft.sensor).toBe('barn-n1');
    expect(suggest('ü/€', '17.2')?.draft.sensor).toBe('sensor');
  });

  it('takes a time that is one', () => {
    const time = (text: string) => suggest('farm/x', text)?.draft.time;
    expect(time(`{"temp":3,"ts":${at / 1000}}`)).toEqual({ from: '/ts', format: 'any' });
    expect(time('{"temp":3,"meta":{"time":"2026-05-04T07:29:58Z"}}')).toEqual({
      from: '/meta/time',
      format: 'any',
    });
    expect(time('{"temp":3,"ts":12}')).toBeUndefined();
  });

  it('can be saved as it is, wherever something was guessed', () => {
    for (const [topic, text] of [
      ['farm/attic/temperature', '17.2'],
      ['farm/{odd}/x', '{"temp":70.7,"hum":"55 %","bat":0.9,"ts":12}'],
      ['farm/x', '[{"bn":"n1:","n":"temp","u":"Cel","v":17.2}]'],
    ] as const) {
      const suggestion = suggest(topic, text);
      if (suggestion === null) throw new Error('no suggestion');
      expect(compiledRule(ruleForm(suggestion.draft), 'shed')).toMatchObject({ kind: 'rule' });
    }
  });
});
