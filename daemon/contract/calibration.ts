import { z } from 'zod';
import { Id, Moment } from './moment.ts';
import { Quantity } from './quantity.ts';
import { SensorId } from './sensor.ts';

const Figure = z.number().describe('in the unit of the quantity');

export const Salt = z
  .enum([
    'lithium-chloride',
    'magnesium-chloride',
    'magnesium-nitrate',
    'sodium-chloride',
    'potassium-chloride',
    'potassium-sulfate',
  ])
  .describe('salt of the saturated solution under the sensor');
export type Salt = z.infer<typeof Salt>;

/** How a calibration was got: what the sensor showed, and what was so. */
export const CalibrationHow = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('offset'),
    add: Figure.describe('added to what the sensor sends'),
  }),
  z.strictObject({
    kind: z.literal('hand-meter'),
    actual: Figure.describe('what the hand meter showed beside it'),
    shown: Figure.optional().describe(
      'what the sensor sent then; looked up at measuredAt when left out',
    ),
    measuredAt: Moment.optional().describe('when both were read; now when left out'),
  }),
  z.strictObject({
    kind: z.literal('two-point'),
    points: z
      .array(z.strictObject({ shown: Figure, actual: Figure }))
      .length(2)
      .describe('what it showed and what was so, at two values far apart'),
  }),
  z.strictObject({
    kind: z.literal('salts'),
    points: z
      .array(
        z.strictObject({
          salt: Salt,
          tempC: z.number().min(0).max(40).meta({ unit: '°C' }),
          shown: Figure,
        }),
      )
      .min(1)
      .max(2)
      .describe('one salt gives an offset, two give a line'),
  }),
  z.strictObject({
    kind: z.literal('ice-point'),
    shown: Figure.describe('in stirred ice and water, which is at 0 °C'),
  }),
  z.strictObject({
    kind: z.literal('test-resistor'),
    ohms: z.number().positive().meta({ unit: 'Ω' }),
    shown: Figure.describe('what the probe sent with the resistor between its leads'),
  }),
]);
export type CalibrationHow = z.infer<typeof CalibrationHow>;

const Note = z.string().trim().max(500).nullable();
const From = Moment.nullable().describe('from when on it holds; null: for all its readings');

export const NewCalibration = z.strictObject({
  id: Id.optional(),
  quantity: Quantity,
  how: CalibrationHow,
  from: From.optional().describe('from when on it holds; null: for all its readings; else now'),
  note: Note.optional(),
});
export type NewCalibration = z.infer<typeof NewCalibration>;

export const CalibrationChange = z.strictObject({
  how: CalibrationHow.optional(),
  from: From.optional(),
  note: Note.optional(),
});
export type CalibrationChange = z.infer<typeof CalibrationChange>;

export const Calibration = z.object({
  id: Id,
  sensor: SensorId,
  quantity: Quantity,
  how: CalibrationHow,
  from: From,
  note: Note,
  gain: z
    .number()
    .describe('the corrected value is gain × sent + add; of resistances, their logarithms'),
  add: z.number(),
  inForce: z.boolean().describe('whether readings of now are corrected by it'),
  recordedAt: Moment,
  replacedAt: Moment.nullable().describe('when it was corrected or withdrawn; null while it holds'),
});
export type Calibration = z.infer<typeof Calibration>;
