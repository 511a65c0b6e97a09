import { z } from 'zod';
import { Id, Moment } from './moment.ts';
import { Quantity } from './quantity.ts';

/** What a payload looks like: a number as text, JSON of any shape, or a SenML pack (JSON or CBOR). */
export const PayloadKind = z.enum(['text', 'json', 'senml']);
export type PayloadKind = z.infer<typeof PayloadKind>;

/** How a message tells its time. `any` tells ISO 8601, epoch seconds and milliseconds apart. */
export const RuleTimeFormat = z.enum(['any', 'iso', 'epoch-s', 'epoch-ms', 'age-s', 'age-ms']);
export type RuleTimeFormat = z.infer<typeof RuleTimeFormat>;

export const RuleValue = z.strictObject({
  quantity: Quantity,
  pointer: z
    .string()
    .max(200)
    .optional()
    .describe('of JSON: RFC 6901 pointer to the number, for example /data/temp'),
  name: z
    .string()
    .max(64)
    .optional()
    .describe('of SenML: last segment of the record’s name, for example temp'),
  unit: z
    .string()
    .max(20)
    .nullable()
    .optional()
    .describe('unit of the number, for example °F; the unit of the quantity when left out'),
  scale: z
    .number()
    .optional()
    .describe('the number is multiplied by this first; 0.1 for tenths. 1 when left out'),
  sensor: z
    .string()
    .max(200)
    .nullable()
    .optional()
    .describe('another sensor than the rule’s, where one message carries several'),
});
export type RuleValue = z.infer<typeof RuleValue>;

const ruleFields = {
  pattern: z
    .string()
    .max(256)
    .describe(
      'topics the rule is for: MQTT wildcards, and named parts such as farm/{sensor}/data; the first rule that fits takes a message',
    ),
  sensor: z
    .string()
    .max(200)
    .describe(
      'how the sensor’s id is made: text, named parts and pointers, for example {sensor}, attic-{room} or node-{/id}',
    ),
  payload: PayloadKind,
  values: z.array(RuleValue).max(20),
  time: z
    .strictObject({
      from: z.string().max(200).describe('RFC 6901 pointer, or a named part such as {stamp}'),
      format: RuleTimeFormat,
    })
    .nullable()
    .optional()
    .describe('null: the message does not say, so its arrival counts'),
  order: z
    .int()
    .min(0)
    .max(1_000_000)
    .optional()
    .describe('rules are asked from the lowest on; the last when left out'),
};

export const TopicRuleDraft = z.strictObject(ruleFields);
export type TopicRuleDraft = z.infer<typeof TopicRuleDraft>;

export const NewTopicRule = z.strictObject({
  id: Id.optional(),
  ...ruleFields,
  placeId: Id.nullable()
    .optional()
    .describe('where the sensors hang that have been heard on these topics and hang nowhere yet'),
});
export type NewTopicRule = z.infer<typeof NewTopicRule>;

export const TopicRuleChange = z.strictObject(ruleFields).partial();
export type TopicRuleChange = z.infer<typeof TopicRuleChange>;

/** A rule with nothing left out. */
export const TopicRuleForm = z.object({
  pattern: z.string(),
  sensor: z.string(),
  payload: PayloadKind,
  values: z.array(
    z.object({
      quantity: Quantity,
      pointer: z.string(),
      name: z.string(),
      unit: z.string().nullable(),
      scale: z.number(),
      sensor: z.string().nullable(),
    }),
  ),
  time: z.object({ from: z.string(), format: RuleTimeFormat }).nullable(),
});
export type TopicRuleForm = z.infer<typeof TopicRuleForm>;

export const TopicRule = TopicRuleForm.extend({
  id: Id,
  order: z.int(),
  createdAt: Moment,
  changedAt: Moment,
  hiddenBy: Id.nullable().describe('an earlier rule that takes every topic of this one'),
});
export type TopicRule = z.infer<typeof TopicRule>;
