import { z } from 'zod';

/** Every setting: its default, its unit, its range and what it does. The one place they are told. */
export const Settings = z.strictObject({
  data: z.string().min(1).default('./data').describe('folder that holds the database'),
  site: z
    .string()
    .regex(/^[A-Za-z0-9._-]{1,64}$/)
    .default('shed')
    .describe('name of this site in MQTT topics'),
  http: z
    .strictObject({
      host: z.string().default('0.0.0.0').describe('address the pages are served on'),
      port: z.int().min(0).max(65_535).default(8080).describe('0 picks a free port'),
    })
    .prefault({}),
  mqtt: z
    .strictObject({
      host: z.string().default('0.0.0.0').describe('address of the embedded broker'),
      port: z.int().min(0).max(65_535).default(1883).describe('0 picks a free port'),
      external: z
        .url({ protocol: /^mqtts?$/ })
        .nullable()
        .default(null)
        .describe('mqtt://host:port of another broker; the embedded one then stays off'),
      clientId: z
        .string()
        .regex(/^[A-Za-z0-9._-]{1,64}$/)
        .nullable()
        .default(null)
        .describe('name of the session at an external broker; made from the site when left out'),
      maxPayloadBytes: z
        .int()
        .min(64)
        .max(1_048_576)
        .default(65_536)
        .meta({ unit: 'bytes' })
        .describe('a larger message is refused as a reading'),
    })
    .prefault({}),
  commit: z
    .strictObject({
      spacingMs: z
        .int()
        .min(0)
        .max(5000)
        .default(10)
        .meta({ unit: 'ms' })
        .describe(
          'least time between two commits under steady flow; more spares an SD card and costs latency',
        ),
      groupSize: z
        .int()
        .min(1)
        .max(10_000)
        .default(400)
        .describe('readings waiting at which a commit is not put off any longer'),
    })
    .prefault({}),
  cure: z
    .strictObject({
      ruling: z
        .enum(['nurse-saul', 'arrhenius'])
        .default('nurse-saul')
        .describe('the rate that verdicts go by; the other one is carried beside it'),
      datumC: z
        .number()
        .min(-20)
        .max(15)
        .default(5)
        .meta({ unit: '°C' })
        .describe('temperature below which the degree-hour sum stands still'),
      activationEnergyJPerMol: z
        .number()
        .min(40_000)
        .max(70_000)
        .default(50_000)
        .meta({ unit: 'J/mol' })
        .describe('of the Arrhenius rate'),
      maxGapHours: z
        .number()
        .min(0.1)
        .max(48)
        .default(3)
        .meta({ unit: 'h' })
        .describe('longest time between readings that still counts'),
      capC: z
        .number()
        .min(20)
        .max(60)
        .default(28)
        .meta({ unit: '°C' })
        .describe('warmer than this adds nothing to what verdicts count: a hot fat coat skins'),
      boardSpread: z
        .number()
        .min(0)
        .max(1)
        .default(0)
        .describe(
          'spread between the boards of one coat, as the standard deviation of the logarithm of what they need; above 0 verdicts go by the slowest tenth of the boards where tests were felt on a middling one',
        ),
      testAt: z.number().min(0.05).max(0.95).default(0.5).describe('probability that opens a test'),
      readyAt: z.number().min(0.5).max(0.99).default(0.9).describe('probability that says ready'),
    })
    .refine(({ testAt, readyAt }) => testAt <= readyAt, {
      message: 'must not be above readyAt: a test is asked for before a rack is ready',
      path: ['testAt'],
    })
    .prefault({}),
  solvent: z
    .strictObject({
      limitPpm: z
        .number()
        .positive()
        .max(1000)
        .nullable()
        .default(null)
        .meta({ unit: 'ppm' })
        .describe(
          'exposure limit for turpentine by your local rules; the lowest published one, 20 ppm, when left out',
        ),
    })
    .prefault({}),
  log: z
    .strictObject({
      level: z
        .enum(['debug', 'info', 'warn', 'error', 'silent'])
        .default('info')
        .describe('how much is logged, on standard error'),
    })
    .prefault({}),
});
export type Settings = z.infer<typeof Settings>;
