import { toMoment } from '../contract/moment.ts';
import type {
  NewTopicRule,
  TopicRule,
  TopicRuleChange,
  TopicRuleForm,
} from '../contract/topic-rule.ts';

/** A rule as it stands now. */
export interface TopicRuleFact {
  id: string;
  order: number;
  form: TopicRuleForm;
  /** UTC epoch ms; when it was last changed. */
  changedAt: number;
  createdAt: number;
}

/** A sensor that is to hang somewhere from its first reading on; UTC epoch ms when it was heard. */
export interface HeardSensor {
  id: string;
  placeId: string;
  heardAt: number;
}

/** A draft with nothing left out. */
export function ruleForm(draft: Omit<NewTopicRule, 'id' | 'placeId' | 'order'>): TopicRuleForm {
  return {
    pattern: draft.pattern,
    sensor: draft.sensor,
    payload: draft.payload,
    values: draft.values.map((value) => ({
      quantity: value.quantity,
      pointer: value.pointer ?? '',
      name: value.name ?? '',
      unit: value.unit ?? null,
      scale: value.scale ?? 1,
      sensor: value.sensor ?? null,
    })),
    time: draft.time ?? null,
  };
}

/** The form of a rule after a change; what the change does not name stays. */
export function changedForm(form: TopicRuleForm, change: TopicRuleChange): TopicRuleForm {
  const { order: _, ...fields } = change;
  const given = Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  );
  return ruleForm({ ...form, ...given });
}

export const topicRuleReply = (
  { form, createdAt, changedAt, ...rest }: TopicRuleFact,
  hiddenBy: string | null,
): TopicRule => ({
  ...rest,
  ...form,
  createdAt: toMoment(createdAt),
  changedAt: toMoment(changedAt),
  hiddenBy,
});
