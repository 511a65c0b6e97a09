import { z } from 'zod';

export const storageSettings = z
  .strictObject({
    readingDays: z
      .int()
      .min(400)
      .nullable()
      .default(null)
      .meta({ unit: 'd', live: true })
      .describe(
        'how long single readings are kept; for ever when left out. A year of 20 sensors with 3 quantities a minute takes about 125 MB. What lies further back keeps its lowest and highest of each hour, and cannot be reckoned anew; readings that arrive for it are counted as repeated',
      ),
    hourDays: z
      .int()
      .min(400)
      .nullable()
      .default(null)
      .meta({ unit: 'd', live: true })
      .describe(
        'how long the lowest, highest and sum of each hour are kept, at least as long as readings; of what lies further back those of each day stay',
      ),
    dayDays: z
      .int()
      .min(400)
      .nullable()
      .default(null)
      .meta({ unit: 'd', live: true })
      .describe('how long those of each day are kept'),
    lowSpaceMiB: z
      .int()
      .min(0)
      .default(500)
      .meta({ unit: 'MiB', live: true, onPage: true })
      .describe(
        'with less room than this on the disk of the data folder, or than a twentieth of a small disk, the site says so',
      ),
  })
  .prefault({});
