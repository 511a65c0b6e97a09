import { z } from 'zod';
import { Moment } from './moment.ts';
import { Sentence } from './sentence.ts';

const kinds = z.enum(['text', 'number', 'whole-number', 'yes-or-no', 'choice', 'list', 'table']);

/** A setting in force: its value, where that came from, and how it is changed. */
export const ListedSetting = z.object({
  name: z.string().describe('its path with dots'),
  section: z.string().describe('table of the file it stands in; empty at the top'),
  key: z.string(),
  description: z.string().describe('what it does, in English'),
  takes: kinds,
  choices: z.array(z.string()).describe('what a choice can be; empty for everything else'),
  least: z.number().nullable(),
  most: z.number().nullable(),
  unit: z.string().nullable(),
  entries: z
    .object({
      takes: kinds,
      choices: z.array(z.string()),
      least: z.number().nullable(),
      most: z.number().nullable(),
      fewest: z.int().nullable(),
      atMost: z.int().nullable().describe('so many of them'),
    })
    .nullable()
    .describe('what a list consists of; null for everything else'),
  mayBeNothing: z.boolean().describe('whether it can have no value at all'),
  value: z.json().describe('in force; null for none. What is secret is never told'),
  isSecret: z.boolean(),
  isSet: z.boolean().describe('whether it has a value at all'),
  default: z.json(),
  from: z
    .enum(['default', 'file', 'chosen', 'environment', 'flag'])
    .describe('what the value came from; chosen: on the settings page'),
  source: z
    .string()
    .nullable()
    .describe(
      'name of the file, of the variable, of the flag or of the device; null for a default',
    ),
  line: z.int().nullable().describe('in the file'),
  holds: z.enum(['at-once', 'next-start']).describe('when a change holds'),
  waits: z.boolean().describe('true where it was changed since, and a start is awaited'),
  next: z.json().describe('from the next start on; the same as value where nothing waits'),
  changes: z
    .enum(['here', 'by-hand', 'at-start'])
    .describe('here: by PATCH; by-hand: in the file alone; at-start: a flag or variable gives it'),
  isChosen: z.boolean().describe('whether a choice on the page goes into it'),
  chosenAt: Moment.nullable().describe('when it was chosen; null where that is not known'),
  chosenBy: z.string().nullable().describe('the device; null for the computer itself'),
  otherwise: z.json().describe('what file or default say: what it goes back to'),
  otherwiseFrom: z.enum(['default', 'file']),
  toml: z.string().describe('lines for the settings file, with the value in force or an example'),
});
export type ListedSetting = z.infer<typeof ListedSetting>;

export const SettingList = z.object({
  file: z.string().nullable().describe('the settings file in use; null without one'),
  settings: z.array(ListedSetting),
  chosenFault: Sentence.nullable().describe('why what was chosen on the page cannot be read'),
  setAside: z
    .array(z.object({ name: z.string(), value: z.json(), because: Sentence }))
    .describe('what was chosen on the page and does not hold, and why'),
});
export type SettingList = z.infer<typeof SettingList>;

const chosenValue = z.union([
  z.string().max(1000),
  z.number(),
  z.boolean(),
  z.array(z.union([z.string().max(1000), z.number()])).max(100),
]);

/** What is to be chosen, all at once or nothing of it. */
export const SettingWish = z.strictObject({
  settings: z
    .record(z.string().max(100), chosenValue.nullable())
    .describe('values by name; null: back to what the file or the default says'),
  nothing: z
    .array(z.string().max(100))
    .max(100)
    .optional()
    .describe('names of settings that are to have no value at all'),
});
export type SettingWish = z.infer<typeof SettingWish>;
