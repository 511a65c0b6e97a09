import type { Page } from '../../router.ts';
import type { Node } from '../node.ts';

/** Head, foot, banner and what else is around every page. */
export const frame = {
  pages: 'Pages',
  /** Comes up when one moves by keys: past the head, to the heading of the page. */
  skip: 'To the page',
  /** Where the head leads; short, for all stand in one line. */
  links: {
    wall: 'Wall',
    round: 'Round',
    ahead: 'What comes',
    brush: 'Brush',
    pot: 'Pot',
    'lock-up': 'Lock up',
    notices: 'Notices',
    setup: 'Set up',
    access: 'Access',
    more: 'More',
  },
  /** Each page in the browser’s title and history, before the names of boards and site. */
  titles: {
    batch: 'Boards',
    report: 'Report',
    coating: 'A coat in steps',
    round: 'Morning round',
    season: 'Seasons',
    ahead: 'What comes',
    brush: 'Fit to brush?',
    pot: 'The pot',
    'lock-up': 'Lock up',
    notices: 'Notices',
    print: 'Print',
    setup: 'Set up',
    topics: 'Topics',
    access: 'Access',
    more: 'More',
    api: 'API',
    cautions: 'Cautions',
    waiting: 'Not sent yet',
    unknown: 'No such page',
  } satisfies Record<Exclude<Page['kind'], 'wall'>, string>,
  simulated: (times: string) => `simulated, ${times} × faster`,
  toTheWall: 'To the wall',
  noSuchPage: 'No such page',
  nothingAt: (address: Node, toTheWall: Node) => ['There is nothing at ', address, '. ', toTheWall],
  notFetched: 'This page could not be fetched. Load it again once the daemon answers.',
  away: {
    title: 'No word from the shed',
    silentFor: (length: string) => `Silent for ${length}.`,
    nothingYet: 'Nothing was heard yet. Trying on.',
    old: 'What stands here is old. Trying on; it comes back by itself.',
    noReadings: 'No readings come in',
    brokerLost: 'The daemon has lost its broker. It tries again by itself.',
    diskFull: 'The disk is full',
    lookAfter: 'Look after the computer',
  },
  language: 'Language',
  units: 'Units',
  unitSystems: { metric: 'Metric: °C, mm, litres', us: 'US: °F, inches, gallons' },
  asThisDevice: 'As this device',
};
