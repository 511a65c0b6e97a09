import { z } from 'zod';
import { Moment } from './moment.ts';
import { Quantity } from './quantity.ts';
import { Sentence } from './sentence.ts';

/** What can be found wrong with a sensor from its readings alone. */
export const faultKinds = [
  'silent',
  'stuck',
  'jumps',
  'out-of-physics',
  'drift',
  'pinned-humidity',
  'swapped-places',
  'low-battery',
  'time-wrong',
] as const;
export const FaultKind = z.enum(faultKinds);
export type FaultKind = z.infer<typeof FaultKind>;

/** What a fault does to verdicts. */
export const FaultEffect = z
  .enum(['not-counted', 'humidity-not-counted', 'none'])
  .describe('not-counted: from since on, its readings of the quantity stop counting');
export type FaultEffect = z.infer<typeof FaultEffect>;

export const SensorFault = z.object({
  kind: FaultKind,
  name: z.string().describe('the fault in two or three words'),
  nameSaid: Sentence,
  quantity: Quantity.nullable().describe('null: all that the sensor sends'),
  since: Moment,
  until: Moment.nullable().describe('null while it lasts'),
  says: z.string().describe('what was seen'),
  saysSaid: Sentence,
  explanation: z.string().describe('what it means, and what to do'),
  explanationSaid: Sentence,
  effect: FaultEffect,
});
export type SensorFault = z.infer<typeof SensorFault>;
