import { z } from 'zod';
import { Gate, Reason } from './gate.ts';
import { Id } from './moment.ts';
import { Sentence } from './sentence.ts';

export const Help = z.object({
  kind: z.enum(['changed-air', 'drier', 'warmer', 'warmer-later', 'touch', 'only-time']),
  ...Sentence.shape,
  gainHours: z
    .number()
    .nullable()
    .meta({ unit: 'h' })
    .describe('how much sooner it is likely to be possible; null where nobody can say'),
});
export type Help = z.infer<typeof Help>;

export const WhatHelpsReply = z.object({
  batchId: Id,
  coatId: Id.nullable().describe('the coat that cures; null before the first'),
  gate: Gate.nullable().describe('the job it waits for; null when none is left'),
  holdsBack: z.array(Reason),
  helps: z.array(Help).describe('the most helpful first; empty when nothing holds it back'),
});
export type WhatHelpsReply = z.infer<typeof WhatHelpsReply>;
