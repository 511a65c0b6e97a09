import { z } from 'zod';
import { Gate, GateVerdict, Reason, Stage } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { Notice } from './notice.ts';
import { Place, PlaceAir } from './place.ts';
import { Sentence } from './sentence.ts';

export const OverviewBatch = z.object({
  id: Id,
  name: z.string(),
  boards: z.int(),
  coat: z.int().nullable().describe('index of the coat that cures; null before the first'),
  coatName: z.string().nullable(),
  coatCount: z.int(),
  finishedAt: Moment.nullable(),
  stage: Stage.nullable(),
  degreeHours: z.number().nullable().meta({ unit: '°C·h' }),
  equivalentHours: z.number().nullable().meta({ unit: 'h' }),
  share: z
    .number()
    .nullable()
    .describe('degree-hours over what the next job is as likely as not to need, 0 to 1 and beyond'),
  nextGate: Gate.nullable().describe('the job this batch waits for'),
  verdict: GateVerdict.nullable(),
});
export type OverviewBatch = z.infer<typeof OverviewBatch>;

export const OverviewPlace = Place.extend({
  air: PlaceAir,
  airflow: z
    .enum(['good', 'poor', 'cannot-tell'])
    .describe('cannot-tell until there is evidence for either'),
  airReasons: z.array(Reason).describe('what the word on the air rests on'),
  airChange: z
    .object({ perHour: z.number(), low: z.number(), high: z.number() })
    .nullable()
    .describe('air changes an hour with a 90 % interval, rough; null when it cannot be told')
    .meta({ unit: '1/h' }),
  batches: z.array(OverviewBatch),
});
export type OverviewPlace = z.infer<typeof OverviewPlace>;

export const Overview = z.object({
  site: z.string().describe('name in topics'),
  siteName: z.string().nullable().describe('name on the pages; null: that of the topics'),
  now: Moment,
  speed: z.number().describe('1 in real time; more in the simulated shed'),
  intake: z.object({
    accepted: z.int(),
    duplicates: z.int(),
    refused: z.int(),
    broker: z.enum(['embedded', 'external']),
    connected: z.boolean(),
    refusing: z.boolean().describe('true while the disk is full and nothing is acknowledged'),
  }),
  doubts: z
    .array(z.string())
    .describe('what is amiss with the computer itself: disk, clock, database, broker'),
  doubtsSaid: z.array(Sentence),
  unplacedSensors: z.int(),
  mayWrite: z.boolean().describe('whether a change would be taken from whoever asks'),
  writing: z
    .enum(['granted', 'after-log-in', 'from-the-computer'])
    .describe('what a change takes: nothing more, a PIN, or to come from the computer itself'),
  places: z.array(OverviewPlace),
  notices: z.array(Notice),
  settingChanges: z
    .int()
    .optional()
    .describe('grows when a setting is changed: a page that shows them reads them again'),
});
export type Overview = z.infer<typeof Overview>;
