import { z } from 'zod';

export const logSettings = z
  .strictObject({
    level: z
      .enum(['debug', 'info', 'warn', 'error', 'silent'])
      .default('info')
      .meta({ live: true, onPage: true })
      .describe('how much is logged, on standard error'),
  })
  .prefault({});
