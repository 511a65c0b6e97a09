import { z } from 'zod';

export const httpSettings = z
  .strictObject({
    host: z.string().default('0.0.0.0').describe('address the pages are served on'),
    port: z.int().min(0).max(65_535).default(8080).describe('0 picks a free port'),
    maxStreams: z
      .int()
      .min(1)
      .max(10_000)
      .default(100)
      .meta({ live: true })
      .describe('pages that are kept up to date at once; a further one is refused'),
    names: z
      .array(z.string().regex(/^[A-Za-z0-9.-]{1,253}$/))
      .default([])
      .describe(
        'names besides its own under which the pages are opened, for example shed.example; requests under any other name are refused. IP addresses and localhost always work',
      ),
    tls: z
      .boolean()
      .default(false)
      .describe('whether the pages are served over TLS (https); see the section tls'),
    maxRequestsPerMinute: z
      .int()
      .min(30)
      .max(1_000_000)
      .default(1200)
      .meta({ unit: '1/min' })
      .describe('requests of one device that are answered; the computer itself is not counted'),
    maxConnections: z
      .int()
      .min(10)
      .max(100_000)
      .default(1000)
      .describe('connections that are open at once; one device may have a quarter of them'),
    requestSeconds: z
      .int()
      .min(5)
      .max(600)
      .default(30)
      .meta({ unit: 's' })
      .describe('longest time for a request to come in whole, its head within half of it'),
  })
  .prefault({});
