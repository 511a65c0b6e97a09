import { z } from 'zod';
import { Batch } from './batch.ts';
import { Gate } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { Photo } from './photo.ts';

/** The air that a coat had, by the hour; null where it was never read. */
export const Conditions = z.object({
  hours: z.number().describe('hours with readings').meta({ unit: 'h' }),
  tempC: z
    .object({ lowest: z.number(), mean: z.number(), highest: z.number() })
    .nullable()
    .meta({ unit: '°C' }),
  rhPercent: z
    .object({ lowest: z.number(), mean: z.number(), highest: z.number() })
    .nullable()
    .meta({ unit: '%' }),
  coldHours: z.number().meta({ unit: 'h' }).describe('below 5 °C'),
  dampHours: z.number().meta({ unit: 'h' }).describe('above 85 % humidity'),
  nearDewHours: z.number().meta({ unit: 'h' }).describe('less than 3 K above the dew point'),
});
export type Conditions = z.infer<typeof Conditions>;

const ByGate = z.partialRecord(Gate, Moment.nullable());

export const ReportCoat = z.object({
  coatId: Id,
  name: z.string(),
  areaM2: z.number().meta({ unit: 'm²' }),
  spreadingM2PerL: z.number().nullable().meta({ unit: 'm²/L' }),
  atTheBrush: Conditions.describe('from begun to finished, or the last hour before'),
  firstDay: Conditions.describe('the first 24 hours after the last board'),
  whileCuring: Conditions,
  reached: ByGate.describe('when each job became as likely as not to be possible'),
});
export type ReportCoat = z.infer<typeof ReportCoat>;

export const BatchReport = z.object({
  madeAt: Moment,
  site: z.string(),
  batch: Batch,
  placeNames: z.record(z.string(), z.string()),
  coats: z.array(ReportCoat),
  photos: z.array(Photo),
});
export type BatchReport = z.infer<typeof BatchReport>;

const Days = z.object({
  coats: z.int(),
  shortest: z.number(),
  median: z.number(),
  longest: z.number(),
});

export const Season = z.object({
  madeAt: Moment,
  from: Moment.nullable(),
  to: Moment.nullable(),
  rows: z.array(
    z.object({
      month: z.string().describe('yyyy-mm on the site’s calendar'),
      placeId: Id,
      placeName: z.string(),
      coats: z.int(),
      days: z.record(Gate, Days.nullable()).meta({ unit: 'd' }),
      usedL: z.number().nullable().meta({ unit: 'L' }),
      boardsPerLitre: z.number().nullable(),
      m2PerLitre: z.number().nullable().meta({ unit: 'm²/L' }),
    }),
  ),
  modelAgainstTests: z.object({
    tests: z.int(),
    brier: z.number().nullable().describe('mean squared error of the chances; 0.25 is a coin toss'),
    bins: z.array(
      z.object({
        from: z.number(),
        to: z.number(),
        tests: z.int(),
        passed: z.int(),
        meanProbability: z.number(),
      }),
    ),
  }),
});
export type Season = z.infer<typeof Season>;

export const SeasonQuery = z.strictObject({ from: Moment.optional(), to: Moment.optional() });
export type SeasonQuery = z.infer<typeof SeasonQuery>;
