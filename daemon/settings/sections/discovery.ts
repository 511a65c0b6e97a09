import { z } from 'zod';

export const discoverySettings = z
  .strictObject({
    maxTopics: z
      .int()
      .min(0)
      .max(5000)
      .default(200)
      .describe(
        'topics that no rule knows and that are remembered with their last messages, in memory, for setting up sensors; 0 remembers none',
      ),
    maxBytes: z
      .int()
      .min(64)
      .max(16_384)
      .default(2048)
      .meta({ unit: 'bytes' })
      .describe('of a message are remembered; five of each topic'),
    maxRules: z
      .int()
      .min(1)
      .max(1000)
      .default(100)
      .meta({ onPage: true })
      .describe('topic rules that can be made; each topic is compared with all of them'),
  })
  .prefault({});
