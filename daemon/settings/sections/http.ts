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
  })
  .prefault({});
