import { describe, expect, it } from 'vitest';
import {
  covers,
  leastFilters,
  matchedTopic,
  parsedPattern,
  type TopicPattern,
} from '../../sensors/payload/topic-pattern.ts';

function pattern(text: string): TopicPattern {
  const read = parsedPattern(text, 'shed');
  if (Array.isArray(read)) throw new Error(faults(text));
  return read as TopicPattern;
}
const faults = (text: string) => {
  const read = parsedPattern(text, 'shed');
  return Array.isArray(read) ? read.map((fault) => fault.text).join(' ') : '';
};
const matches = (text: string, topic: string) =>
  matchedTopic(pattern(text), topic.split('/')) !== null;

describe('wildcards', () => {
  // MQTT 3.1.1 (2014), sections 4.7.1.2, 4.7.1.3 and 4.7.2: the examples that are not refused here
  // for another reason, with what the text says of them.
  it.each([
    ['sport/tennis/player1/#', 'sport/tennis/player1', true],
    ['sport/tennis/player1/#', 'sport/tennis/player1/ranking', true],
    ['sport/tennis/player1/#', 'sport/tennis/player1/score/wimbledon', true],
    ['sport/#', 'sport', true],
    ['sport/tennis/+', 'sport/tennis/player1', true],
    ['sport/tennis/+', 'sport/tennis/player2', true],
    ['sport/tennis/+', 'sport/tennis/player1/ranking', false],
    ['sport/+', 'sport', false],
    ['sport/+', 'sport/', true],
    ['+/+', '/finance', true],
    ['/+', '/finance', true],
    ['+', '/finance', false],
    ['+/monitor/Clients', '$SYS/monitor/Clients', false],
  ])('%s and %s: %s', (filter, topic, expected) => {
    expect(matches(filter, topic)).toBe(expected);
  });

  // The same sections name these as not valid.
  it.each(['sport/tennis#', 'sport/tennis/#/ranking', 'sport+', 'a/+b/c'])(
    '%s is refused',
    (filter) => {
      expect(faults(filter)).toMatch(/stand alone|only be the last/);
    },
  );
});

describe('named parts', () => {
  it('stand for a level, or for what lies between fixed text', () => {
    const parts = matchedTopic(pattern('farm/{room}/node-{sensor}.x/+'), [
      ...['farm', 'attic', 'node-7.x', 'any'],
    ]);
    expect([...(parts ?? [])]).toEqual([
      ['room', 'attic'],
      ['sensor', '7'],
    ]);
    expect(pattern('farm/{room}/node-{sensor}.x/+').filter).toBe('farm/+/+/+');
    expect(matches('node-{n}', 'node-')).toBe(false);
    expect(matches('node-{n}', 'other-7')).toBe(false);
  });

  it.each([
    ['', 'empty'],
    ['a/{b', 'not understood'],
    ['a/{}/c', 'not understood'],
    ['a/{b}{c}', 'not understood'],
    ['a/{b c}', 'not understood'],
    ['a/{__proto__}', 'not understood'],
    ['{a}/x/{a}', 'twice'],
    ['$SYS/broker', 'begin with $'],
    ['$share/group/a', 'begin with $'],
    ['a\u0000b', 'control'],
    ['a/'.repeat(25), 'levels'],
    ['a'.repeat(300), 'longer'],
  ])('%j is refused', (text, why) => {
    expect(faults(text)).toContain(why);
  });
});

describe('a pattern that would take what the site itself uses', () => {
  it.each([
    '#',
    '+/#',
    'boardcure/#',
    'boardcure/shed/#',
    'boardcure/+/status',
    'boardcure/shed/sensor/n1/air-temperature',
    '{a}/{b}/{c}/{d}',
    '{site}/shed/notice',
    '{a}/shed/{c}/#',
    '+/shed/digest',
  ])('%s is refused', (text) => {
    expect(faults(text)).toContain('which this site uses itself');
  });

  it.each(['{room}/{sensor}/temperature', 'farm/#', 'boardcure/barn/#', '+/+', 'shed/+/state'])(
    '%s is not',
    (text) => {
      expect(faults(text)).toBe('');
    },
  );
});

describe('patterns among each other', () => {
  it.each([
    ['farm/#', 'farm/{s}/temp', true],
    ['farm/+/temp', 'farm/{s}/temp', true],
    ['farm/{s}/temp', 'farm/+/temp', true],
    ['farm/+/temp', 'farm/attic/temp', true],
    ['farm/attic/temp', 'farm/+/temp', false],
    ['farm/n-{s}/temp', 'farm/n-7/temp', true],
    ['farm/n-{s}/temp', 'farm/n-1{s}/temp', true],
    ['farm/n-{s}/temp', 'farm/m-{s}/temp', false],
    ['farm/+', 'farm/#', false],
    ['farm/#', 'farm', true],
    ['farm/+', 'farm/a/b', false],
  ])('%s covers %s: %s', (outer, inner, expected) => {
    expect(covers(pattern(outer), pattern(inner))).toBe(expected);
  });

  it('subscribe to the fewest filters, so that no broker sends a message twice for them', () => {
    expect(
      leastFilters(
        ['farm/{a}/temp', 'farm/{b}/temp', 'farm/attic/temp', 'farm/{a}/hum', 'x/#', 'x/y'].map(
          pattern,
        ),
      ),
    ).toEqual(['farm/+/temp', 'farm/+/hum', 'x/#']);
  });
});
