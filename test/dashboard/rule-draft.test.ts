import { describe, expect, it } from 'vitest';
import { quantities } from '../../daemon/contract/quantity.ts';
import { TopicRuleDraft } from '../../daemon/contract/topic-rule.ts';
import { chosenRule, draftOf } from '../../dashboard/topics/rule-draft.ts';
import { unitsTaken } from '../../dashboard/topics/units-taken.ts';
import { unitsOf } from '../../sensors/payload/unit.ts';

const formOf = (fields: Record<string, string>) => {
  const form = new FormData();
  for (const [name, value] of Object.entries(fields)) form.append(name, value);
  return form;
};
const json = {
  pattern: ' farm/{sensor}/up ',
  sensor: '{sensor}',
  payload: 'json',
  'quantity-3': 'air-temperature',
  'place-3': '/t',
  'unit-3': '°F',
  'scale-3': '0,1',
  'sensor-3': '',
  'quantity-7': 'battery',
  'place-7': '/b',
  'unit-7': '%',
  'scale-7': '',
  'sensor-7': 'x',
  'time-from': '/at',
  'time-format': 'iso',
};

describe('the rule that a form holds', () => {
  it('has its values in the order of the rows, without what was left empty', () => {
    const draft = draftOf(formOf(json), [7, 3]);
    expect(draft).toEqual({
      pattern: 'farm/{sensor}/up',
      sensor: '{sensor}',
      payload: 'json',
      values: [
        { quantity: 'battery', pointer: '/b', unit: '%', sensor: 'x' },
        { quantity: 'air-temperature', pointer: '/t', unit: '°F', scale: 0.1 },
      ],
      time: { from: '/at', format: 'iso' },
    });
    expect(TopicRuleDraft.parse(draft)).toEqual(draft);
  });

  it('of SenML has names and no time', () => {
    const fields = { ...json, payload: 'senml', 'unit-3': '', 'scale-3': '' };
    expect(draftOf(formOf(fields), [3])).toEqual({
      pattern: 'farm/{sensor}/up',
      sensor: '{sensor}',
      payload: 'senml',
      values: [{ quantity: 'air-temperature', name: '/t' }],
    });
  });
});

describe('what was chosen in place of a guess', () => {
  it('keeps the rest of what was suggested', () => {
    const suggestion = { pattern: 'a', sensor: 'b', payload: 'json' as const, values: [] };
    const value = { quantity: 'battery' as const, pointer: '/b', name: '', unit: null, scale: 1 };
    expect(chosenRule(suggestion, [value])).toEqual({
      ...suggestion,
      values: [{ quantity: 'battery', pointer: '/b' }],
    });
    const scaled = { ...value, unit: 'fraction', scale: 0.1 };
    expect(chosenRule(suggestion, [scaled]).values).toEqual([
      { quantity: 'battery', pointer: '/b', unit: 'fraction', scale: 0.1 },
    ]);
  });
});

describe('the units to choose from', () => {
  it.each(quantities)('of %s are those that the daemon knows', (quantity) => {
    expect(unitsTaken[quantity]).toEqual(unitsOf(quantity));
  });
});
