import { decodeByRule } from './decode-by-rule.ts';
import { type Decoded, defaultMaxBytes, type Message } from './decode-message.ts';
import { leastFilters, matchedTopic, type TopicParts } from './topic-pattern.ts';
import type { CompiledRule } from './topic-rule.ts';

export type Taken<Rule extends CompiledRule> = {
  readonly rule: Rule;
  readonly parts: TopicParts;
};

/** Topics whose rule is remembered; then it starts anew, so that a flood of names fills nothing. */
const mostRemembered = 2000;
/** A longer topic is looked up every time. */
const longestRemembered = 256;

/**
 * Rules in their order: the first whose pattern fits takes a message.
 */
export function ruleSet<Rule extends CompiledRule>(rules: readonly Rule[]) {
  const remembered = new Map<string, Taken<Rule> | null>();

  function look(topic: string): Taken<Rule> | null {
    const levels = topic.split('/');
    for (const rule of rules) {
      const parts = matchedTopic(rule.pattern, levels);
      if (parts !== null) return { rule, parts };
    }
    return null;
  }

  /** The rule that takes a topic; null when none does. */
  function find(topic: string): Taken<Rule> | null {
    if (rules.length === 0) return null;
    const known = remembered.get(topic);
    if (known !== undefined) return known;
    const taken = look(topic);
    if (topic.length <= longestRemembered) {
      if (remembered.size >= mostRemembered) remembered.clear();
      remembered.set(topic, taken);
    }
    return taken;
  }

  return {
    rules,
    find,
    /** What to subscribe to at another broker. */
    filters: leastFilters(rules.map(({ pattern }) => pattern)),
    /**
     * Turns a message into measurements by the first rule that fits. Never throws.
     *
     * @param maxBytes 65,536 by default
     * @param clock `now` epoch ms, the arrival
     */
    decode(
      message: Message,
      { maxBytes = defaultMaxBytes }: { readonly maxBytes?: number },
      clock: { readonly now: number },
    ): Decoded {
      const taken = find(message.topic);
      return taken === null
        ? { kind: 'not-ours' }
        : decodeByRule(message, taken.rule, taken.parts, maxBytes, clock.now);
    },
  };
}
export type RuleSet<Rule extends CompiledRule> = ReturnType<typeof ruleSet<Rule>>;
