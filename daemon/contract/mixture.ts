import { z } from 'zod';
import { Id } from './moment.ts';
import { Sentence } from './sentence.ts';

const part = z.coerce.number().min(0).max(1000).optional();
const litres = z.coerce.number().min(0).max(1e6).optional().meta({ unit: 'L' });
const millimetres = z.coerce.number().min(1).max(2000).optional().meta({ unit: 'mm' });

export const MixtureQuery = z
  .strictObject({
    areaM2: z.coerce.number().min(0.0001).max(1e6).optional().meta({ unit: 'm²' }),
    spreadingM2PerL: z.coerce.number().min(0.01).max(100).optional().meta({ unit: 'm²/L' }),
    batchId: Id.optional().describe('instead of area, spreading rate and parts: those of its plan'),
    coat: z.coerce
      .number()
      .int()
      .min(0)
      .max(9)
      .optional()
      .describe('index in the plan; the next coat when left out'),
    paint: part,
    rawLinseedOil: part,
    turpentine: part,
    lossPercent: z.coerce.number().min(0).max(100).optional().meta({ unit: '%' }),
    usedL: litres.describe('litres used, to tell what is left'),
    potDiameterMm: millimetres.describe('inside width of the pot, at the bottom where it tapers'),
    potTopDiameterMm: millimetres.describe('inside width at the top, where it differs'),
    potHeightMm: millimetres.describe('inside height'),
    fillPercent: z.coerce
      .number()
      .min(10)
      .max(100)
      .optional()
      .meta({ unit: '%' })
      .describe('how full a pot is mixed; 80 when left out (common practice, no source)'),
    paintDensityKgPerL: z.coerce
      .number()
      .min(0.5)
      .max(4)
      .optional()
      .meta({ unit: 'kg/L' })
      .describe('of the paint, from its tin'),
    havePaintL: litres.describe('paint in the tins'),
    haveRawLinseedOilL: litres.describe('raw linseed oil in the tins'),
    haveTurpentineL: litres.describe('turpentine in the tins'),
  })
  .superRefine(({ areaM2, spreadingM2PerL, batchId }, context) => {
    if (batchId !== undefined) return;
    for (const [name, value] of Object.entries({ areaM2, spreadingM2PerL })) {
      if (value !== undefined) continue;
      context.addIssue({
        code: 'custom',
        message: 'must be given where there is no batchId',
        params: { fault: 'without-batch' },
        path: [name],
      });
    }
  });
export type MixtureQuery = z.infer<typeof MixtureQuery>;

export const MixturePart = z.enum(['paint', 'rawLinseedOil', 'turpentine']);
export type MixturePart = z.infer<typeof MixturePart>;

const Amount = z.object({
  part: MixturePart,
  words: z.string(),
  wordsSaid: Sentence,
  litres: z.number().meta({ unit: 'L' }),
  millilitres: z.int().meta({ unit: 'mL' }),
  grams: z.int().meta({ unit: 'g' }).describe('for the kitchen scale'),
  densityKgPerL: z.number().meta({ unit: 'kg/L' }),
  densityFrom: z.string().describe('where the density comes from'),
  densityFromSaid: Sentence,
});

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
  keepingSaid: z.array(Sentence),
  areaM2: z.number().meta({ unit: 'm²' }),
  spreadingM2PerL: z.number().meta({ unit: 'm²/L' }),
  coat: z.int().nullable().describe('index in the plan; null without a batch'),
  coatName: z.string().nullable().describe('of the plan; null without a batch'),
  amounts: z.array(Amount).describe('for the whole area, what is in the mixture only'),
  pot: z
    .object({
      holdsL: z
        .number()
        .nullable()
        .meta({ unit: 'L' })
        .describe('to the brim; null without height'),
      fills: z.int().describe('how many pots of this size it takes, all alike'),
      fillL: z.number().meta({ unit: 'L' }),
      marks: z
        .array(Amount.extend({ stickCm: z.number().meta({ unit: 'cm' }) }))
        .describe('one pot: pour each part until the stick is wet up to its mark'),
    })
    .nullable()
    .describe('null where nobody said how wide the pot is'),
  steps: z.array(z.string()).describe('what is done in which order'),
  stepsSaid: z.array(Sentence),
  enough: z
    .object({
      word: z.enum(['yes', 'no']),
      words: z.string(),
      wordsSaid: Sentence,
      missing: z.array(z.object({ part: MixturePart, litres: z.number() })),
      boards: z.int().nullable().describe('how many boards it reaches for; null without a batch'),
    })
    .nullable()
    .describe('whether the tins reach for the area; null where nobody said what is in them'),
  boardsPerLitre: z
    .object({
      planned: z.number(),
      soFar: z.number().nullable().describe('by what was used for such coats until now'),
      soFarM2PerL: z.number().nullable().meta({ unit: 'm²/L' }),
    })
    .nullable()
    .describe('null without a batch'),
});
export type MixtureReply = z.infer<typeof MixtureReply>;

const sizes = z
  .string()
  .regex(/^\d{1,4}(\.\d{1,3})?(,\d{1,4}(\.\d{1,3})?){0,9}$/, 'write sizes in litres like 10,5,1')
  .optional()
  .meta({ unit: 'L' });

export const ShoppingQuery = z.strictObject({
  lossPercent: z.coerce
    .number()
    .min(0)
    .max(90)
    .optional()
    .meta({ unit: '%' })
    .describe('what stays in pots and brushes; 5 when left out (common practice, no source)'),
  keepPrimerL: z.coerce
    .number()
    .min(0)
    .max(100)
    .optional()
    .meta({ unit: 'L' })
    .describe('primer kept for cut ends; 1 when left out'),
  paintTinsL: sizes.describe('sizes that paint is sold in'),
  oilTinsL: sizes.describe('sizes that raw linseed oil is sold in'),
  turpentineTinsL: sizes.describe('sizes that turpentine is sold in'),
});
export type ShoppingQuery = z.infer<typeof ShoppingQuery>;

export const ShoppingList = z.object({
  lossPercent: z.number().meta({ unit: '%' }),
  keepPrimerL: z.number().meta({ unit: 'L' }),
  coats: z
    .array(
      z.object({
        batchId: Id,
        batchName: z.string(),
        coatName: z.string(),
        areaM2: z.number().meta({ unit: 'm²' }),
        totalL: z.number().meta({ unit: 'L' }),
      }),
    )
    .describe('every coat that is still to come on a batch that is not closed'),
  lines: z.array(
    z.object({
      part: MixturePart,
      words: z.string(),
      wordsSaid: Sentence,
      neededL: z.number().meta({ unit: 'L' }),
      tins: z
        .array(z.object({ sizeL: z.number(), count: z.int() }))
        .nullable()
        .describe('null where no sizes were given'),
      boughtL: z.number().nullable().meta({ unit: 'L' }),
    }),
  ),
});
export type ShoppingList = z.infer<typeof ShoppingList>;
