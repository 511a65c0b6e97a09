import { z } from 'zod';

/** What a site is called on its pages, and how sensors reach it. */
export const Site = z.object({
  topicName: z.string().describe('name in MQTT topics; a setting'),
  name: z.string().nullable().describe('name on the pages; null: that of the topics stands there'),
  timeZone: z
    .string()
    .describe('IANA name of the zone that days and clock times are of; a setting'),
  timeZoneFrom: z
    .enum(['settings', 'computer'])
    .describe('whether the zone was set, or is that of the computer'),
  broker: z.object({
    kind: z.enum(['embedded', 'external']),
    port: z
      .int()
      .nullable()
      .describe('that sensors connect to; null where it is not ours, or TLS only'),
    tlsPort: z.int().nullable(),
  }),
  addresses: z
    .array(z.string())
    .describe('IPv4 addresses of the computer on its networks, as a sensor node is given them'),
});
export type Site = z.infer<typeof Site>;

export const SiteChange = z.strictObject({
  name: z
    .string()
    .trim()
    .min(1)
    .max(80)
    .nullable()
    .optional()
    .describe('null: that of the topics; the topics themselves stay as they are'),
});
export type SiteChange = z.infer<typeof SiteChange>;

/** The simulated shed beside this site: a daemon of its own, with data of its own. */
export const SimulatedShed = z.object({
  state: z.enum(['off', 'starting', 'running']),
  port: z.int().nullable().describe('of its page, on this computer; null while it does not run'),
  speed: z.number().nullable().describe('how many times faster than life'),
  fault: z.string().nullable().describe('why the last one ended by itself; null where it did not'),
});
export type SimulatedShed = z.infer<typeof SimulatedShed>;

export const NewSimulatedShed = z.strictObject({
  speed: z.number().min(1).max(10_000).optional().describe('times faster than life (900)'),
});
