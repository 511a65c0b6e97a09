import { z } from 'zod';
import { Gate } from './gate.ts';
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
    params: { fault: 'no-part' },
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
  coverWidthMm: z
    .number()
    .positive()
    .max(2000)
    .nullable()
    .optional()
    .meta({ unit: 'mm' })
    .describe('width of the face that shows, where a later coat stays off the lap'),
  gateLimits: z
    .partialRecord(
      Gate,
      z.strictObject({
        leastHours: z.number().min(0).max(10_000).optional().meta({ unit: 'h' }),
        leastDegreeHours: z.number().min(0).max(1e6).optional().meta({ unit: '°C·h' }),
      }),
    )
    .nullable()
    .optional()
    .describe('what a job waits for whatever else is known, as a paint maker’s sheet may ask'),
});
export type PlannedCoat = z.infer<typeof PlannedCoat>;

export const PlanUse = z.enum(['usual', 'without-turpentine', 'resinous']);
export type PlanUse = z.infer<typeof PlanUse>;

export const NewPlanVersion = z.strictObject({
  id: Id.optional(),
  name: z.string().trim().min(1).max(80).optional(),
  coats: z.array(PlannedCoat).min(1).max(10),
});
export type NewPlanVersion = z.infer<typeof NewPlanVersion>;

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
  familyId: Id.describe('id of its first version'),
  version: z.int(),
  isNewest: z.boolean(),
  use: PlanUse.nullable().describe(
    'what a plan that came with the program is for; null for others',
  ),
  learned: z
    .array(
      z.object({
        m2PerL: z.number().meta({ unit: 'm²/L' }).describe('spreading rate to reckon with'),
        coats: z.int().describe('coats it was learned from; 0: the plan’s own figure'),
      }),
    )
    .describe('one for each coat'),
});
export type Plan = z.infer<typeof Plan>;
