import { z } from 'zod';
import { accessSettings } from './sections/access.ts';
import { applicationSettings } from './sections/application.ts';
import { backupSettings } from './sections/backup.ts';
import { commitSettings } from './sections/commit.ts';
import { cureSettings } from './sections/cure.ts';
import { discoverySettings } from './sections/discovery.ts';
import { httpSettings } from './sections/http.ts';
import { languageSetting } from './sections/language.ts';
import { logSettings } from './sections/log.ts';
import { mqttSettings } from './sections/mqtt.ts';
import { noticeSettings } from './sections/notices.ts';
import { photoSettings } from './sections/photos.ts';
import { placeSettings } from './sections/place.ts';
import { solventSettings } from './sections/solvent.ts';
import { storageSettings } from './sections/storage.ts';
import { tlsSettings } from './sections/tls.ts';
import { tradeSettings } from './sections/trade.ts';
import { workSettings } from './sections/work.ts';

function isTimeZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }) !== null;
  } catch {
    return false;
  }
}

/** Every setting: its default, its unit, its range and what it does. The one place they are told. */
export const Settings = z.strictObject({
  data: z.string().min(1).default('./data').describe('folder that holds the database'),
  site: z
    .string()
    .regex(/^[A-Za-z0-9._-]{1,64}$/)
    .default('shed')
    .describe('name of this site in MQTT topics'),
  timeZone: z
    .string()
    .refine(isTimeZone, {
      message: 'must be a time zone like Europe/Stockholm',
      params: { fault: 'no-time-zone' },
    })
    .nullable()
    .default(null)
    .meta({ onPage: true })
    .describe(
      'IANA name of the time zone that days and clock times are of; the computer’s when left out',
    ),
  language: languageSetting,
  access: accessSettings,
  http: httpSettings,
  mqtt: mqttSettings,
  discovery: discoverySettings,
  commit: commitSettings,
  cure: cureSettings,
  solvent: solventSettings,
  place: placeSettings,
  notices: noticeSettings,
  work: workSettings,
  photos: photoSettings,
  application: applicationSettings,
  trade: tradeSettings,
  backup: backupSettings,
  storage: storageSettings,
  tls: tlsSettings,
  log: logSettings,
});
export type Settings = z.infer<typeof Settings>;
