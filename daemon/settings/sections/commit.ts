import { z } from 'zod';

export const commitSettings = z
  .strictObject({
    spacingMs: z
      .int()
      .min(0)
      .max(5000)
      .default(5000)
      .meta({ unit: 'ms', onPage: true })
      .describe(
        'longest that a reading waits for others under steady flow before it is written and acknowledged; the first after a quiet while, bursts, replays and whoever waits for an answer are not put off. It spares an SD card: at one reading a second 5000 writes about 180 MB a day (up to twice that was seen beside much other writing), 2000 about 330, 0 about 600; at 20 readings a second 5000 writes about 430 to 620 MB a day, 2000 about 1000, and 1000 about 1400. Many nodes give up after 10 s',
      ),
    groupSize: z
      .int()
      .min(1)
      .max(10_000)
      .default(400)
      .meta({ onPage: true })
      .describe(
        'readings waiting at which a commit is not put off any longer, whatever the spacing',
      ),
  })
  .prefault({});
