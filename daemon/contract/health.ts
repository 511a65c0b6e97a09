import { z } from 'zod';
import { Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

export const Health = z.object({
  status: z.enum(['ok', 'degraded']),
  now: Moment,
  reasons: z.array(z.string()),
  reasonsSaid: z.array(Sentence),
  restartFor: z
    .array(z.string())
    .optional()
    .describe('settings that were changed and hold only from the next start on'),
  broker: z.enum(['embedded', 'external']),
  intake: z.object({
    accepted: z.int(),
    duplicates: z.int(),
    refused: z.int(),
    dropped: z.int(),
    flagged: z.int(),
    refusing: z
      .boolean()
      .describe('true while the disk is full and nothing is acknowledged; it ends by itself'),
  }),
  clients: z
    .object({
      connections: z.int().describe('open just now'),
      bestEffort: z.int().describe('messages at QoS 0: nobody sends them again'),
      refused: z.int().describe('connections that were not let in: no name, or a wrong password'),
      notAllowed: z.int().describe('messages and subscriptions that were not allowed'),
      retainDropped: z.int().describe('messages that were to be kept and were passed on only'),
      cutOff: z
        .record(z.string(), z.int())
        .describe('connections that were ended or refused, by reason'),
    })
    .nullable()
    .describe('of the embedded broker, since the start; null with another one'),
});
export type Health = z.infer<typeof Health>;

export const Refused = z.object({
  at: Moment,
  topic: z.string(),
  code: z.string(),
  detail: z.string(),
  detailSaid: Sentence.optional(),
  payloadStart: z.string().describe('the first bytes of the message as text'),
  payloadBytes: z.int(),
});
export type Refused = z.infer<typeof Refused>;
