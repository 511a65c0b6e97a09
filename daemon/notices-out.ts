import type { Channel } from './notify/channel.ts';
import type { Deliverer, MessageKeeper } from './notify/deliver.ts';
import { deliverer } from './notify/deliver.ts';
import { mailChannel } from './notify/mail.ts';
import { mqttChannel } from './notify/mqtt-notices.ts';
import { webhookChannel } from './notify/webhook.ts';
import type { PostingPlan } from './rules/outgoing.ts';
import type { Settings } from './settings/schema.ts';
import type { StoreReader } from './store/store.ts';
import { siteVoice } from './wording/voice.ts';

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
/** How long a message that left, or was given up, is kept. */
export const keptMessagesMs = 30 * 24 * hourMs;

/** The time zone that the site’s days and clock times are of. */
export const siteTimeZone = (settings: Pick<Settings, 'timeZone'>): string =>
  settings.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;

/** Who is told of notices, from the settings. */
export function postingPlan(settings: Pick<Settings, 'notices' | 'timeZone'>): PostingPlan {
  const { mqtt, webhook, mail, quietHours } = settings.notices;
  return {
    channels: [
      ...(mqtt.on ? [{ name: 'mqtt' as const, heedsQuiet: mqtt.heedsQuietHours }] : []),
      ...(webhook.url === null
        ? []
        : [{ name: 'webhook' as const, heedsQuiet: webhook.heedsQuietHours }]),
      ...(mail.host === null ? [] : [{ name: 'mail' as const, heedsQuiet: mail.heedsQuietHours }]),
    ],
    quiet: quietHours,
    timeZone: siteTimeZone(settings),
  };
}

interface NoticesOutParts {
  settings: Settings;
  deliver(topic: string, payload: string): Promise<void>;
  reader: Pick<StoreReader, 'dueMessages'>;
  keeper: MessageKeeper;
  now: () => number;
  log: { warn(facts: object, text: string): void; error(facts: object, text: string): void };
}

/** Every way out that the settings name, and what sends along it. */
export function noticesOut(parts: NoticesOutParts): Deliverer {
  const { settings, reader, keeper, now, log } = parts;
  const { site } = settings;
  const { mqtt, webhook, mail, giveUpHours } = settings.notices;
  const channels: Channel[] = [];
  if (mqtt.on) channels.push(mqttChannel({ site, deliver: parts.deliver }));
  if (webhook.url !== null && webhook.secret !== null) {
    const { url, secret, timeoutSeconds } = webhook;
    channels.push(webhookChannel({ url, secret, timeoutMs: timeoutSeconds * 1000, site, now }));
  }
  if (mail.host !== null && mail.from !== null) {
    const { host, from, timeoutSeconds } = mail;
    channels.push(mailChannel({ ...mail, host, from, timeoutMs: timeoutSeconds * 1000, site }));
  }
  return deliverer({
    channels,
    due: reader.dueMessages,
    keeper,
    policy: { firstMs: minuteMs / 2, longestMs: hourMs, giveUpMs: giveUpHours * hourMs },
    voice: siteVoice(settings.language, siteTimeZone(settings)),
    now,
    log,
  });
}
