import { z } from 'zod';
import { CalibrationHow } from './calibration.ts';
import { Moment } from './moment.ts';
import { Quantity } from './quantity.ts';
import { SensorId } from './sensor.ts';
import { Sentence } from './sentence.ts';

const From = Moment.describe('when they had come to lie together');
const To = Moment.optional().describe('until when they lay together; now when left out');

/** Sensors that lay together in a closed box, and from when to when. */
export const ComparisonQuery = z.strictObject({
  sensors: z
    .string()
    .regex(/^[A-Za-z0-9._-]{1,64}(,[A-Za-z0-9._-]{1,64}){1,49}$/)
    .describe('ids of two to fifty sensors, parted by commas'),
  from: From,
  to: To,
});
export type ComparisonQuery = z.infer<typeof ComparisonQuery>;

export const AcceptedComparison = z.strictObject({
  sensors: z.array(SensorId).min(2).max(50),
  from: From,
  to: To,
  holdsFrom: Moment.nullable()
    .optional()
    .describe('from when on the offsets hold; null: for all readings; else from the end'),
  leaveOut: z.array(SensorId).optional().describe('sensors that are to stay as they are'),
});
export type AcceptedComparison = z.infer<typeof AcceptedComparison>;

export const RefusedBecause = z.enum([
  'no-readings',
  'too-short',
  'not-steady',
  'only-two',
  'no-majority',
]);
export type RefusedBecause = z.infer<typeof RefusedBecause>;

export const ComparedSensor = z.object({
  sensor: SensorId,
  difference: z.number().describe('mean of the sensor less the reference, in the unit'),
  uncertainty: z.number().describe('of the difference, two standard deviations'),
  isOdd: z.boolean().describe('stands apart from the others'),
  wanders: z.boolean().describe('does not keep its distance: no offset mends it'),
});
export type ComparedSensor = z.infer<typeof ComparedSensor>;

export const ComparedQuantity = z.object({
  quantity: Quantity,
  refused: RefusedBecause.nullable().describe('why nothing can be offered; null when it can'),
  says: z.string(),
  saysSaid: Sentence,
  usedHours: z.number().describe('how long it was steady, with all of them heard'),
  sensors: z.array(ComparedSensor),
});
export type ComparedQuantity = z.infer<typeof ComparedQuantity>;

export const Comparison = z.object({
  from: Moment,
  to: Moment,
  quantities: z.array(ComparedQuantity),
  offers: z
    .array(
      z.object({ sensor: SensorId, quantity: Quantity, change: z.number(), how: CalibrationHow }),
    )
    .describe('calibrations that would bring each sensor to the others'),
});
export type Comparison = z.infer<typeof Comparison>;
