import { z } from 'zod';
import { RemarkKind } from './batch.ts';
import { Gate } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { NoticeKind } from './notice.ts';
import { SensorId } from './sensor.ts';
import { Sentence } from './sentence.ts';

const points = z.coerce
  .number()
  .int()
  .min(2)
  .max(2_000)
  .optional()
  .describe('at most about so many stretches; 600 when left out');

export const CurvesQuery = z.strictObject({
  from: Moment.optional().describe('a week before the end when left out'),
  to: Moment.optional().describe('now when left out'),
  points,
});
export type CurvesQuery = z.infer<typeof CurvesQuery>;

export const BatchCurvesQuery = z.strictObject({
  coatId: Id.optional().describe('the last coat when left out'),
  from: Moment.optional().describe('some hours before the coat when left out'),
  to: Moment.optional().describe('when the coat ended, or now, when left out'),
  points,
});
export type BatchCurvesQuery = z.infer<typeof BatchCurvesQuery>;

const Column = z.array(z.number().nullable());

/**
 * What a quantity did in each stretch. Where no reading fell into one, but two about it are near enough,
 * the mean alone is told: it lies on the straight line between them.
 */
export const Spread = z.object({
  low: Column.describe('lowest reading of each stretch'),
  mean: Column.describe(
    'mean of the readings; by the hour, the mean of the middles of each hour’s lowest and highest',
  ),
  high: Column.describe('highest reading of each stretch'),
});
export type Spread = z.infer<typeof Spread>;

/** Something that was done, felt, seen or told at a moment. */
export const CurveMark = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('coat'),
    at: Moment,
    batchId: Id,
    batchName: z.string(),
    name: z.string().describe('of the coat'),
  }),
  z.object({
    kind: z.literal('test'),
    at: Moment,
    batchId: Id,
    batchName: z.string(),
    gate: Gate,
    passed: z.boolean(),
  }),
  z.object({
    kind: z.literal('move'),
    at: Moment,
    batchId: Id,
    batchName: z.string(),
    placeId: Id,
    placeName: z.string().describe('where it went'),
  }),
  z.object({
    kind: z.literal('remark'),
    at: Moment,
    batchId: Id,
    batchName: z.string(),
    remark: RemarkKind,
    text: z.string().nullable(),
  }),
  z.object({
    kind: z.literal('notice'),
    at: Moment,
    noticeId: Id,
    notice: NoticeKind,
    ...Sentence.shape,
  }),
]);
export type CurveMark = z.infer<typeof CurveMark>;

/** Wood moisture that somebody measured by hand: points beside the curve of what pins measured. */
export const HandMoisture = z.object({
  at: Moment,
  batchId: Id.nullable().describe('the boards; null where no batch was named'),
  batchName: z.string().nullable(),
  placeId: Id.nullable().describe('the place, where no batch was named'),
  placeName: z.string().nullable(),
  percent: z
    .array(z.number())
    .meta({ unit: '%' })
    .describe('as the meter showed it, board by board in the order they were measured'),
});
export type HandMoisture = z.infer<typeof HandMoisture>;

/** Curves on one grid of time: equal stretches, of which `at` is the middle. */
export const Curves = z.object({
  from: Moment,
  to: Moment,
  stepS: z.number().meta({ unit: 's' }).describe('length of a stretch'),
  byHour: z
    .boolean()
    .describe('true where the lowest and highest of whole hours were looked up, not each reading'),
  at: z.array(z.number()).meta({ unit: 's' }).describe('UTC epoch seconds, ascending'),
  tempC: Spread.nullable().meta({ unit: '°C' }),
  rhPercent: Spread.nullable().meta({ unit: '%' }),
  dewPointC: Column.nullable()
    .meta({ unit: '°C' })
    .describe('of the mean temperature and humidity of each stretch'),
  woodMoisturePercent: Spread.nullable().meta({ unit: '%' }),
  carbonDioxidePpm: Spread.nullable().meta({ unit: 'ppm' }),
  handMoisture: z
    .array(HandMoisture)
    .optional()
    .describe('ascending; of places and batches, not of a sensor'),
  marks: z.array(CurveMark).describe('ascending'),
});
export type Curves = z.infer<typeof Curves>;

/** The sum that is to come, as the verdicts reckon it. */
export const SumAhead = z.object({
  at: z.array(z.number()).meta({ unit: 's' }).describe('UTC epoch seconds, from the last reading'),
  early: z
    .array(z.number())
    .meta({ unit: '°C·h' })
    .describe('reached or passed in one future of ten, by the faster of the two models'),
  likely: z.array(z.number()).meta({ unit: '°C·h' }).describe('along the expected temperature'),
  late: z
    .array(z.number())
    .meta({ unit: '°C·h' })
    .describe('reached or passed in nine futures of ten, by the slower of the two models'),
});
export type SumAhead = z.infer<typeof SumAhead>;

export const BatchCurves = Curves.extend({
  batchId: Id,
  coatId: Id.nullable().describe('null before the first coat'),
  degreeHours: Column.meta({ unit: '°C·h' }).describe(
    'the coat’s sum, in the middle of each stretch',
  ),
  countedDegreeHours: Column.meta({ unit: '°C·h' }).describe(
    'the same without heat above what is trusted: what verdicts and the sum ahead go by',
  ),
  ahead: SumAhead.nullable().describe('null where the coat is over or the air was never read'),
});
export type BatchCurves = z.infer<typeof BatchCurves>;

export const OfSensor = z.strictObject({ id: SensorId });

export const AirChangesQuery = z.strictObject({
  from: Moment.optional().describe('a week before the end when left out'),
  to: Moment.optional().describe('now when left out'),
});
export type AirChangesQuery = z.infer<typeof AirChangesQuery>;

/** Air changes of a room as they were estimated over time, each from the day before it. */
export const AirChanges = z.object({
  roomId: Id.nullable().describe('the room it is about; null where the place lies in none'),
  at: z.array(z.number()).meta({ unit: 's' }).describe('UTC epoch seconds, ascending'),
  perHour: Column.meta({ unit: '1/h' }).describe('likeliest; null where it cannot be told'),
  low: Column.meta({ unit: '1/h' }).describe('lower end of the 90 % interval'),
  high: Column.meta({ unit: '1/h' }).describe('upper end of the 90 % interval'),
});
export type AirChanges = z.infer<typeof AirChanges>;
