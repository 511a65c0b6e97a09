import { z } from 'zod';

export const backupSettings = z
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
      .meta({ unit: 'local time, hh:mm', onPage: true })
      .describe(
        'when; a computer that was off then makes up for it at this minute of an hour when it is on',
      ),
  })
  .prefault({});
