import { readFileSync } from 'node:fs';
import { parse as parseToml, TomlError } from 'smol-toml';
import { z } from 'zod';
import { Quantity } from '../../daemon/contract/quantity.ts';
import { SMALLEST_BOUND_BYTES } from './disk-queue.ts';

const name = z
  .string()
  .regex(/^[A-Za-z0-9._-]{1,64}$/, '1 to 64 of the characters A–Z a–z 0–9 . _ -');
const ohms = z.number().positive().meta({ unit: 'Ω' });

const Divider = z.strictObject({
  supplyV: z.number().positive().meta({ unit: 'V' }).describe('voltage across the whole divider'),
  referenceOhms: ohms.describe('the known resistor'),
  seriesOhms: ohms.or(z.literal(0)).default(0).describe('protection in line with the probe'),
  probeTo: z
    .enum(['ground', 'supply'])
    .default('ground')
    .describe('where the probe’s far end is wired; the known resistor has the other'),
  inputOhms: ohms
    .nullable()
    .default(null)
    .describe('what the converter’s input draws to ground, where the reference comes near it'),
});

const Channel = z
  .strictObject({
    sensor: name.describe('the sensor’s id in the topic'),
    bus: z.enum(['iio', 'one-wire', 'hwmon']).describe('which of the kernel’s interfaces'),
    device: z
      .string()
      .min(1)
      .describe('its folder, its name or label file, or its address on the bus, such as 1-0044'),
    channel: z
      .string()
      .regex(/^[a-z0-9_-]+$/)
      .nullable()
      .default(null)
      .describe('as in the file names: temp, humidityrelative, voltage0; temp1 for hwmon'),
    quantity: Quantity.nullable()
      .default(null)
      .describe('from the kind of channel when left out; resistance for a divider'),
    divider: Divider.nullable().default(null),
  })
  .refine(({ bus, channel }) => bus === 'one-wire' || channel !== null, {
    path: ['channel'],
    error: 'needed for iio and hwmon; `--list` shows which there are',
  })
  .refine(({ divider, channel }) => divider === null || (channel ?? '').startsWith('voltage'), {
    path: ['divider'],
    error: 'only a voltage channel has one',
  })
  .refine(({ divider, channel }) => divider !== null || !(channel ?? '').startsWith('voltage'), {
    path: ['divider'],
    error: 'a voltage alone is no quantity here: say what the divider is made of',
  });
export type Channel = z.infer<typeof Channel>;

/** Every setting of the program for wired sensors. */
export const AttachedSettings = z.strictObject({
  site: name.default('shed').describe('name of the site in topics'),
  mqtt: z
    .url({ protocol: /^mqtts?$/ })
    .default('mqtt://127.0.0.1:1883')
    .describe('the broker'),
  username: z.string().nullable().default(null).describe('at the broker'),
  passwordFile: z.string().nullable().default(null).describe('file that holds the password alone'),
  caFile: z
    .string()
    .nullable()
    .default(null)
    .describe('certificate that vouches for an mqtts broker'),
  periodS: z
    .number()
    .min(0.1)
    .max(3600)
    .default(60)
    .meta({ unit: 's' })
    .describe('between readings'),
  queue: z
    .strictObject({
      folder: z.string().min(1).default('./attached-queue').describe('waits here; own folder'),
      maxBytes: z
        .int()
        .min(SMALLEST_BOUND_BYTES)
        .max(4_294_967_296)
        .default(67_108_864)
        .meta({ unit: 'bytes' })
        .describe('above this the oldest is dropped, and counted'),
    })
    .prefault({}),
  channels: z
    .array(Channel)
    .default([])
    .describe('what to read; with none, what can be recognised is found by itself'),
});
export type AttachedSettings = z.infer<typeof AttachedSettings>;

/** A fault in the settings; the message says what, where and what to do. */
export class AttachedSettingsError extends Error {
  override name = 'AttachedSettingsError';
}

/**
 * Settings from a TOML file.
 *
 * @param file - null for the defaults
 * @throws AttachedSettingsError naming every fault at once
 */
export function loadAttachedSettings(file: string | null): AttachedSettings {
  const parsed = AttachedSettings.safeParse(file === null ? {} : readToml(file));
  if (parsed.success) return parsed.data;
  throw new AttachedSettingsError(
    `The settings in ${file} do not fit:\n${z.prettifyError(parsed.error)}`,
  );
}

function readToml(file: string): unknown {
  try {
    return parseToml(readFileSync(file, 'utf8'));
  } catch (cause) {
    const why =
      cause instanceof TomlError
        ? `is not TOML at line ${cause.line}, column ${cause.column}: ${cause.message}`
        : `cannot be read: ${(cause as Error).message}. Check the name.`;
    throw new AttachedSettingsError(`The settings file ${file} ${why}`, { cause });
  }
}
