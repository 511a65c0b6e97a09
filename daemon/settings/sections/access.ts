import { z } from 'zod';

export const accessSettings = z
  .strictObject({
    look: z
      .enum(['open', 'log-in'])
      .default('open')
      .describe(
        'open: anyone on the local network may look; log-in: looking needs a PIN or a paired tablet as soon as a PIN is set, and until then is for the computer itself',
      ),
    idleHours: z
      .number()
      .min(0.1)
      .max(8760)
      .default(24)
      .meta({ unit: 'h' })
      .describe('a log-in ends when it was not used for so long'),
    longestDays: z
      .number()
      .min(0.1)
      .max(365)
      .default(30)
      .meta({ unit: 'd' })
      .describe(
        'a log-in ends after so long in any case; paired tablets stay until they are removed',
      ),
  })
  .prefault({});
