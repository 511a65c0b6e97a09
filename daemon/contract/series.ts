import { z } from 'zod';
import { Id, Moment } from './moment.ts';
import { Quantity } from './quantity.ts';
import { SensorId } from './sensor.ts';

export const SeriesQuery = z.strictObject({
  sensor: SensorId,
  quantity: Quantity,
  from: Moment.optional(),
  to: Moment.optional(),
  points: z.coerce
    .number()
    .int()
    .min(2)
    .max(20_000)
    .optional()
    .describe(
      'thin out to about this many, keeping each stretch’s extremes; all of up to 100,000 when left out',
    ),
});
export type SeriesQuery = z.infer<typeof SeriesQuery>;

/** Columns as a chart wants them: seconds ascending, null where readings are missing. */
export const Series = z.object({
  sensor: SensorId,
  quantity: Quantity,
  at: z.array(z.number()).describe('UTC epoch seconds, ascending').meta({ unit: 's' }),
  value: z.array(z.number().nullable()).describe('corrected'),
  raw: z.array(z.number().nullable()).describe('as sent'),
});
export type Series = z.infer<typeof Series>;

export const BatchChartQuery = z.strictObject({
  points: z.coerce.number().int().min(2).max(5_000).optional(),
});

/** The curves of the coat that is curing: the air at its place and the sum it has gathered. */
export const BatchChart = z.object({
  batchId: Id,
  coatId: Id.nullable(),
  at: z.array(z.number()).meta({ unit: 's' }),
  tempC: z.array(z.number().nullable()).meta({ unit: '°C' }),
  rhPercent: z.array(z.number().nullable()).meta({ unit: '%' }),
  degreeHours: z.array(z.number().nullable()).meta({ unit: '°C·h' }),
});
export type BatchChart = z.infer<typeof BatchChart>;
