import { z } from 'zod';
import { Sentence } from './sentence.ts';

export const StockSize = z.strictObject({
  widthMm: z.number().positive().max(2000).meta({ unit: 'mm' }),
  thicknessMm: z.number().positive().max(500).meta({ unit: 'mm' }),
});
export type StockSize = z.infer<typeof StockSize>;

/** What the air, the timber and the hours ahead must be like for a coat; every one is a setting. */
export const ApplicationLimits = z.object({
  coldestC: z.number().meta({ unit: '°C' }).describe('colder than this no coat goes on'),
  verySlowBelowC: z.number().meta({ unit: '°C' }).describe('below this it dries very slowly'),
  slowBelowC: z.number().meta({ unit: '°C' }).describe('below this it dries slowly'),
  warmAboveC: z.number().meta({ unit: '°C' }).describe('warmer, a coat skins and shows marks'),
  hottestC: z.number().meta({ unit: '°C' }).describe('hotter than this no coat goes on'),
  dampestRhPercent: z.number().meta({ unit: '%' }).describe('at the brush and the first night'),
  dewMarginK: z.number().meta({ unit: 'K' }).describe('least distance from the dew point'),
  dampestWoodPercent: z.number().meta({ unit: '%' }).describe('wetter timber is not coated'),
  boardsMeasured: z.int().describe('boards to measure, of which the worst decides'),
  fromEndMm: z.number().meta({ unit: 'mm' }).describe('how far from the end they are measured'),
  moistureDays: z.number().meta({ unit: 'd' }).describe('how long the figures hold'),
  stopBeforeDewHours: z
    .number()
    .meta({ unit: 'h' })
    .describe('the brush is put down so long before'),
  dryBeforeRainHours: z.number().meta({ unit: 'h' }).describe('a coat outdoors has so long'),
});
export type ApplicationLimits = z.infer<typeof ApplicationLimits>;

/** What the settings say of the trade here, for forms. */
export const Trade = z.object({
  stockSizes: z.array(StockSize),
  stockLengthsMm: z.array(z.number()),
  application: ApplicationLimits,
  weatheredAfterDays: z.number().meta({ unit: 'd' }),
  leadCaution: z.string(),
  leadCautionSaid: Sentence,
});
export type Trade = z.infer<typeof Trade>;
