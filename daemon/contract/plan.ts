import { z } from 'zod';
import { Id, Moment } from './moment.ts';

export const Surface = z.enum(['sawn', 'planed']);
export type Surface = z.infer<typeof Surface>;

export const Face = z.enum(['face', 'back', 'edges', 'ends']);
export type Face = z.infer<typeof Face>;

export const Mixture = z
  .strictObject({
    paint: z.number().min(0).max(1000),
    rawLinseedOil: z.number().min(0).max(1000),
    turpentine: z.number().min(0).max(1000),
  })
  .refine((parts) => parts.paint + parts.rawLinseedOil + parts.turpentine > 0, {
    message: 'at least one part must be more than 0',
  })
  .describe('parts by volume');
export type Mixture = z.infer<typeof Mixture>;

export const PlannedCoat = z.strictObject({
  name: z.string().trim().min(1).max(80),
  mixture: Mixture,
  faces: z.array(Face).min(1),
  spreadingM2PerL: z.number().positive().max(100).meta({ unit: 'm²/L' }),
  soaksIn: z
    .boolean()
    .describe('true for a primer that sinks into the wood instead of lying on it'),
});
export type PlannedCoat = z.infer<typeof PlannedCoat>;

export const NewPlan = z.strictObject({
  id: Id.optional(),
  name: z.string().trim().min(1).max(80),
  surface: Surface,
  coats: z.array(PlannedCoat).min(1).max(10),
});
export type NewPlan = z.infer<typeof NewPlan>;

export const Plan = z.object({
  id: Id,
  name: z.string(),
  surface: Surface,
  coats: z.array(PlannedCoat),
  isDefault: z.boolean(),
  createdAt: Moment,
});
export type Plan = z.infer<typeof Plan>;
