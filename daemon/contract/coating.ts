import { z } from 'zod';
import { Coat } from './coat.ts';
import { Id, Moment } from './moment.ts';
import { Face } from './plan.ts';
import { Sentence } from './sentence.ts';

/** The steps of a coat in the order they are done. */
export const coatingSteps = ['edges', 'back', 'face', 'ends', 'ends-again', 'rags'] as const;
export const CoatingStep = z.enum(coatingSteps);
export type CoatingStep = z.infer<typeof CoatingStep>;

export const NewCoating = z.strictObject({
  id: Id.optional(),
  coat: z.int().min(0).max(9).describe('index in the coating plan, from 0'),
  begunAt: Moment,
  tinId: Id.nullable().optional(),
});
export type NewCoating = z.infer<typeof NewCoating>;

export const CoatingTick = z.strictObject({
  step: CoatingStep,
  at: Moment,
  done: z.boolean().optional().describe('false takes the tick back'),
});
export type CoatingTick = z.infer<typeof CoatingTick>;

export const CoatingEnd = z.strictObject({
  coatId: Id.optional().describe('id of the coat that it becomes'),
  finishedAt: Moment.nullable().describe('the last board; null gives the coat up'),
  usedL: z.number().positive().max(10_000).nullable().optional().meta({ unit: 'L' }),
  faces: z.array(Face).min(1).nullable().optional(),
});
export type CoatingEnd = z.infer<typeof CoatingEnd>;

export const Coating = z.object({
  id: Id,
  batchId: Id,
  coat: z.int(),
  name: z.string(),
  begunAt: Moment,
  tinId: Id.nullable(),
  coatId: Id.nullable().describe('the coat it became'),
  givenUpAt: Moment.nullable(),
  steps: z.array(
    z.object({
      step: CoatingStep,
      ...Sentence.shape,
      at: Moment.nullable().describe('when it was done'),
    }),
  ),
  look: z
    .object({ fromAt: Moment, untilAt: Moment, ...Sentence.shape, answered: z.boolean() })
    .nullable()
    .describe('when to look for what still shines; null until it is finished'),
});
export type Coating = z.infer<typeof Coating>;

export const CoatingEnded = Coating.extend({ made: Coat.nullable() });
