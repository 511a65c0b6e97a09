import { z } from 'zod';

export const photoSettings = z
  .strictObject({
    maxMiB: z
      .int()
      .min(0)
      .max(100_000)
      .default(200)
      .meta({ unit: 'MiB', onPage: true })
      .describe(
        'what the photos of all batches may take together; they are part of the database and of each backup',
      ),
  })
  .prefault({});
