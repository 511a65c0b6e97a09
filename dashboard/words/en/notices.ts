import type { NoticeChannels } from '../../../daemon/contract/notice-channel.ts';
import type { Node } from '../node.ts';

/** The list of what wants attention and what did, and how it is told. */
export const notices = {
  title: 'Notices',
  open: 'Open',
  none: 'Nothing wants attention.',
  /** Heading of notices that are past. */
  over: 'Over',
  seen: 'Seen',
  tickRags: (lockUpList: Node) => [lockUpList, ': until then it comes again.'],
  /** The link in the sentence before. */
  tickRagsLink: 'Tick it on the lock-up list',
  /** What became of a notice; each comes after the other, and `at` is a date and a time. */
  times: {
    raised: (at: string) => `raised ${at}`,
    toldAgain: (times: string, last: string) => `told again ${times} ×, last ${last}`,
    seen: (at: string) => `seen ${at}`,
    over: (at: string) => `over ${at}`,
  },

  channels: {
    title: 'How they are told',
    by: 'By',
    to: 'To',
    quietHours: 'Quiet hours',
    onTheirWay: 'On their way',
    lastArrived: 'Last arrived',
    /** The heading of a column beside its figure, where a narrow screen folds the table up. */
    folded: (heading: string) => `${heading}:`,
    names: { mqtt: 'MQTT', webhook: 'Webhook', mail: 'E-mail' } satisfies Record<
      NoticeChannels['channels'][number]['channel'],
      string
    >,
    ownBroker: 'the broker',
    notSetUp: 'not set up',
    /** What happens to a notice in the quiet hours. */
    held: 'held',
    told: 'told',
    waitingGivenUp: (waiting: string, givenUp: string) => `${waiting}, ${givenUp} given up`,
    /** Whole sentences that stand one after the other; clock times as they stand in the settings. */
    noQuietHours: 'No quiet hours.',
    quietFrom: (from: string, to: string, timeZone: string) =>
      `Quiet from ${from} to ${to} (${timeZone}); rags, vapour and overheating are told at any hour.`,
    noDigest: 'No morning digest.',
    digestAt: (clock: string) => `The morning is summed up at ${clock}.`,
    /** `every` is a length of time, such as “2 hours”. */
    ragsRepeated: (every: string) => `The rag line is told again every ${every} on the first day.`,
    settings: (section: Node) => ['All of it stands in the settings file, section ', section, '.'],
  },
};
