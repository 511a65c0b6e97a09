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
      maxStreams: z
        .int()
        .min(1)
        .max(10_000)
        .default(100)
        .describe('pages that are kept up to date at once; a further one is refused'),
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
      maxSensors: z
        .int()
        .min(1)
        .max(100_000)
        .default(2000)
        .describe('sensors that are known at most; the readings of further ones are refused'),
      maxPayloadBytes: z
        .int()
        .min(64)
        .max(1_048_576)
        .default(65_536)
        .meta({ unit: 'bytes' })
        .describe('a larger message is refused as a reading'),
      maxPacketBytes: z
        .int()
        .min(4096)
        .max(16_777_216)
        .default(2_097_152)
        .meta({ unit: 'bytes' })
        .describe('the embedded broker reads no larger packet: the connection is cut instead'),
      maxConnections: z
        .int()
        .min(1)
        .max(10_000)
        .default(1000)
        .describe('connections that the embedded broker has open at once'),
      connectSeconds: z
        .int()
        .min(1)
        .max(600)
        .default(10)
        .meta({ unit: 's' })
        .describe('longest time between connecting to the embedded broker and saying CONNECT'),
      maxUnderWay: z
        .int()
        .min(100)
        .max(100_000)
        .default(5000)
        .describe(
          'messages that may wait for the disk at once; beyond that the embedded broker reads from no publisher until some are written',
        ),
      maxUnreadBytes: z
        .int()
        .min(65_536)
        .max(16_777_216)
        .default(1_048_576)
        .meta({ unit: 'bytes' })
        .describe(
          'what may wait in the embedded broker for a client that does not read; beyond that it is cut off',
        ),
      maxRetained: z
        .int()
        .min(0)
        .max(100_000)
        .default(1000)
        .describe('topics whose last message the embedded broker keeps for clients'),
    })
    .prefault({}),
  commit: z
    .strictObject({
      spacingMs: z
        .int()
        .min(0)
        .max(5000)
        .default(5000)
        .meta({ unit: 'ms' })
        .describe(
          'longest that a reading waits for others under steady flow before it is written and acknowledged; the first after a quiet while, bursts, replays and whoever waits for an answer are not put off. It spares an SD card: at one reading a second 5000 writes about 160 MB a day, 2000 about 330, 0 about 600; at 20 a second about 620, 1000 and (1000 ms) 1400. Many nodes give up after 10 s',
        ),
      groupSize: z
        .int()
        .min(1)
        .max(10_000)
        .default(400)
        .describe(
          'readings waiting at which a commit is not put off any longer, whatever the spacing',
        ),
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
  backup: z
    .strictObject({
      folder: z
        .string()
        .min(1)
        .nullable()
        .default(null)
        .describe(
          'where nightly backups go; `backups` in the data folder when left out, better a folder on another disk',
        ),
      keep: z
        .int()
        .min(0)
        .max(3650)
        .default(14)
        .describe(
          'nightly backups that are kept, each as large as the database and written whole; 0 makes none',
        ),
      at: z
        .string()
        .regex(/^([01]\d|2[0-3]):[0-5]\d$/)
        .default('03:40')
        .meta({ unit: 'local time, hh:mm' })
        .describe(
          'when; a computer that was off then makes up for it at this minute of an hour when it is on',
        ),
    })
    .prefault({}),
  storage: z
    .strictObject({
      readingDays: z
        .int()
        .min(400)
        .nullable()
        .default(null)
        .meta({ unit: 'd' })
        .describe(
          'how long single readings are kept; for ever when left out. A year of 20 sensors with 3 quantities a minute takes about 140 MB. What lies further back keeps its lowest and highest of each hour, and cannot be reckoned anew; readings that arrive for it are counted as repeated',
        ),
      hourDays: z
        .int()
        .min(400)
        .nullable()
        .default(null)
        .meta({ unit: 'd' })
        .describe(
          'how long the lowest, highest and sum of each hour are kept, at least as long as readings; of what lies further back those of each day stay',
        ),
      dayDays: z
        .int()
        .min(400)
        .nullable()
        .default(null)
        .meta({ unit: 'd' })
        .describe('how long those of each day are kept'),
      lowSpaceMiB: z
        .int()
        .min(0)
        .default(500)
        .meta({ unit: 'MiB' })
        .describe(
          'with less room than this on the disk of the data folder, or than a twentieth of a small disk, the site says so',
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
