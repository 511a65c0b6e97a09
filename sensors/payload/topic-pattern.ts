import { mqttChannels } from '../../daemon/contract/mqtt-channel.ts';
import type { Said } from '../../daemon/contract/sentence.ts';
import { sentence } from '../../daemon/wording/english.ts';

/** One level of a pattern. */
export type PatternLevel =
  | { readonly kind: 'word'; readonly text: string }
  | { readonly kind: 'any' }
  | { readonly kind: 'rest' }
  | {
      readonly kind: 'part';
      readonly name: string;
      readonly before: string;
      readonly after: string;
    };

export type TopicPattern = {
  readonly text: string;
  readonly levels: readonly PatternLevel[];
  /** What to subscribe to. */
  readonly filter: string;
  readonly parts: readonly string[];
};

/** What the named parts of a pattern stand for in one topic. */
export type TopicParts = ReadonlyMap<string, string>;

/** Assumption: deeper than any layout. */
const mostLevels = 20;
export const longestPattern = 256;
const partLevel = /^([^{}]*)\{([A-Za-z][A-Za-z0-9_-]{0,31})\}([^{}]*)$/;
/** Unicode’s control characters, NUL among them; [MQTT-1.5.3-2] and section 1.5.3. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const controls = /[\u0000-\u001f\u007f-\u009f]/;

/**
 * Reads a topic pattern: an MQTT topic filter in which `{name}` stands for a level, or for the
 * part of a level between fixed text, and gives it a name.
 *
 * @param site the pattern must not take what this site itself publishes
 * @returns the pattern, or all that is wrong with it, each as a sentence
 *
 * **Source:** MQTT 3.1.1 (2014), section 4.7.
 */
export function parsedPattern(text: string, site: string): TopicPattern | Said[] {
  const faults: Said[] = [];
  if (text === '') return [sentence('pattern-empty', {})];
  if (text.length > longestPattern) return [sentence('pattern-long', { letters: longestPattern })];
  if (controls.test(text)) return [sentence('pattern-controls', {})];
  if (text.startsWith('$')) {
    // [MQTT-4.7.2-1]; $share would be a subscription of another kind.
    faults.push(sentence('pattern-dollar', {}));
  }
  const words = text.split('/');
  if (words.length > mostLevels) faults.push(sentence('pattern-levels', { levels: mostLevels }));
  const parts: string[] = [];
  const levels = words.map((word, index): PatternLevel => {
    // [MQTT-4.7.1-2]
    if (word === '#') {
      if (index < words.length - 1) {
        faults.push(sentence('pattern-rest', {}));
      }
      return { kind: 'rest' };
    }
    if (word === '+') return { kind: 'any' };
    if (/[+#]/.test(word)) {
      // [MQTT-4.7.1-3]
      faults.push(sentence('pattern-sign', { word }));
    }
    if (!/[{}]/.test(word)) return { kind: 'word', text: word };
    const named = partLevel.exec(word);
    if (named?.[2] === undefined) {
      faults.push(sentence('pattern-level', { word }));
      return { kind: 'any' };
    }
    const [, before = '', name, after = ''] = named;
    if (parts.includes(name)) faults.push(sentence('pattern-part-twice', { word: `{${name}}` }));
    parts.push(name);
    return { kind: 'part', name, before, after };
  });
  const pattern = { text, levels, filter: levels.map(filterWord).join('/'), parts };
  const own = ownTopics(site).find((filter) => overlap(filterLevels(pattern.filter), filter));
  if (own !== undefined) {
    faults.push(sentence('pattern-own', { topic: own.join('/') }));
  }
  return faults.length > 0 ? faults : pattern;
}

const filterWord = (level: PatternLevel): string =>
  level.kind === 'word' ? level.text : level.kind === 'rest' ? '#' : '+';

/** What the site publishes or reads by itself, as topic filters. */
function ownTopics(site: string): string[][] {
  const own = Object.values(mqttChannels).map(({ topic }) =>
    topic.replace('{site}', site).replaceAll(/\{[^}]*\}/g, '+'),
  );
  const all = ['sensor/#', 'daemon/#', 'forecast/#'].map((rest) => `boardcure/${site}/${rest}`);
  return [...all, ...own].map(filterLevels);
}

