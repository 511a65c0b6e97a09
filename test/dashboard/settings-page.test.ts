import { describe, expect, it } from 'vitest';
import { BoardcureError, type Problem } from '../../daemon/contract/problem.ts';
import type { ListedSetting } from '../../daemon/contract/setting.ts';
import { chosenAfter } from '../../daemon/settings/choose.ts';
import { Settings } from '../../daemon/settings/schema.ts';
import { plainGround, standingSettings } from '../../daemon/settings/standing.ts';
import { en as wording } from '../../daemon/wording/en.ts';
import { inReadersUnits } from '../../dashboard/forms/problem-units.ts';
import { createReader } from '../../dashboard/reader.ts';
import { takesText, valueText } from '../../dashboard/settings-page/setting-value.ts';
import { wishOf } from '../../dashboard/settings-page/setting-wish.ts';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';

const { settings } = standingSettings(() => plainGround(Settings.parse({}))).list();
const setting = (name: string): ListedSetting => {
  const found = settings.find((one) => one.name === name);
  if (!found) throw new Error(`${name} is not listed`);
  return found;
};

function typed(...fields: [name: string, value: string][]): FormData {
  const form = new FormData();
  for (const [name, value] of fields) form.append(name, value);
  return form;
}

describe('the form of a setting', () => {
  it.each([
    ['cure.readyAt', ['0,95'], 0.95],
    ['cure.datumC', ['−4.5'], -4.5],
    ['notices.mqtt.on', ['false'], false],
    ['cure.ruling', ['arrhenius'], 'arrhenius'],
    ['work.from', ['07:30'], '07:30'],
    ['work.days', ['mon', 'sat'], ['mon', 'sat']],
    ['work.days', [], []],
    ['trade.stockLengthsMm', ['3000', '', '4200,5'], [3000, 4200.5]],
    ['trade.stockSizes', [' 120x22 ', ''], ['120x22']],
  ] as const)('asks for %s as %j', (name, values, value) => {
    const form = typed(...values.map((one): [string, string] => ['value', one]));
    expect(wishOf(setting(name), form)).toEqual({ settings: { [name]: value } });
  });

  it('keeps its place for a month that was left empty, which is then no number', () => {
    const months = Array.from({ length: 12 }, (_, i): [string, string] => ['value', i ? '4' : '']);
    const wish = wishOf(setting('work.monthlyMeanC'), typed(...months));
    expect(wish.settings['work.monthlyMeanC']).toEqual([Number.NaN, ...Array(11).fill(4)]);
  });

  it('can ask for nothing at all', () => {
    const form = typed(['has', 'nothing'], ['value', '06:30']);
    expect(wishOf(setting('notices.digestAt'), form)).toEqual({
      ...{ settings: {}, nothing: ['notices.digestAt'] },
    });
  });
});

/** A figure and its unit are kept on one line. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('a reader of US units', () => {
  const reader = createReader('en', 'us', { ...first, ...rest }, wording, ['en-US']);

  it('reads values, lists and limits in them', () => {
    const value = (next: number | number[], name: string) =>
      plain(valueText(next, setting(name), reader));
    expect(value(5, 'cure.datumC')).toBe('41 °F');
    expect(value([3600, 5400], 'trade.stockLengthsMm')).toBe('141.73 in · 212.6 in');
    const takes = (name: string) => plain(takesText(setting(name), reader));
    expect(takes('cure.datumC')).toBe('a number from −4 °F to 59 °F');
    expect(takes('cure.readyAt')).toBe('a number from 0.5 to 0.99');
  });

  it('is told of limits in them where something is wrong', () => {
    const found = inReadersUnits(problemOf('cure.datumC', 30), 'tempC', 'us');
    expect(found?.errors?.map(({ detailSaid }) => detailSaid && reader.say(detailSaid))).toEqual([
      'must be at most 59',
    ]);
    expect(found?.detailSaid && reader.say(found.detailSaid)).toBe(
      'In the body: /settings/cure.datumC: must be at most 59.',
    );
    // A number of lines is no temperature.
    const many = inReadersUnits(
      problemOf('trade.stockLengthsMm', Array(13).fill(1)),
      ...(['lengthMm', 'us'] as const),
    );
    expect(many?.errors?.[0]?.detailSaid).toMatchObject({ values: { maximum: 12 } });
  });
});

/** What the daemon answers to a value that does not fit. */
function problemOf(name: string, value: number | number[]): Problem {
  try {
    chosenAfter(
      { settings: { [name]: value } },
      { entries: [], holding: new Map(), tree: {}, given: new Map(), at: '', by: null },
    );
  } catch (cause) {
    if (!(cause instanceof BoardcureError) || cause.said === null) throw cause;
    return {
      ...{ type: '', title: '', status: 400, code: cause.code, doThis: '' },
      ...{ detail: cause.message, detailSaid: cause.said, errors: [...cause.faults] },
    };
  }
  throw new Error(`${name} should have been refused`);
}
