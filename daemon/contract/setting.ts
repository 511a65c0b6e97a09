import { z } from 'zod';

/** A setting in force: its value, where that came from, and how it is changed. */
export const ListedSetting = z.object({
  name: z.string().describe('its path with dots'),
  section: z.string().describe('table of the file it stands in; empty at the top'),
  key: z.string(),
  description: z.string().describe('what it does, in English'),
  takes: z.enum(['text', 'number', 'whole-number', 'yes-or-no', 'choice', 'list', 'table']),
  choices: z.array(z.string()).describe('what a choice can be; empty for everything else'),
  least: z.number().nullable(),
  most: z.number().nullable(),
  unit: z.string().nullable(),
  value: z.json().describe('in force; null for none. What is secret is never told'),
  isSecret: z.boolean(),
  isSet: z.boolean().describe('whether it has a value at all'),
  default: z.json(),
  from: z.enum(['default', 'file', 'environment', 'flag']).describe('what the value came from'),
  source: z
    .string()
    .nullable()
    .describe('name of the file, of the variable or of the flag; null for a default'),
  line: z.int().nullable().describe('in the file'),
  holds: z.enum(['at-once', 'next-start']).describe('when a change of the file holds'),
  waits: z.boolean().describe('true where the file says otherwise since, and a start is awaited'),
  toml: z.string().describe('lines for the settings file, with the value in force or an example'),
});
export type ListedSetting = z.infer<typeof ListedSetting>;

export const SettingList = z.object({
  file: z.string().nullable().describe('the settings file in use; null without one'),
  settings: z.array(ListedSetting),
});
export type SettingList = z.infer<typeof SettingList>;
