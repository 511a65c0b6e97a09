import { z } from 'zod';
import { Gate, GateVerdict, Reason, Stage } from './gate.ts';
import { Id, Moment } from './moment.ts';
import { Face, Mixture } from './plan.ts';

/** How much was used, as somebody at the bench tells it. */
export const PotsUsed = z
  .strictObject({
    count: z.int().min(1).max(1000).describe('pots that were mixed, the last one too'),
    litresEach: z.number().positive().max(1000).meta({ unit: 'L' }),
    lastLeftPercent: z
      .number()
      .min(0)
      .max(100)
      .optional()
      .meta({ unit: '%' })
      .describe('what is left in the last one, of what was mixed in it; nothing when left out'),
    lastLeftCm: z
      .number()
      .min(0)
      .max(200)
      .optional()
      .meta({ unit: 'cm' })
      .describe('or how deep it stands, together with the pot'),
    pot: z
      .strictObject({
        bottomMm: z.number().positive().max(2000).meta({ unit: 'mm' }),
        topMm: z.number().positive().max(2000).optional().meta({ unit: 'mm' }),
        heightMm: z.number().positive().max(2000).optional().meta({ unit: 'mm' }),
      })
      .optional()
      .describe('inside measures'),
  })
  .refine(({ lastLeftPercent, lastLeftCm }) => !(lastLeftPercent && lastLeftCm), {
    message: 'give either lastLeftPercent or lastLeftCm',
    params: { fault: 'left-twice' },
    path: ['lastLeftCm'],
  });

export const NewCoat = z.strictObject({
  id: Id.optional(),
  coat: z.int().min(0).max(9).describe('index in the coating plan, from 0'),
  finishedAt: Moment.describe('the last board; cure counts from here'),
  begunAt: Moment.nullable().optional(),
  faces: z.array(Face).min(1).nullable().optional().describe('the plan’s faces when left out'),
  usedL: z.number().positive().max(10_000).nullable().optional().meta({ unit: 'L' }),
  pots: PotsUsed.nullable().optional().describe('instead of usedL: reckoned from the pots'),
  colour: z.string().trim().min(1).max(80).nullable().optional(),
  tin: z.string().trim().min(1).max(80).nullable().optional(),
  tinId: Id.nullable().optional().describe('a tin that was entered; it gives colour and name'),
});
export type NewCoat = z.infer<typeof NewCoat>;

/** The cure model that a coat’s sum was made with, so that anyone can check it. */
export const CoatModel = z.object({
  rate: z.enum(['nurse-saul', 'arrhenius']),
  datumC: z.number().nullable().meta({ unit: '°C' }).describe('null for Arrhenius'),
  maxGapHours: z.number().meta({ unit: 'h' }),
});

export const Coat = z.object({
  id: Id,
  coat: z.int(),
  name: z.string(),
  begunAt: Moment.nullable(),
  finishedAt: Moment,
  curedUntil: Moment.nullable().describe('when the next coat went on; null while it is the last'),
  mixture: Mixture,
  faces: z.array(Face),
  usedL: z.number().nullable(),
  colour: z.string().nullable(),
  tin: z.string().nullable(),
  tinId: Id.nullable(),
  planId: Id.describe('the version of the plan that it was put on by'),
  areaM2: z.number().meta({ unit: 'm²' }).describe('that was coated, of all boards then'),
  spreadingM2PerL: z
    .number()
    .nullable()
    .meta({ unit: 'm²/L' })
    .describe('that came of it; null when nobody said what was used'),
  inherited: z.boolean().describe('true where it went on before these boards were split off'),
  speaksFor: z
    .object({ batchId: Id, name: z.string() })
    .nullable()
    .describe('the boards put to this batch that are slower, where these speak'),
  model: CoatModel,
  degreeHours: z.number().meta({ unit: '°C·h' }),
  degreeHoursLow: z.number().meta({ unit: '°C·h' }),
  degreeHoursHigh: z.number().meta({ unit: '°C·h' }),
  equivalentHours: z.number().meta({ unit: 'h' }).describe('hours at 20 °C'),
  arrheniusEquivalentHours: z
    .number()
    .meta({ unit: 'h' })
    .describe('hours at 20 °C by the Arrhenius rate carried beside the sum'),
  coveredHours: z.number().meta({ unit: 'h' }),
  gapHours: z.number().meta({ unit: 'h' }).describe('hours without readings, counted to now'),
  requiredDegreeHours: z
    .number()
    .meta({ unit: '°C·h' })
    .describe('what recoating is as likely as not to need'),
  stage: Stage,
  cautions: z.array(Reason).describe('about the solvent of a fresh coat; empty later'),
  gates: z.object({
    turn: GateVerdict,
    stack: GateVerdict,
    mount: GateVerdict,
    sand: GateVerdict,
    recoat: GateVerdict,
  }),
});
export type Coat = z.infer<typeof Coat>;

export const NewTouchTest = z.strictObject({
  id: Id.optional(),
  at: Moment,
  gate: Gate,
  passed: z.boolean(),
  on: z.enum(['board', 'offcut']).optional(),
  learnedBy: z
    .enum(['touch', 'outcome'])
    .optional()
    .describe('outcome: how the work itself went, for the moment it was done'),
});
export type NewTouchTest = z.infer<typeof NewTouchTest>;

export const TouchTest = z.object({
  id: Id,
  coatId: Id,
  at: Moment,
  gate: Gate,
  passed: z.boolean(),
  on: z.enum(['board', 'offcut']),
  learnedBy: z.enum(['touch', 'outcome']),
  degreeHours: z.number().meta({ unit: '°C·h' }).describe('the coat’s sum at that time'),
});
export type TouchTest = z.infer<typeof TouchTest>;

const VerdictThen = GateVerdict.pick({ verdict: true, probability: true, likely: true });

/** What a touch test changed about one job. */
export const GateChange = z.object({ gate: Gate, before: VerdictThen, after: VerdictThen });
export type GateChange = z.infer<typeof GateChange>;
