import type { Decoded, Message } from '../../sensors/payload/decode-message.ts';
import { type RuleSet, ruleSet } from '../../sensors/payload/rule-set.ts';
import { covers } from '../../sensors/payload/topic-pattern.ts';
import {
  type CompiledRule,
  compiledRule,
  type RuleFault,
  ruleFault,
} from '../../sensors/payload/topic-rule.ts';
import type { TopicRuleForm } from '../contract/topic-rule.ts';
import type { TopicRuleFact } from '../rules/topic-rule-fact.ts';
import { sentence } from '../wording/english.ts';

/** A rule in force. */
export type RuleInForce = CompiledRule & { readonly id: string };

export interface TopicRulesParts {
  site: string;
  maxBytes: number;
  /** Told what to listen to at another broker, after the rules have changed. */
  listenTo: (filters: readonly string[]) => void;
  /** Told of a rule that was kept but cannot be used any more. */
  unusable: (id: string, faults: readonly RuleFault[]) => void;
}

/** The topic rules in force. */
export function topicRules({ site, maxBytes, listenTo, unusable }: TopicRulesParts) {
  let set: RuleSet<RuleInForce> = ruleSet<RuleInForce>([]);
  return {
    /** Takes these rules into force, in their order, in place of those before. */
    replace(facts: readonly TopicRuleFact[]): void {
      const rules = facts.flatMap(({ id, form }) => {
        const compiled = compiledRule(form, site);
        if (compiled.kind === 'rule') return [{ ...compiled.rule, id }];
        unusable(id, compiled.faults);
        return [];
      });
      set = ruleSet(rules);
      listenTo(set.filters);
    },
    filters: (): readonly string[] => set.filters,
    /** Whether a rule takes a topic. */
    takes: (topic: string): boolean => set.find(topic) !== null,
    /** The rule that takes a topic; null when none does. */
    ruleOf: (topic: string): string | null => set.find(topic)?.rule.id ?? null,
    decode: (message: Message, at: number): Decoded =>
      set.decode(message, { maxBytes }, { now: at }),
    /** An earlier rule that takes every topic of this one; null when it gets some. */
    hiddenBy(id: string): string | null {
      const index = set.rules.findIndex((rule) => rule.id === id);
      const own = set.rules[index];
      if (own === undefined) return null;
      const outer = set.rules.slice(0, index).find((rule) => covers(rule.pattern, own.pattern));
      return outer?.id ?? null;
    },
    /**
     * Everything that is wrong with a rule that is to be kept.
     *
     * @param id of the rule when it is one that is there
     */
    faults(form: TopicRuleForm, id: string | null): readonly RuleFault[] {
      const compiled = compiledRule(form, site);
      if (compiled.kind === 'faults') return compiled.faults;
      const { pattern } = compiled.rule;
      const twin = set.rules.find(
        (rule) => rule.id !== id && covers(rule.pattern, pattern) && covers(pattern, rule.pattern),
      );
      if (twin === undefined) return [];
      return [ruleFault('/pattern', sentence('rule-twin', { pattern: twin.pattern.text }))];
    },
    /** The rules as they would be with a draft in its place, for a try-out; null when it is faulty. */
    withDraft(
      form: TopicRuleForm,
      before: (id: string) => boolean,
    ): { set: RuleSet<RuleInForce>; isDraft: (rule: RuleInForce) => boolean } | null {
      const compiled = compiledRule(form, site);
      if (compiled.kind === 'faults') return null;
      const draft: RuleInForce = { ...compiled.rule, id: '' };
      const rules = [...set.rules.filter((rule) => before(rule.id)), draft];
      return { set: ruleSet(rules), isDraft: (rule) => rule === draft };
    },
  };
}
export type TopicRules = ReturnType<typeof topicRules>;
