import { z } from 'zod';
import { RemarkKind } from './batch.ts';
import { Gate } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { Quantity } from './quantity.ts';

export const recordKinds = [
  'batch',
  'coat',
  'test',
  'move',
  'remark',
  'hand-reading',
  'photo',
  'split',
  'merge',
] as const;
export const RecordKind = z.enum(recordKinds);
export type RecordKind = z.infer<typeof RecordKind>;

/** One thing that somebody recorded, of any batch; what does not belong to its kind is null. */
export const SiteRecord = z.object({
  id: Id,
  kind: RecordKind,
  at: Moment,
  batchId: Id.nullable().describe('null for the figures of a place'),
  batchName: z.string().nullable(),
  batchClosed: z.boolean(),
  placeId: Id.nullable().describe('where it was moved, begun or measured'),
  placeName: z.string().nullable(),
  coat: z.int().nullable().describe('index of the coat'),
  coatName: z.string().nullable(),
  usedL: z.number().nullable().meta({ unit: 'L' }),
  colour: z.string().nullable(),
  tin: z.string().nullable(),
  gate: Gate.nullable().describe('what was felt for'),
  passed: z.boolean().nullable(),
  remark: RemarkKind.nullable(),
  automatic: z.boolean().describe('true where the house itself marked it'),
  text: z.string().nullable(),
  quantity: Quantity.nullable(),
  values: z.array(z.number()).describe('figures of a hand meter, in the unit of the quantity'),
  boards: z.int().nullable().describe('of a batch, split off or put together'),
  otherBatchId: Id.nullable().describe('what was split off, or put to it'),
  otherBatchName: z.string().nullable(),
  address: z.string().nullable().describe('where the picture of a photo is served'),
});
export type SiteRecord = z.infer<typeof SiteRecord>;

/** Filters and order, the same for the list and for its CSV file. */
const asked = {
  q: z.string().trim().max(200).optional().describe('words that all must stand in the record'),
  kind: z
    .string()
    .max(200)
    .transform((text) => text.split(',').filter((one) => one !== ''))
    .pipe(z.array(RecordKind))
    .optional()
    .describe('kinds of records with commas between them; all when left out'),
  batch: Id.optional(),
  place: Id.optional(),
  from: Moment.optional(),
  to: Moment.optional().describe('up to but not with it'),
  closed: z.enum(['with', 'without', 'only']).default('with').describe('records of closed batches'),
  sort: z.enum(['at', 'batch', 'kind', 'place']).default('at'),
  order: z.enum(['up', 'down']).default('down'),
};
export const RecordFilter = z.strictObject(asked);
export type RecordFilter = z.output<typeof RecordFilter>;

export const RecordQuery = z.strictObject({
  ...asked,
  offset: z.coerce.number().int().min(0).default(0),
  limit: z.coerce.number().int().min(1).max(500).default(50),
});
export type RecordQuery = z.output<typeof RecordQuery>;

export const RecordPage = z.object({
  total: z.int().describe('records that fit what was asked, on all pages together'),
  offset: z.int(),
  records: z.array(SiteRecord),
});
export type RecordPage = z.infer<typeof RecordPage>;
