import { z } from 'zod';
import { Id, Moment } from './moment.ts';
import { Quantity } from './quantity.ts';

export const SensorId = z
  .string()
  .regex(/^[A-Za-z0-9._-]{1,64}$/)
  .describe('the sensor’s segment of the topic');

export const SensorChange = z.strictObject({
  placeId: Id.nullable().optional().describe('null takes the sensor down'),
  from: Moment.optional().describe('when it was moved; a first placement holds for all readings'),
  name: z.string().trim().min(1).max(80).nullable().optional(),
});
export type SensorChange = z.infer<typeof SensorChange>;

export const Sensor = z.object({
  id: SensorId,
  name: z.string().nullable(),
  placeId: Id.nullable(),
  firstSeenAt: Moment,
  latest: z.array(
    z.object({
      quantity: Quantity,
      at: Moment,
      value: z.number().describe('corrected'),
      raw: z.number().describe('as sent, in the unit of the quantity'),
    }),
  ),
});
export type Sensor = z.infer<typeof Sensor>;
