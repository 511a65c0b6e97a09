import { z } from 'zod';
import { Reason } from './gate.ts';
import { Id, Moment } from './moment.ts';

const number = (schema: z.ZodNumber) =>
  z.preprocess(
    (given) => (typeof given === 'string' && given !== '' ? Number(given) : given),
    schema,
  );

/** What one asks beside what is recorded: when would so many more boards be done? */
export const PlanAheadQuery = z.strictObject({
  boards: number(z.int().min(1).max(100_000)).optional().describe('further boards, not begun'),
  lengthMm: number(z.number().min(1).max(20_000)).optional().meta({ unit: 'mm' }),
  widthMm: number(z.number().min(1).max(2_000)).optional().meta({ unit: 'mm' }),
  thicknessMm: number(z.number().min(0.1).max(500)).optional().meta({ unit: 'mm' }),
  planId: Id.optional().describe('that of the newest batch when left out, as are the sizes'),
});
export type PlanAheadQuery = z.infer<typeof PlanAheadQuery>;

export const SpreadMoment = z.object({
  early: Moment.nullable().describe('10 % of futures are earlier; null: not within the calendar'),
  likely: Moment.nullable().describe('half of them'),
  late: Moment.nullable().describe('90 % of them'),
});
export type SpreadMoment = z.infer<typeof SpreadMoment>;

export const AheadStep = z.object({
  kind: z.enum(['coat', 'mount']),
  coat: z.int().describe('index of the coat; of the one that has cured, for mounting'),
  name: z.string(),
  placeId: Id.describe('where the boards are after it'),
  begins: SpreadMoment,
  cured: SpreadMoment.nullable().describe('when the next step can be; null where nothing cures'),
});
export type AheadStep = z.infer<typeof AheadStep>;

export const AheadBatch = z.object({
  batchId: Id.nullable().describe('null: the boards that were asked about'),
  name: z.string(),
  boards: z.int(),
  lot: z.int().describe('which part of a batch that is larger than the racks, from 0'),
  lots: z.int(),
  steps: z.array(AheadStep),
  done: SpreadMoment,
});
export type AheadBatch = z.infer<typeof AheadBatch>;

export const LastStartReply = z.object({
  batchId: Id.nullable(),
  coat: z.int(),
  name: z.string(),
  placeId: Id,
  answer: z.enum(['by', 'not-this-year', 'no-limit', 'cannot-tell']),
  at: Moment.nullable().describe('the last day on which to begin it'),
  seasonEndsAt: Moment.nullable(),
});
export type LastStartReply = z.infer<typeof LastStartReply>;

export const PlanAhead = z.object({
  now: Moment,
  endsAt: Moment.describe('how far the calendar reaches'),
  batches: z.array(AheadBatch).describe('in the order in which they are served'),
  done: SpreadMoment.extend({ boards: z.int() }).nullable().describe('all of it; null: no work'),
  order: z
    .object({
      endsAt: Moment.nullable().describe('when this order is done as things are expected'),
      boundAt: Moment.nullable().describe('before which no order can be done'),
      gapDays: z.number().nullable().meta({ unit: 'd' }).describe('what is left to gain at most'),
      tried: z.int().describe('timetables that were compared'),
    })
    .nullable(),
  racks: z.object({
    capacityM: z.number().nullable().meta({ unit: 'm' }).describe('null: nobody said'),
    usedM: z.number().meta({ unit: 'm' }),
  }),
  lastStarts: z.array(LastStartReply),
  grounds: z.array(Reason).describe('what the plan rests on, and what it leaves out'),
});
export type PlanAhead = z.infer<typeof PlanAhead>;
