import { z } from 'zod';

export const tradeSettings = z
  .strictObject({
    hemisphere: z
      .enum(['north', 'south'])
      .default('north')
      .meta({ onPage: true })
      .describe('of the site, for where the sun stands'),
    stockSizes: z
      .array(z.string().regex(/^\d{1,4}x\d{1,3}$/))
      .max(12)
      .default(['120x22', '145x22', '170x22', '195x25'])
      .meta({ unit: 'mm', onPage: true })
      .describe('board sizes offered as buttons, width x thickness; common practice, no source'),
    stockLengthsMm: z
      .array(z.number().positive().max(20_000))
      .max(12)
      .default([3600, 4200, 4800, 5400])
      .meta({ unit: 'mm', onPage: true })
      .describe('board lengths offered as buttons; common practice, no source'),
    weatheredAfterDays: z
      .number()
      .min(1)
      .max(365)
      .default(14)
      .meta({ unit: 'd', onPage: true })
      .describe('bare timber outdoors for longer counts as weathered; about two weeks is common'),
    tinOldAfterDays: z
      .number()
      .min(1)
      .max(3650)
      .default(365)
      .meta({ unit: 'd', onPage: true })
      .describe('a tin open for longer cures slowly; common practice, no source'),
    lookAfterMinutes: z
      .number()
      .min(5)
      .max(240)
      .default(30)
      .meta({ unit: 'min', onPage: true })
      .describe('how long after a coat to look for what still shines; common practice, no source'),
    lookUntilMinutes: z
      .number()
      .min(10)
      .max(240)
      .default(60)
      .meta({ unit: 'min', onPage: true })
      .describe('by when; common practice, no source'),
  })
  .refine(({ lookAfterMinutes, lookUntilMinutes }) => lookAfterMinutes <= lookUntilMinutes, {
    message: 'must not be above lookUntilMinutes',
    path: ['lookAfterMinutes'],
    params: { fault: 'must-rise', names: ['trade.lookAfterMinutes', 'trade.lookUntilMinutes'] },
  })
  .prefault({});
