import { z } from 'zod';
import { Reason } from './gate.ts';
import { Id, Moment } from './moment.ts';

export const TinKind = z.enum(['paint', 'primer', 'oil', 'turpentine']);
export type TinKind = z.infer<typeof TinKind>;

export const Driers = z
  .enum(['as-sold', 'added', 'poor', 'unknown'])
  .describe('what is known of the driers; poor: little or lead-free with slow cure before');
export type Driers = z.infer<typeof Driers>;

const name = z.string().trim().min(1).max(80).describe('what is written on it');
const colour = z.string().trim().min(1).max(80).nullable();
const volumeL = z.number().positive().max(1000).nullable().meta({ unit: 'L' });
const openedAt = Moment.nullable().describe('null: not opened yet, or nobody knows');

export const NewTin = z.strictObject({
  id: Id.optional(),
  name,
  kind: TinKind.optional().describe('paint when left out'),
  colour: colour.optional(),
  volumeL: volumeL.optional(),
  driers: Driers.optional().describe('unknown when left out'),
  openedAt: openedAt.optional(),
});
export type NewTin = z.infer<typeof NewTin>;

export const TinChange = z.strictObject({
  name: name.optional(),
  colour: colour.optional(),
  volumeL: volumeL.optional(),
  driers: Driers.optional(),
  openedAt: openedAt.optional(),
  empty: z.boolean().optional().describe('true when nothing is left of it'),
});
export type TinChange = z.infer<typeof TinChange>;

export const Tin = z.object({
  id: Id,
  name,
  kind: TinKind,
  colour,
  volumeL,
  driers: Driers,
  openedAt,
  emptiedAt: Moment.nullable(),
  createdAt: Moment,
  usedL: z.number().meta({ unit: 'L' }).describe('by the coats that say so'),
  doubts: z.array(Reason).describe('why a coat out of it may cure slowly; empty when nothing is'),
});
export type Tin = z.infer<typeof Tin>;
