import type { Spread } from '../../ahead/spread.ts';
import type { Node } from '../node.ts';
import { phrase } from '../phrase.ts';
import { plural } from '../plural.ts';
import { spreadIn } from '../spread.ts';

const on = spreadIn({
  notWithinAYear: 'not within a year',
  perhaps: (early) => phrase`perhaps ${early}, as likely as not later than a year`,
  oneDay: (day) => phrase`on ${day}`,
  about: (likely, early, late) => phrase`about ${likely} (early ${early}, late ${late})`,
});

/** What is to be done when, how sure that is, and by when a coat must be begun before winter. */
export const ahead = {
  title: 'What comes',
  anotherPlace: 'another place',
  nothingWaits:
    'Nothing is waiting: no batch has a coat to come. Start a batch, or ask below about boards that are still to be delivered.',
  allDone: (boards: number, spread: Spread) =>
    phrase`${plural('en', boards, { one: 'The one board is', other: 'All # boards are' })} done ${on(spread)}.`,
  batchDone: (spread: Spread) => phrase`Done ${on(spread)}`,
  /** A batch is larger than the racks and is coated in parts. `boards`: “24 boards”. */
  boardsInPart: (boards: string, part: string, of: string) => `${boards}, part ${part} of ${of}`,
  askedAbout: 'The boards you asked about',
  putUp: 'Put up',
  stepAt: (job: string, place: string) => `${job}, ${place}`,
  order: {
    none: (ways: number) =>
      `The batches stand in the order in which they are served. ${compared(ways)}; none could be done earlier by half a day.`,
    gap: (ways: number, days: number) =>
      `The batches stand in the order in which they are served. ${compared(ways)}; no order can be done more than ${plural('en', days, { one: '# day', other: '# days' })} earlier than this one.`,
  },
  ask: {
    title: 'And how many more?',
    label: 'Further boards, like those of the newest batch',
    unit: 'boards',
    hint: 'Nothing is recorded by asking.',
    fault: (least: string, most: string) =>
      `A whole number of boards from ${least} to ${most}, or nothing.`,
    button: 'When would they be done?',
  },
  winter: {
    title: 'Before winter',
    noCoat: 'No coat is to come.',
    by: (date: string) => `Begin by ${date}: then even a slow coat has cured before the cold.`,
    notThisYear:
      'Not this year: even begun now, a slow coat would not cure before the cold. Wait for spring.',
    noLimit: 'No last day: it stays warm enough there all year.',
    cannotTell:
      'Cannot tell: the site has no record of that season there, and no monthly means were typed.',
    coatAt: (coat: string, place: string) => `${coat} at ${place}`,
    /** `coat` as by `coatAt`; `batches` is a list of names. */
    coatOf: (coat: string, batches: string) => `${coat}: ${batches}`,
    /** In such a list. */
    askedAbout: 'the boards you asked about',
  },
  table: {
    title: 'Job by job',
    job: 'Job',
    where: 'Where',
    likely: 'Likely',
    early: 'Early',
    late: 'Late',
  },
  follow: {
    title: 'On your phone’s calendar',
    how: (link: Node, address: Node) => [
      'Follow ',
      link,
      ' by its address, and it stays up to date while the phone is on this network: ',
      address,
    ],
    link: 'this calendar',
  },
  seasons: 'What became of the coats so far: the seasons',
  restsOn: 'What this rests on',
};

function compared(ways: number): string {
  return plural('en', ways, { one: '# way was compared', other: '# ways were compared' });
}
