import type { TopicRuleDraft } from '../../daemon/contract/topic-rule.ts';
import { ruleForm } from '../../daemon/rules/topic-rule-fact.ts';
import type { Decoded } from '../../sensors/payload/decode-message.ts';
import { ruleSet } from '../../sensors/payload/rule-set.ts';
import {
  type CompiledRule,
  compiledRule,
  type RuleFault,
} from '../../sensors/payload/topic-rule.ts';

/** A rule that makes air temperature of `/temp`, but for what is given. */
export const draft = (given: Partial<TopicRuleDraft> = {}): TopicRuleDraft => ({
  pattern: 'farm/{sensor}/data',
  sensor: '{sensor}',
  payload: 'json',
  values: [{ quantity: 'air-temperature', pointer: '/temp' }],
  ...given,
});

export function compiled(given: Partial<TopicRuleDraft> = {}): CompiledRule {
  const read = compiledRule(ruleForm(draft(given)), 'shed');
  if (read.kind === 'faults') throw new Error(JSON.stringify(read.faults));
  return read.rule;
}

export function faultsOf(given: Partial<TopicRuleDraft>): readonly RuleFault[] {
  const read = compiledRule(ruleForm(draft(given)), 'shed');
  return read.kind === 'faults' ? read.faults : [];
}

/** What a message of one rule becomes. */
export function decodedBy(
  given: Partial<TopicRuleDraft>,
  payload: string | Uint8Array,
  topic = 'farm/attic/data',
  now = 0,
): Decoded {
  const bytes = typeof payload === 'string' ? new TextEncoder().encode(payload) : payload;
  const text = typeof payload === 'string' ? payload : null;
  return ruleSet([compiled(given)]).decode(
    { topic, text, byteLength: bytes.length, bytes },
    {},
    { now },
  );
}
