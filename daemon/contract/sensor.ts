import { z } from 'zod';
import { Species } from './batch.ts';
import { Id, Moment } from './moment.ts';
import { Quantity } from './quantity.ts';
import { SensorFault } from './sensor-fault.ts';
import { WoodProbe } from './wood-probe.ts';

export const SensorId = z
  .string()
  .regex(/^[A-Za-z0-9._-]{1,64}$/)
  .describe('the sensor’s segment of the topic');

/** Where in its place a sensor hangs. */
export const SensorHeight = z.enum(['bottom-shelf', 'eye-height', 'top-shelf']);
export type SensorHeight = z.infer<typeof SensorHeight>;

export const SensorChange = z.strictObject({
  placeId: Id.nullable().optional().describe('null takes the sensor down'),
  from: Moment.optional().describe('when it was moved; a first placement holds for all readings'),
  name: z.string().trim().min(1).max(80).nullable().optional(),
  height: SensorHeight.nullable().optional().describe('null: not said'),
  species: Species.nullable()
    .optional()
    .describe('timber a wood probe sits in; null: that of the batch at its place'),
});
export type SensorChange = z.infer<typeof SensorChange>;

export const Sensor = z.object({
  id: SensorId,
  name: z.string().nullable(),
  placeId: Id.nullable(),
  height: SensorHeight.nullable(),
  species: Species.nullable(),
  firstSeenAt: Moment,
  latest: z.array(
    z.object({
      quantity: Quantity,
      at: Moment,
      value: z.number().describe('corrected'),
      raw: z.number().describe('as sent, in the unit of the quantity'),
    }),
  ),
  faults: z.array(SensorFault).describe('what is found wrong with it now'),
  wood: WoodProbe.nullable().describe('what its pins tell; null without pins'),
});
export type Sensor = z.infer<typeof Sensor>;
