import { z } from 'zod';
import { Moment } from './moment.ts';

export const StateBefore = z
  .enum(['new', 'weathered', 'painted', 'unknown'])
  .describe('weathered: bare outdoors for weeks, grey; painted and unknown: taken to hold lead');
export type StateBefore = z.infer<typeof StateBefore>;

export const StoredHow = z
  .enum(['indoors', 'under-roof', 'wrapped', 'bare-outdoors'])
  .describe('how the timber was kept since it was delivered');
export type StoredHow = z.infer<typeof StoredHow>;

export const Support = z
  .enum(['points', 'hung', 'stickers'])
  .describe('what the boards rest on while they cure; on stickers they have to be turned');
export type Support = z.infer<typeof Support>;

export const Knots = z
  .enum(['not-looked', 'few', 'many', 'resinous'])
  .describe('knots and resin, as they were looked at');
export type Knots = z.infer<typeof Knots>;

/** What may be said of timber when a batch is started, and later. */
export const timberFields = {
  stateBefore: StateBefore.nullable().optional(),
  deliveredAt: Moment.nullable().optional(),
  storedHow: StoredHow.nullable().optional(),
  support: Support.nullable().optional(),
  knots: Knots.nullable().optional(),
};

/** What is known of the timber; null where nobody said. */
export const Timber = z.object({
  stateBefore: StateBefore.nullable(),
  deliveredAt: Moment.nullable(),
  storedHow: StoredHow.nullable(),
  support: Support.nullable(),
  knots: Knots.nullable(),
});
export type Timber = z.infer<typeof Timber>;
