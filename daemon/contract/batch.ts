import { z } from 'zod';
import { Coat, TouchTest } from './coat.ts';
import { Reason } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { Mounting } from './mounting.ts';
import { Plan, Surface } from './plan.ts';
import { Quantity } from './quantity.ts';
import { Sentence } from './sentence.ts';
import { Timber, timberFields } from './timber.ts';
import { BoardsProbed } from './wood-probe.ts';

export const Species = z
  .enum(['scots-pine', 'norway-spruce', 'douglas-fir', 'larch', 'other'])
  .describe('species of the timber');
export type Species = z.infer<typeof Species>;

export const Boards = z.strictObject({
  count: z.int().min(1).max(100_000),
  lengthMm: z.number().min(1).max(20_000).meta({ unit: 'mm' }),
  widthMm: z.number().min(1).max(2_000).meta({ unit: 'mm' }),
  thicknessMm: z.number().min(0.1).max(500).meta({ unit: 'mm' }),
});
export type Boards = z.infer<typeof Boards>;

export const NewBatch = z.strictObject({
  id: Id.optional(),
  name: z.string().trim().min(1).max(80),
  placeId: Id.describe('where it lies; holds from ever until a move'),
  species: Species,
  surface: Surface,
  boards: Boards,
  planId: Id.optional().describe('the default plan of the surface when left out'),
  ...timberFields,
});
export type NewBatch = z.infer<typeof NewBatch>;

export const BatchChange = z.strictObject({
  name: z.string().trim().min(1).max(80).optional(),
  closed: z.boolean().optional().describe('true when the job is done: it leaves the wall page'),
  planId: Id.optional().describe(
    'another plan, or a later version of its own, for what is to come',
  ),
  ...timberFields,
});
export type BatchChange = z.infer<typeof BatchChange>;

export const NewMove = z.strictObject({ id: Id.optional(), at: Moment, placeId: Id });
export type NewMove = z.infer<typeof NewMove>;

export const Move = z.object({
  id: Id,
  placeId: Id,
  at: Moment.nullable().describe('null: from ever'),
  mounting: Mounting.nullable().describe('what is done when boards go up; null but on a wall'),
});
export type Move = z.infer<typeof Move>;

/** A recorded move, with what is amiss about it. */
export const Moved = Move.extend({ warnings: z.array(Reason) });
export type Moved = z.infer<typeof Moved>;

export const remarkKinds = [
  'got-wet',
  'wrinkled',
  'runs',
  'dull',
  'glossy',
  'sunk-in',
  'still-standing',
  'clogged',
  'wiped-off',
  'dew-night',
  'bleached',
  'looked-fine',
  'sanded',
  'other',
] as const;
export const RemarkKind = z.enum(remarkKinds);
export type RemarkKind = z.infer<typeof RemarkKind>;

export const NewRemark = z.strictObject({
  id: Id.optional(),
  at: Moment,
  kind: RemarkKind,
  text: z.string().trim().max(2000).nullable().optional(),
});
export type NewRemark = z.infer<typeof NewRemark>;

export const Remark = z.object({
  id: Id,
  at: Moment,
  kind: RemarkKind,
  text: z.string().nullable(),
  textSaid: Sentence.nullable().describe('where nobody typed the text'),
  automatic: z.boolean().describe('true where the house itself marked it'),
  cure: z.array(z.string()).describe('what is usually done about it, one step a line'),
  cureSaid: z.array(Sentence),
});
export type Remark = z.infer<typeof Remark>;

export const NewHandReading = z
  .strictObject({
    id: Id.optional(),
    placeId: Id.optional(),
    batchId: Id.optional(),
    quantity: Quantity,
    values: z.array(z.number()).min(1).max(100),
    at: Moment,
  })
  .refine((given) => (given.placeId === undefined) !== (given.batchId === undefined), {
    message: 'give either placeId or batchId, not both and not neither',
    params: { fault: 'place-or-batch' },
    path: ['placeId'],
  });
export type NewHandReading = z.infer<typeof NewHandReading>;

export const HandReading = z.object({
  id: Id,
  placeId: Id.nullable(),
  batchId: Id.nullable(),
  quantity: Quantity,
  values: z.array(z.number()),
  at: Moment,
});
export type HandReading = z.infer<typeof HandReading>;

/** Where a batch is believed to lie. */
export const Lies = z.object({
  placeId: Id,
  placeName: z.string(),
  since: Moment.nullable().describe('null: since it was begun'),
});
export type Lies = z.infer<typeof Lies>;

export const BatchSummary = z.object({
  id: Id,
  name: z.string(),
  placeId: Id,
  species: Species,
  surface: Surface,
  boards: Boards.describe('as many as there are now'),
  planId: Id,
  closed: z.boolean(),
  createdAt: Moment,
  timber: Timber,
  lies: Lies,
  splitFrom: z
    .object({ batchId: Id, at: Moment })
    .nullable()
    .describe('the batch that these boards were a part of until then'),
  mergedInto: z
    .object({ batchId: Id, at: Moment })
    .nullable()
    .describe('the batch that these boards were put to then'),
});
export type BatchSummary = z.infer<typeof BatchSummary>;

export const Batch = BatchSummary.extend({
  plan: Plan,
  coats: z.array(Coat),
  moves: z.array(Move),
  tests: z.array(TouchTest),
  remarks: z.array(Remark),
  handReadings: z.array(HandReading),
  splits: z.array(z.object({ childId: Id, boards: z.int(), at: Moment })),
  merges: z.array(z.object({ batchId: Id, boards: z.int(), at: Moment })),
  cautions: z.array(Reason).describe('about the timber and where it lies'),
  wood: BoardsProbed.nullable().describe('what pins in the boards tell; null without pins there'),
  recomputing: z.boolean().describe('true while late readings are still being worked in'),
});
export type Batch = z.infer<typeof Batch>;
