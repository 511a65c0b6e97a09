import { z } from 'zod';
import { Id, Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

export const NoticeKind = z.enum([
  'sensor-unplaced',
  'place-silent',
  'batch-without-air',
  'gate-ready',
  'rags',
  'vapour',
  'overheating',
  'look-again',
  'mounting-open',
  'sensor-fault',
]);
export type NoticeKind = z.infer<typeof NoticeKind>;

export const Notice = z.object({
  id: Id,
  kind: NoticeKind,
  subject: z.string().describe('id of the place, sensor or batch it is about'),
  ...Sentence.shape,
  raisedAt: Moment,
  seenAt: Moment.nullable(),
  clearedAt: Moment.nullable(),
  repeats: z.int().describe('how often it was told again because nobody had done what it asks for'),
  repeatedAt: Moment.nullable(),
});
export type Notice = z.infer<typeof Notice>;

export const NoticeChange = z.strictObject({ seen: z.literal(true) });
export type NoticeChange = z.infer<typeof NoticeChange>;
