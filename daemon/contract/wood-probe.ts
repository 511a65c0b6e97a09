import { z } from 'zod';
import { Moment } from './moment.ts';

export const MoistureRange = z
  .enum(['measured', 'wetter-than', 'drier-than'])
  .describe('beyond what pins can tell it is only known to be wetter or drier than the limit');
export type MoistureRange = z.infer<typeof MoistureRange>;

/** What a pair of pins in the wood tells. */
export const WoodProbe = z.object({
  sensor: z.string().describe('id of the sensor'),
  at: Moment,
  range: MoistureRange,
  moisturePercent: z
    .number()
    .nullable()
    .describe('null outside of the range: not a number to trust')
    .meta({ unit: '% of oven-dry mass' }),
  limitPercent: z
    .number()
    .nullable()
    .describe('wetter or drier than this; null within the range')
    .meta({ unit: '% of oven-dry mass' }),
  ohms: z.number().nullable().describe('null for a probe that sends moisture').meta({ unit: 'Ω' }),
  curve: z
    .enum(['scots-pine', 'norway-spruce', 'douglas-fir'])
    .nullable()
    .describe('timber whose resistance it was read against; null for a probe that sends moisture'),
  curveAssumed: z.boolean().describe('true where that timber is not known, or has no curve'),
  woodTempC: z.number().nullable().meta({ unit: '°C' }),
  woodTempFrom: z
    .enum(['own-surface', 'place-surface', 'air', 'assumed'])
    .nullable()
    .describe('which temperature was taken for that of the wood'),
});
export type WoodProbe = z.infer<typeof WoodProbe>;

/** What all pins in the boards of a batch tell together. */
export const BoardsProbed = z.object({
  probes: z.array(WoodProbe),
  worst: z.string().describe('id of the wettest of them'),
  range: MoistureRange.describe('of the wettest'),
  moisturePercent: z.number().nullable().describe('of the wettest'),
  limitPercent: z.number().nullable(),
  spreadPercent: z
    .number()
    .nullable()
    .describe('wettest less driest; null unless at least two are within the range'),
});
export type BoardsProbed = z.infer<typeof BoardsProbed>;
