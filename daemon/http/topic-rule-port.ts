import type { Discovery, RuleTrial, RuleTrialReply } from '../contract/found-topic.ts';
import type { TopicRuleDraft, TopicRuleForm } from '../contract/topic-rule.ts';
import type { HeardSensor, TopicRuleFact } from '../rules/topic-rule-fact.ts';

/** Topic rules, and topics that want one, as the API needs them. */
export interface TopicRulePort {
  /** In the order in which they are asked. */
  all(): TopicRuleFact[];
  maxRules: number;
  /** Everything that is wrong with a rule; `id` names it where it is there already. */
  faults(form: TopicRuleForm, id: string | null): readonly RuleTrialReply['faults'][number][];
  /** An earlier rule that takes every topic of this one. */
  hiddenBy(id: string): string | null;
  /* Each settles when it is on disk and in force. */
  create(rule: TopicRuleFact, heard: HeardSensor[]): Promise<void>;
  change(rule: TopicRuleFact, at: number): Promise<void>;
  remove(id: string, at: number): Promise<void>;
  discovery(): Discovery;
  /** @param before rules that are asked before the one that is tried */
  tryOut(trial: RuleTrial, before: (id: string) => boolean, id: string | null): RuleTrialReply;
  /** Sensors that a rule would make readings of, with when they were last heard. */
  sensorsOf(rule: TopicRuleDraft): ReadonlyMap<string, number>;
  /** Listens to every topic of another broker until then; null stops. */
  listenUntil(at: number | null): Promise<void>;
}
