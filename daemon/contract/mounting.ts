import { z } from 'zod';
import { Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

/** What is done on the day boards go up, one line each. */
export const mountingLines = ['fresh-cuts', 'notches', 'nail-heads', 'end-grain-twice'] as const;
export const MountingLine = z.enum(mountingLines);
export type MountingLine = z.infer<typeof MountingLine>;

export const MountingTick = z.strictObject({
  line: MountingLine,
  at: Moment,
  done: z.boolean().optional().describe('false takes the tick back'),
});
export type MountingTick = z.infer<typeof MountingTick>;

export const Mounting = z.array(
  z.object({ line: MountingLine, ...Sentence.shape, at: Moment.nullable() }),
);
export type Mounting = z.infer<typeof Mounting>;
