import { z } from 'zod';
import { Id, Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

export const FitToBrushQuery = z.strictObject({
  placeId: Id.describe('the shed, rack or wall that is to be coated'),
  batchId: Id.optional().describe('the boards that are to be coated: moisture, solvent, shelf'),
});
export type FitToBrushQuery = z.infer<typeof FitToBrushQuery>;

export const FitWord = z.enum(['good', 'poor', 'no', 'cannot-tell']);
export type FitWord = z.infer<typeof FitWord>;

export const FitReason = Sentence.extend({
  weight: z
    .enum(['no', 'unknown', 'poor', 'fine', 'note'])
    .describe('what it does to the word; a note does nothing'),
  figure: z.number().nullable(),
  limit: z.number().nullable(),
  unit: z.string().nullable(),
});
export type FitReason = z.infer<typeof FitReason>;

export const FitHour = z.object({
  at: Moment.describe('start of the hour'),
  word: FitWord,
  tempC: z.number().meta({ unit: '°C' }),
  errorK: z.number().meta({ unit: 'K' }).describe('one standard deviation'),
  rhPercent: z.number().nullable().meta({ unit: '%' }),
  dewMarginK: z.number().nullable().meta({ unit: 'K' }),
  rainMm: z.number().nullable().meta({ unit: 'mm' }),
  because: z.array(z.string()).describe('codes of what stands against it'),
});
export type FitHour = z.infer<typeof FitHour>;

export const FitToBrush = z.object({
  placeId: Id,
  placeName: z.string(),
  batchId: Id.nullable(),
  at: Moment,
  word: FitWord,
  words: z.string().describe('the word as a sentence'),
  wordsSaid: Sentence,
  reasons: z.array(FitReason),
  hours: z.array(FitHour),
  stopBy: Moment.nullable().describe('latest time to put the brush down; null where nothing asks'),
  stopBecause: z.string().describe('why then, or why not known'),
  stopBecauseSaid: Sentence,
  worstBoard: z
    .object({
      percent: z.number().meta({ unit: '%' }),
      boards: z.int(),
      at: Moment,
      limitPercent: z.number().meta({ unit: '%' }),
    })
    .nullable(),
  shelf: z
    .object({
      capacityM: z
        .number()
        .nullable()
        .describe(
          'null where nobody entered it; a rack told in boards counts as what lies there and the boards that still fit',
        ),
      usedM: z.number(),
      freeM: z.number().nullable(),
      neededM: z.number().nullable(),
    })
    .nullable()
    .describe('metres of board that lie on the racks of this place; null where there is none')
    .meta({ unit: 'm' }),
  fromForecast: z.boolean().describe('whether somebody’s weather forecast went into the hours'),
});
export type FitToBrush = z.infer<typeof FitToBrush>;