const filterLevels = (filter: string): string[] => filter.split('/');

/** Whether some topic fits both filters. */
function overlap(a: readonly string[], b: readonly string[]): boolean {
  for (let i = 0; ; i++) {
    // A trailing # also stands for nothing at all; section 4.7.1.2.
    if (a[i] === '#' || b[i] === '#') return true;
    if (i >= a.length || i >= b.length) return restIsEmpty(a, b, i);
    if (a[i] !== b[i] && a[i] !== '+' && b[i] !== '+') return false;
  }
}

const restIsEmpty = (a: readonly string[], b: readonly string[], at: number): boolean =>
  at >= a.length && at >= b.length;

/** Whether every topic that fits `inner` fits `outer` too. */
export function covers(outer: TopicPattern, inner: TopicPattern): boolean {
  const [a, b] = [outer.levels, inner.levels];
  for (let i = 0; ; i++) {
    const [one, other] = [a[i], b[i]];
    if (one?.kind === 'rest') return i <= b.length;
    if (one === undefined || other === undefined) return one === other;
    if (other.kind === 'rest') return false;
    if (one.kind === 'any') continue;
    if (one.kind === 'word') {
      if (other.kind !== 'word' || other.text !== one.text) return false;
      continue;
    }
    const { before, after } = one;
    if (before === '' && after === '') continue;
    const isWithin =
      other.kind === 'word'
        ? partOf(one, other.text) !== null
        : other.kind === 'part' && other.before.startsWith(before) && other.after.endsWith(after);
    if (!isWithin) return false;
  }
}

/** Filters to subscribe to: those that another one already brings are left out. */
export function leastFilters(patterns: readonly TopicPattern[]): string[] {
  const filters = [...new Set(patterns.map(({ filter }) => filter))].map((filter) => ({
    filter,
    levels: filterLevels(filter),
  }));
  const within = (inner: string[], outer: string[]): boolean => {
    for (let i = 0; i < outer.length; i++) {
      if (outer[i] === '#') return i <= inner.length;
      if (i >= inner.length || inner[i] === '#') return false;
      if (outer[i] !== '+' && outer[i] !== inner[i]) return false;
    }
    return inner.length === outer.length;
  };
  return filters
    .filter(({ filter, levels }) =>
      filters.every((other) => other.filter === filter || !within(levels, other.levels)),
    )
    .map(({ filter }) => filter);
}

/**
 * Matches a topic.
 *
 * @param levels of the topic
 * @returns what the named parts stand for, or null when the topic does not fit
 */
export function matchedTopic(pattern: TopicPattern, levels: readonly string[]): TopicParts | null {
  const { levels: wanted } = pattern;
  // [MQTT-4.7.2-1]: wildcards in front do not take the broker’s own topics.
  if (levels[0]?.startsWith('$')) return null;
  let parts: Map<string, string> | null = null;
  for (let i = 0; i < wanted.length; i++) {
    const want = wanted[i] as PatternLevel;
    if (want.kind === 'rest') return parts ?? noParts;
    const level = levels[i];
    if (level === undefined) return null;
    if (want.kind === 'word') {
      if (want.text !== level) return null;
    } else if (want.kind === 'part') {
      const named = partOf(want, level);
      if (named === null) return null;
      parts ??= new Map();
      parts.set(want.name, named);
    }
  }
  return levels.length === wanted.length ? (parts ?? noParts) : null;
}

const noParts: TopicParts = new Map();

function partOf(
  { before, after }: { readonly before: string; readonly after: string },
  level: string,
): string | null {
  if (level.length <= before.length + after.length) return null;
  if (!level.startsWith(before) || !level.endsWith(after)) return null;
  return level.slice(before.length, level.length - after.length);
}
