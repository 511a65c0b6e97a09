import { z } from 'zod';
import { Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

/** The questions asked of a rack, in the order of what they need. */
export const gates = ['turn', 'stack', 'mount', 'sand', 'recoat'] as const;
export const Gate = z.enum(gates);
export type Gate = z.infer<typeof Gate>;

/** Drying stages in the order of ASTM D1640 and ISO 9117. */
export const stages = ['wet', 'set-to-touch', 'tack-free', 'dry-hard', 'dry-through'] as const;
export const Stage = z.enum(stages);
export type Stage = z.infer<typeof Stage>;

export const VerdictWord = z.enum(['wait', 'test', 'ready', 'hold']);
export type VerdictWord = z.infer<typeof VerdictWord>;

/** One reason of a verdict: a stable code, and a sentence a person at the rack understands. */
export const Reason = Sentence;
export type Reason = Sentence;

export const GateVerdict = z.object({
  verdict: VerdictWord,
  probability: z.number().min(0).max(1),
  early: Moment.nullable().describe('time by which it is reached with 10 % probability'),
  likely: Moment.nullable().describe('… with 50 % probability'),
  late: Moment.nullable().describe('… with 90 % probability'),
  requiredDegreeHours: z
    .object({ early: z.number(), likely: z.number(), late: z.number() })
    .describe('°C·h needed with 10, 50 and 90 % probability')
    .meta({ unit: '°C·h' }),
  reasons: z.array(Reason),
});
export type GateVerdict = z.infer<typeof GateVerdict>;
