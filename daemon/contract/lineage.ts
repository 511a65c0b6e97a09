import { z } from 'zod';
import { Batch } from './batch.ts';
import { Reason } from './gate.ts';
import { Id, Moment } from './moment.ts';

export const NewSplit = z.strictObject({
  id: Id.optional(),
  childId: Id.optional().describe('id of the new batch'),
  boards: z.int().min(1).max(100_000).describe('boards that go their own way'),
  at: Moment,
  name: z.string().trim().min(1).max(80).optional().describe('of the new batch'),
  placeId: Id.optional().describe(
    'where these boards went; they stay where they lie when left out',
  ),
});
export type NewSplit = z.infer<typeof NewSplit>;

export const SplitReply = z.object({
  id: Id,
  at: Moment,
  parent: Batch,
  child: Batch,
  warnings: z.array(Reason),
});
export type SplitReply = z.infer<typeof SplitReply>;

export const NewMerge = z.strictObject({
  id: Id.optional(),
  batchId: Id.describe('the batch whose boards are put to this one; it is closed by it'),
  at: Moment,
});
export type NewMerge = z.infer<typeof NewMerge>;

export const MergeReply = z.object({
  id: Id,
  at: Moment,
  batch: Batch,
  warnings: z.array(Reason),
});
export type MergeReply = z.infer<typeof MergeReply>;
