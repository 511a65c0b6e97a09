import { toMoment } from './contract/moment.ts';
import type { NoticeChannels } from './contract/notice-channel.ts';
import { siteTimeZone } from './notices-out.ts';
import type { Settings } from './settings/schema.ts';
import type { ChannelTally } from './store/outgoing.ts';

/** How notices leave the house, for anyone to see: no secret, no path of an address, no addressee. */
export function noticeChannels(
  settings: Pick<Settings, 'notices' | 'timeZone'>,
  tallies: readonly ChannelTally[],
): NoticeChannels {
  const { quietHours, digestAt, ragRepeatHours, overheatC, giveUpHours } = settings.notices;
  const { mqtt, webhook, mail } = settings.notices;
  const told = (
    channel: ChannelTally['channel'],
    on: boolean,
    target: string | null,
    heedsQuietHours: boolean,
  ) => {
    const tally = tallies.find((one) => one.channel === channel);
    return {
      ...{ channel, on, target, heedsQuietHours },
      waiting: tally?.waiting ?? 0,
      givenUp: tally?.givenUp ?? 0,
      sentAt: toMoment(tally?.sentAt ?? null),
      lastError: tally?.lastError ?? null,
      lastErrorSaid: tally?.lastErrorSaid ?? null,
    };
  };
  return {
    timeZone: siteTimeZone(settings),
    quietHours: quietHours.from === quietHours.to ? null : quietHours,
    ...{ digestAt, ragRepeatHours, overheatC, giveUpHours },
    channels: [
      told('mqtt', mqtt.on, null, mqtt.heedsQuietHours),
      told('webhook', webhook.url !== null, hostOf(webhook.url), webhook.heedsQuietHours),
      told('mail', mail.host !== null, mail.host, mail.heedsQuietHours),
    ],
  };
}

const hostOf = (url: string | null) => (url === null ? null : new URL(url).host);
