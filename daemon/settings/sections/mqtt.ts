import { z } from 'zod';

export const mqttSettings = z
  .strictObject({
    host: z.string().default('0.0.0.0').describe('address of the embedded broker'),
    port: z.int().min(0).max(65_535).default(1883).describe('0 picks a free port'),
    tlsPort: z
      .int()
      .min(0)
      .max(65_535)
      .nullable()
      .default(null)
      .describe(
        'port of the embedded broker for TLS, mostly 8883; none when left out. See the section tls',
      ),
    plain: z
      .boolean()
      .default(true)
      .describe('whether the embedded broker also listens without TLS; false only with a tlsPort'),
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
  .refine(({ plain, tlsPort }) => plain || tlsPort !== null, {
    message: 'leaves no port at all: give a tlsPort',
    path: ['plain'],
  })
  .prefault({});
