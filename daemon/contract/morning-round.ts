import { z } from 'zod';
import { Gate, VerdictWord } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

export const RoundQuestion = z.object({
  kind: z
    .enum(['touch', 'outcome'])
    .describe('outcome: how yesterday’s sanding went, for the moment it was sanded'),
  batchId: Id,
  batchName: z.string(),
  gate: Gate,
  at: Moment.describe('the moment an answer speaks for: now, or when it was sanded'),
  placeId: Id,
  placeName: z.string(),
  since: Moment.nullable().describe('since when the boards are believed there; null: from ever'),
  verdict: VerdictWord,
  probability: z.number().min(0).max(1),
  worthHours: z
    .number()
    .meta({ unit: 'h' })
    .describe('hours that the answer is expected to save; by this the rack was chosen'),
  where: z.array(z.string()).describe('where to put the thumb, the offcut first'),
  whereSaid: z.array(Sentence),
  feel: z.string().describe('what to do and what it should feel like'),
  feelSaid: Sentence,
  ifPassed: z.string().describe('what an answer changes'),
  ifPassedSaid: Sentence,
  ifFailed: z.string(),
  ifFailedSaid: Sentence,
});
export type RoundQuestion = z.infer<typeof RoundQuestion>;

export const MorningRound = z.object({
  day: z.iso.date().describe('day at the site'),
  answered: z.boolean().describe('true once a test was recorded today: no more is asked'),
  question: RoundQuestion.nullable().describe('null when no answer would change anything'),
});
export type MorningRound = z.infer<typeof MorningRound>;
