import { z } from 'zod';

const celsius = (usual: number) =>
  z.number().min(-10).max(50).default(usual).meta({ unit: '°C', onPage: true });

/** Limits at the brush; the paint maker’s sheet comes before each of them. */
export const applicationSettings = z
  .strictObject({
    coldestC: celsius(5).describe('colder than this is no; common practice, no source'),
    hottestC: celsius(32).describe('hotter than this is no; a US forest products note'),
    verySlowBelowC: celsius(10).describe(
      'below this a coat is very slow; common practice, no source',
    ),
    slowBelowC: celsius(15).describe('below this a coat is slow; common practice, no source'),
    warmAboveC: celsius(25).describe('above this a coat skins; common practice, no source'),
    dampestRhPercent: z
      .number()
      .min(30)
      .max(100)
      .default(85)
      .meta({ unit: '%', onPage: true })
      .describe('damper air is no, at the brush and in the first night'),
    dewMarginK: z
      .number()
      .min(0)
      .max(15)
      .default(3)
      .meta({ unit: 'K', onPage: true })
      .describe('least distance of the boards from the dew point of the air'),
    dampestWoodPercent: z
      .number()
      .min(8)
      .max(30)
      .default(16)
      .meta({ unit: '% of oven-dry mass', onPage: true })
      .describe('wettest timber that is coated, at the surface'),
    boardsMeasured: z
      .int()
      .min(1)
      .max(50)
      .default(5)
      .meta({ onPage: true })
      .describe('boards that are measured, of which the worst decides; common practice, no source'),
    moistureDays: z
      .number()
      .min(0)
      .max(60)
      .default(3)
      .meta({ unit: 'd', onPage: true })
      .describe('how long figures of a hand meter hold; an assumption'),
    stopBeforeDewHours: z
      .number()
      .min(0)
      .max(12)
      .default(2)
      .meta({ unit: 'h', onPage: true })
      .describe('the brush is put down so long before dew or cold; a US forest products note'),
    dryBeforeRainHours: z
      .number()
      .min(0)
      .max(240)
      .default(24)
      .meta({ unit: 'h', onPage: true })
      .describe('a coat outdoors is to have had so long before rain; common practice, no source'),
    fromEndMm: z
      .number()
      .min(0)
      .max(2000)
      .default(300)
      .meta({ unit: 'mm', onPage: true })
      .describe('how far from the end they are measured; common practice, no source'),
  })
  .refine(
    ({ coldestC, verySlowBelowC, slowBelowC, warmAboveC, hottestC }) =>
      coldestC <= verySlowBelowC &&
      verySlowBelowC <= slowBelowC &&
      slowBelowC <= warmAboveC &&
      warmAboveC <= hottestC,
    {
      message:
        'coldestC, verySlowBelowC, slowBelowC, warmAboveC and hottestC must rise in this order',
      params: {
        fault: 'must-rise',
        names: ['coldestC', 'verySlowBelowC', 'slowBelowC', 'warmAboveC', 'hottestC'].map(
          (name) => `application.${name}`,
        ),
      },
    },
  )
  .prefault({});
