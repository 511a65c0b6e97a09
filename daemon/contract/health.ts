import { z } from 'zod';
import { Moment } from './moment.ts';

export const Health = z.object({
  status: z.enum(['ok', 'degraded']),
  now: Moment,
  reasons: z.array(z.string()),
  broker: z.enum(['embedded', 'external']),
  intake: z.object({
    accepted: z.int(),
    duplicates: z.int(),
    refused: z.int(),
    dropped: z.int(),
    flagged: z.int(),
  }),
});
export type Health = z.infer<typeof Health>;

export const Refused = z.object({
  at: Moment,
  topic: z.string(),
  code: z.string(),
  detail: z.string(),
  payloadStart: z.string().describe('the first bytes of the message as text'),
  payloadBytes: z.int(),
});
export type Refused = z.infer<typeof Refused>;
