import { z } from 'zod';

const part = z.coerce.number().min(0).max(1000).optional();

export const MixtureQuery = z.strictObject({
  areaM2: z.coerce.number().positive().max(1e6).meta({ unit: 'm²' }),
  spreadingM2PerL: z.coerce.number().positive().max(100).meta({ unit: 'm²/L' }),
  paint: part,
  rawLinseedOil: part,
  turpentine: part,
  lossPercent: z.coerce.number().min(0).max(100).optional().meta({ unit: '%' }),
  usedL: z.coerce
    .number()
    .min(0)
    .max(1e6)
    .optional()
    .meta({ unit: 'L' })
    .describe('litres used, to tell what is left'),
  potDiameterMm: z.coerce.number().positive().max(2000).optional().meta({ unit: 'mm' }),
});
export type MixtureQuery = z.infer<typeof MixtureQuery>;

export const MixtureReply = z.object({
  totalL: z.number().meta({ unit: 'L' }),
  partsL: z.object({
    paint: z.number().meta({ unit: 'L' }),
    rawLinseedOil: z.number().meta({ unit: 'L' }),
    turpentine: z.number().meta({ unit: 'L' }),
  }),
  stickMarksMm: z
    .array(z.number())
    .nullable()
    .describe('marks from the bottom of a straight-sided pot, in the order of the parts')
    .meta({ unit: 'mm' }),
  leftOverL: z
    .number()
    .nullable()
    .describe('what is left of it; null when nobody said what was used')
    .meta({ unit: 'L' }),
  keeping: z.string().describe('how to keep what is left'),
});
export type MixtureReply = z.infer<typeof MixtureReply>;
