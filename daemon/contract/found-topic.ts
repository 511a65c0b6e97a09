import { z } from 'zod';
import { Id, Moment } from './moment.ts';
import { Quantity } from './quantity.ts';
import { Sentence } from './sentence.ts';
import { TopicRuleDraft } from './topic-rule.ts';

/** What came on a topic, as it may be shown. */
export const HeardMessage = z.object({
  topic: z.string(),
  at: Moment,
  text: z.string().describe('the first bytes, printable; bytes that are no text as hexadecimal'),
  bytes: z.int(),
  retained: z.boolean().describe('the broker kept it; it may be old'),
});
export type HeardMessage = z.infer<typeof HeardMessage>;

/** A number in a message, and what it may be. */
export const FoundValue = z.object({
  pointer: z.string().describe('where it stands in JSON; empty for the whole payload'),
  name: z.string().describe('of a SenML record; empty elsewhere'),
  shown: z.string().describe('as it was sent'),
  guess: z
    .object({
      quantity: Quantity,
      unit: z.string().nullable(),
      scale: z.number(),
      value: z.number().describe('in the unit of the quantity'),
    })
    .nullable()
    .describe('null: nothing tells what it is'),
});
export type FoundValue = z.infer<typeof FoundValue>;

export const FoundTopic = z.object({
  topic: z.string(),
  count: z.int().describe('messages since it was first heard; 0 for one the broker kept'),
  firstAt: Moment,
  last: HeardMessage,
  values: z.array(FoundValue).describe('numbers in the last message, what is guessed first'),
  suggestion: TopicRuleDraft.describe('a rule for this topic with all that is guessed'),
});
export type FoundTopic = z.infer<typeof FoundTopic>;

export const Discovery = z.object({
  topics: z.array(FoundTopic).describe('that look like readings, the last heard first'),
  otherTopics: z.int().describe('heard, but without a number in them'),
  leftOut: z.int().describe('messages of topics that there was no room for'),
  listening: z.object({
    always: z.boolean().describe('true with the embedded broker, which sees every message'),
    until: Moment.nullable().describe('end of listening to everything at another broker'),
    trouble: z.string().nullable().describe('why listening did not work'),
    troubleSaid: Sentence.nullable(),
  }),
});
export type Discovery = z.infer<typeof Discovery>;

export const NewListening = z.strictObject({
  minutes: z.number().min(0).max(60).optional().describe('0 stops; 10 when left out'),
});

/** A message for a try-out that nobody sent. */
export const TriedMessage = z.strictObject({
  topic: z.string().min(1).max(256),
  payload: z.string().max(65_536).describe('as text'),
});

export const RuleTrial = z.strictObject({
  rule: TopicRuleDraft,
  id: Id.optional().describe('of the rule that it is to replace; none for a new one'),
  messages: z
    .array(TriedMessage)
    .max(20)
    .optional()
    .describe('tried instead of the last messages that came'),
});
export type RuleTrial = z.infer<typeof RuleTrial>;

export const RuleTrialReply = z.object({
  faults: z
    .array(z.object({ pointer: z.string(), detail: z.string(), detailSaid: Sentence }))
    .describe('everything that keeps the rule from being saved; pointers into the rule'),
  topics: z.int().describe('topics heard that the rule would take'),
  takenByOthers: z.int().describe('topics heard that fit, but that earlier rules take'),
  tried: z.array(
    z.object({
      message: HeardMessage,
      readings: z.array(
        z.object({
          sensor: z.string(),
          quantity: Quantity,
          value: z.number().describe('in the unit of the quantity'),
          at: Moment.nullable().describe('the time it gives itself; null for its arrival'),
        }),
      ),
      refused: z.array(z.object({ code: z.string(), detail: z.string(), detailSaid: Sentence })),
    }),
  ),
});
export type RuleTrialReply = z.infer<typeof RuleTrialReply>;
