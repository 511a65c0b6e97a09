import type { Node } from '../node.ts';

/** Head, foot, banner and what else is around every page. */
export const frame = {
  pages: 'Pages',
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
