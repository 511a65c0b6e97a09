import { z } from 'zod';
import { Id, Moment } from './moment.ts';

export const PlaceKind = z.enum(['outdoors', 'room', 'rack', 'wall']);
export type PlaceKind = z.infer<typeof PlaceKind>;

export const Facing = z.enum(['north', 'east', 'south', 'west']);
export const Exposure = z
  .enum(['open', 'under-eaves', 'shade'])
  .describe('how a wall stands to the weather and the sun');

const placeFields = {
  name: z.string().trim().min(1).max(80),
  kind: PlaceKind,
  within: Id.nullable().optional().describe('the place that encloses this one: a rack in its room'),
  volumeM3: z.number().positive().max(1e6).nullable().optional().meta({ unit: 'm³' }),
  facing: Facing.nullable().optional(),
  exposure: Exposure.nullable().optional(),
  capacityM: z
    .number()
    .positive()
    .max(1e6)
    .nullable()
    .optional()
    .meta({ unit: 'm' })
    .describe('running metres of boards that a rack takes'),
  capacityBoards: z.int().min(1).max(1e6).nullable().optional().describe('boards that it takes'),
};

/** What may be said better of a place; what kind it is and what encloses it stays. */
export const PlaceChange = z.strictObject({
  name: placeFields.name.optional(),
  volumeM3: placeFields.volumeM3,
  facing: placeFields.facing,
  exposure: placeFields.exposure,
  capacityM: placeFields.capacityM,
  capacityBoards: placeFields.capacityBoards,
});
export type PlaceChange = z.infer<typeof PlaceChange>;

export const NewPlace = z.strictObject({ id: Id.optional(), ...placeFields });
export type NewPlace = z.infer<typeof NewPlace>;

export const Place = z.object({
  id: Id,
  name: z.string(),
  kind: PlaceKind,
  within: Id.nullable(),
  volumeM3: z.number().nullable(),
  facing: Facing.nullable(),
  exposure: Exposure.nullable(),
  capacityM: z.number().nullable().meta({ unit: 'm' }),
  capacityBoards: z.int().nullable(),
  createdAt: Moment,
});
export type Place = z.infer<typeof Place>;

/** What the air at a place is now; null where no sensor tells it. */
export const PlaceAir = z.object({
  at: Moment.nullable().describe('time of the newest reading used'),
  tempC: z.number().nullable().meta({ unit: '°C' }).describe('coldest sensor of the place'),
  rhPercent: z.number().nullable().meta({ unit: '%' }).describe('dampest sensor of the place'),
  dewPointC: z.number().nullable().meta({ unit: '°C' }),
  absoluteHumidityGM3: z.number().nullable().meta({ unit: 'g/m³' }),
  stale: z.boolean().describe('true when the newest reading is older than the allowed gap'),
  apartK: z
    .number()
    .nullable()
    .meta({ unit: 'K' })
    .describe('from the coldest to the warmest sensor there; null with fewer than two'),
  apartRhPercent: z
    .number()
    .nullable()
    .meta({ unit: '%' })
    .describe('from the driest to the dampest sensor there; null with fewer than two'),
  from: Id.nullable().describe('the place whose sensors speak here, when it is an enclosing one'),
});
export type PlaceAir = z.infer<typeof PlaceAir>;
