import { z } from 'zod';
import { Overview } from './overview.ts';

/** What `GET /api/v1/stream` sends: the whole overview at first and whenever a verdict changed. */
export const StreamEvent = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('overview'), overview: Overview }),
  z.object({ kind: z.literal('batch-changed'), batchId: z.string() }),
]);
export type StreamEvent = z.infer<typeof StreamEvent>;
