import { z } from 'zod';

export const cureSettings = z
  .strictObject({
    ruling: z
      .enum(['nurse-saul', 'arrhenius'])
      .default('nurse-saul')
      .meta({ onPage: true })
      .describe('the rate that verdicts go by; the other one is carried beside it'),
    datumC: z
      .number()
      .min(-20)
      .max(15)
      .default(5)
      .meta({ unit: '°C', onPage: true })
      .describe('temperature below which the degree-hour sum stands still'),
    activationEnergyJPerMol: z
      .number()
      .min(40_000)
      .max(70_000)
      .default(50_000)
      .meta({ unit: 'J/mol', onPage: true })
      .describe('of the Arrhenius rate'),
    maxGapHours: z
      .number()
      .min(0.1)
      .max(48)
      .default(3)
      .meta({ unit: 'h', onPage: true })
      .describe('longest time between readings that still counts'),
    capC: z
      .number()
      .min(20)
      .max(60)
      .default(28)
      .meta({ unit: '°C', onPage: true })
      .describe('warmer than this adds nothing to what verdicts count: a hot fat coat skins'),
    boardSpread: z
      .number()
      .min(0)
      .max(1)
      .default(0)
      .meta({ live: true, onPage: true })
      .describe(
        'spread between the boards of one coat, as the standard deviation of the logarithm of what they need; above 0 verdicts go by the slowest tenth of the boards where tests were felt on a middling one',
      ),
    testAt: z
      .number()
      .min(0.05)
      .max(0.95)
      .default(0.5)
      .meta({ live: true, onPage: true })
      .describe('probability that opens a test'),
    readyAt: z
      .number()
      .min(0.5)
      .max(0.99)
      .default(0.9)
      .meta({ live: true, onPage: true })
      .describe('probability that says ready'),
  })
  .refine(({ testAt, readyAt }) => testAt <= readyAt, {
    message: 'must not be above readyAt: a test is asked for before a rack is ready',
    path: ['testAt'],
    params: { fault: 'must-rise', names: ['cure.testAt', 'cure.readyAt'] },
  })
  .prefault({});
