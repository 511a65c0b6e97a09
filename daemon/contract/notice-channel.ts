import { z } from 'zod';
import { Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

/** How notices leave the house: what is set, without a secret, and how it goes. */
export const NoticeChannels = z.object({
  timeZone: z.string(),
  quietHours: z.object({ from: z.string(), to: z.string() }).nullable(),
  digestAt: z.string().nullable(),
  ragRepeatHours: z.number().meta({ unit: 'h' }),
  overheatC: z.number().meta({ unit: '°C' }),
  giveUpHours: z.number().meta({ unit: 'h' }),
  channels: z.array(
    z.object({
      channel: z.enum(['mqtt', 'webhook', 'mail']),
      on: z.boolean(),
      target: z.string().nullable().describe('host that it goes to; never an address with secrets'),
      heedsQuietHours: z.boolean(),
      waiting: z.int().describe('messages on their way'),
      givenUp: z.int().describe('messages of the last month that never arrived'),
      sentAt: Moment.nullable().describe('when the last one arrived'),
      lastError: z.string().nullable().describe('why the last message did not arrive'),
      lastErrorSaid: Sentence.nullable(),
    }),
  ),
});
export type NoticeChannels = z.infer<typeof NoticeChannels>;
