import type { FoundValue } from '../../daemon/contract/found-topic.ts';
import type { TopicRuleDraft } from '../../daemon/contract/topic-rule.ts';
import type { Message } from './decode-message.ts';
import { foundNumbers } from './found-numbers.ts';
import { guessed, quantityNamed, wordsOf } from './guess-quantity.ts';
import { isJsonObject, type JsonObject, member } from './json.ts';
import { pointerText } from './json-pointer.ts';
import { timeByRule } from './rule-time.ts';

export type Suggestion = {
  readonly values: readonly FoundValue[];
  readonly draft: TopicRuleDraft;
};

/** Levels and keys that say nothing about which sensor it is. */
const emptyWords = new Set(
  'boardcure sensor sensors data state status value values telemetry tele measurement measurements reading readings json up event events get out'.split(
    ' ',
  ),
);
/** A key of these names holds what the topic speaks of. */
const plainKeys = new Set(['value', 'val', 'v', 'state', 'reading', 'data']);
const timeKeys = ['time', 'timestamp', 'ts', 'datetime', 'date', 'at', 't'];
/** A time that far from the arrival is no time, ms: a day. Assumption. */
const likelyWithinMs = 86_400_000;

/**
 * Suggests a rule for a topic that nothing is known of: what the numbers in its message may be, and
 * how the sensor may be called.
 *
 * @param at arrival, epoch ms
 * @returns null when the message holds no number
 */
export function suggestedRule(message: Message, maxBytes: number, at: number): Suggestion | null {
  const found = foundNumbers(message, maxBytes);
  if (found === null) return null;
  const levels = message.topic.split('/');
  const topicNames = [...levels].reverse();
  const values = found.numbers.map((one): FoundValue => {
    const key = one.names[0] ?? '';
    const speaksOfTopic = found.numbers.length === 1 || plainKeys.has(key.toLowerCase());
    const names = [...one.names, ...(speaksOfTopic ? topicNames : [])];
    return {
      pointer: one.pointer,
      name: one.name,
      shown: one.shown,
      guess: guessed(names, one.number, one.unit),
    };
  });
  // What is guessed comes first, in the order of the message otherwise.
  values.sort((a, b) => Number(a.guess === null) - Number(b.guess === null));
  const used = new Set<string>();
  const guesses = values.flatMap((value) => {
    if (value.guess === null || used.has(value.guess.quantity)) return [];
    used.add(value.guess.quantity);
    const { quantity, unit, scale } = value.guess;
    return [
      found.payload === 'senml'
        ? { quantity, name: value.name }
        : {
            quantity,
            ...(value.pointer === '' ? {} : { pointer: value.pointer }),
            ...(unit === null ? {} : { unit }),
            ...(scale === 1 ? {} : { scale }),
          },
    ];
  });
  const time = found.payload === 'json' ? suggestedTime(found.json, at) : null;
  return {
    values,
    draft: {
      pattern: levels.map((level) => (/[{}+#]/.test(level) ? '+' : level)).join('/'),
      sensor: suggestedId(levels),
      payload: found.payload,
      values: guesses,
      ...(time === null ? {} : { time }),
    },
  };
}

/** Text that a sensor can be called, made of the levels of its topic that tell which one it is. */
function suggestedId(levels: readonly string[]): string {
  const telling = levels.filter((level) => {
    const words = wordsOf(level);
    const isQuantity = quantityNamed(level) !== null && words.length <= 2 && !/\d$/.test(level);
    return !isQuantity && !words.every((word) => emptyWords.has(word));
  });
  const id = (telling.length > 0 ? telling : levels)
    .map((level) => level.replaceAll(/[^A-Za-z0-9._]+/g, '-').replaceAll(/^-+|-+$/g, ''))
    .filter((level) => level !== '')
    .join('-')
    .slice(0, 64);
  return /[A-Za-z0-9]/.test(id) ? id : 'sensor';
}

function suggestedTime(json: unknown, at: number): TopicRuleDraft['time'] | null {
  if (!isJsonObject(json)) return null;
  const places: { pointer: string[]; inside: JsonObject }[] = [{ pointer: [], inside: json }];
  for (const [key, inner] of Object.entries(json).slice(0, 40)) {
    if (isJsonObject(inner)) places.push({ pointer: [key], inside: inner });
  }
  for (const { pointer, inside } of places) {
    for (const [key] of Object.entries(inside).slice(0, 40)) {
      if (!timeKeys.includes(key.toLowerCase())) continue;
      const read = timeByRule(member(inside, key), 'any', at);
      if (read.kind === 'refused' || read.time.ownAt === null) continue;
      if (Math.abs(read.time.ownAt - at) > likelyWithinMs) continue;
      return { from: pointerText([...pointer, key]), format: 'any' };
    }
  }
  return null;
}
