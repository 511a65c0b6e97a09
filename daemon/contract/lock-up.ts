import { z } from 'zod';
import { Reason } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

/** The most dangerous first: so they are read. */
export const LockUpLine = z.enum([
  'rags',
  'vacuum-bag',
  'brushes',
  'left-over-paint',
  'waste',
  'heater',
  'doors',
  'night',
  'children',
]);
export type LockUpLine = z.infer<typeof LockUpLine>;

const Day = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/, 'a day is written yyyy-mm-dd')
  .refine((day) => !Number.isNaN(Date.parse(day)), {
    message: 'there is no such day',
    params: { fault: 'no-day' },
  })
  .describe('working day of the site, yyyy-mm-dd: it ends at four in the morning');

export const LockUpQuery = z.strictObject({ day: Day.optional() });

export const NewLockUpTick = z.strictObject({
  id: Id.optional(),
  day: Day.optional().describe('today when left out'),
  line: LockUpLine,
  done: z.boolean().optional().describe('false takes a tick back; true when left out'),
  by: z.string().trim().min(1).max(80).nullable().optional().describe('who saw to it'),
});
export type NewLockUpTick = z.infer<typeof NewLockUpTick>;

export const LockUp = z.object({
  day: Day,
  isCoatingDay: z.boolean().describe('true when a coat was begun or finished, or boards sanded'),
  because: z.array(z.string()).describe('what made it one, in words'),
  becauseSaid: z.array(Sentence),
  lines: z
    .array(
      z.object({
        line: LockUpLine,
        title: z.string(),
        titleSaid: Sentence,
        ...Sentence.shape,
        done: z.boolean(),
        at: Moment.nullable(),
        by: z.string().nullable(),
        repeats: z.boolean().describe('true where it is told again until it is ticked'),
      }),
    )
    .describe('empty on a day without coating'),
  card: z
    .array(z.object({ title: z.string(), titleSaid: Sentence, ...Sentence.shape }))
    .describe('the whole list as it stands on the card at the door, on any day'),
  night: z
    .array(
      z.object({
        placeId: Id,
        placeName: z.string(),
        lowC: z.number().nullable().meta({ unit: '°C' }),
        lowErrorK: z.number().nullable().meta({ unit: 'K' }).describe('one standard deviation'),
        lowAt: Moment.nullable(),
        atRisk: z.array(z.object({ batchId: Id, name: z.string(), reasons: z.array(Reason) })),
      }),
    )
    .describe('tonight at every place where wet boards lie'),
});
export type LockUp = z.infer<typeof LockUp>;
