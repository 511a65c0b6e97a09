import { z } from 'zod';

export const solventSettings = z
  .strictObject({
    limitPpm: z
      .number()
      .positive()
      .max(1000)
      .nullable()
      .default(null)
      .meta({ unit: 'ppm', live: true, onPage: true })
      .describe(
        'exposure limit for turpentine by your local rules; the lowest published one, 20 ppm, when left out',
      ),
  })
  .prefault({});
