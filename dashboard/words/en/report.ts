import type { UnitSystem } from '../../format/units.ts';
import type { Node } from '../node.ts';
import { inARow, phrase } from '../phrase.ts';

/** All of one batch on paper. Figures and moments come as the reader writes them. */
export const report = {
  none: 'No report',
  anotherPlace: 'another place',
  madeAt: (site: string, moment: string) => `${site}, report made ${moment}`,
  /**
   * “24 boards, 4,200 × 145 × 22 mm, Norway spruce, sawn; Three coats.” `boards` is “24 boards”;
   * `surface` is written as within a sentence.
   */
  what: (boards: string, size: string, species: string, surface: string, plan: string) =>
    `${boards}, ${size}, ${species}, ${surface}; ${plan}.`,
  print: 'Print',
  asTable: 'As a table (CSV)',
  asJson: 'As JSON',
  back: 'Back to the batch',
  /** Of one coat; colour and tin are as they were typed, null where nobody said. */
  finished: (
    moment: Node,
    mixture: string,
    faces: string,
    colour: string | null,
    tin: string | null,
  ) => {
    const typed = `${colour === null ? '' : `; ${colour}`}${tin === null ? '' : `, tin ${tin}`}`;
    return phrase`Finished ${moment}; ${mixture}; ${faces}${typed}.`;
  },
  noCoat: 'No coat was recorded.',
  recorded: 'What was recorded',
  photos: 'Photos',
  photoOf: (moment: string) => `Photo of ${moment}`,
  /** Below a photo: when, and what it shows. */
  photo: (moment: Node, shows: string) => phrase`${moment}: ${shows}`,
  /** “19.1 m², 2.1 L: 9.1 m²/L; 612 °C·h gathered.” What was used, and how far a litre went, if known. */
  gathered: (area: string, used: string | null, spreading: string | null, sum: string) => {
    const paint = `${used === null ? '' : `, ${used}`}${spreading === null ? '' : `: ${spreading}`}`;
    return `${area}${paint}; ${sum} gathered.`;
  },
  air: {
    heading: 'Air',
    temperature: 'Temperature, lowest / mean / highest',
    humidity: 'Humidity',
    /** Hours with such air. */
    hours: 'Cold, damp, near dew',
    atTheBrush: 'At the brush',
    firstDay: 'First day',
    whileCuring: 'While curing',
    notRead: 'not read',
    /** Counts of hours, in the order of the heading, and of all that were read. */
    counted: (cold: string, damp: string, nearDew: string, all: string) =>
      `${cold}\u00a0h, ${damp}\u00a0h, ${nearDew}\u00a0h of ${all}\u00a0h`,
    limits: (cold: string, damp: string, nearDew: string) =>
      `Cold is below ${cold}, damp above ${damp}, near dew less than ${nearDew} above the dew point.`,
  },
  /** “turn Thu 14 May, 14:32” */
  jobAt: (job: string, moment: Node) => phrase`${job} ${moment}`,
  /** When each job became as likely as not to be possible, by `jobAt`. */
  possible: (jobs: readonly Node[]) =>
    phrase`As likely as not possible by the model: ${jobs.length === 0 ? 'nothing yet' : inARow(jobs, '; ')}.`,
};

/** What became of all coats so far. */
export const season = {
  title: 'The seasons',
  lead: 'What became of the coats so far: how long they took, by month and place, and how well that was foreseen.',
  noCoat: 'No coat was recorded yet.',
  days: {
    title: 'Days from the last board',
    monthAndPlace: 'Month, place',
    inMonth: (month: string, place: string) => `${month}, ${place}`,
    coats: 'Coats',
    used: { metric: 'Litres', us: 'Gallons' } satisfies Record<UnitSystem, string>,
    boardsEach: {
      metric: 'Boards per litre',
      us: 'Boards per gallon',
    } satisfies Record<UnitSystem, string>,
    areaEach: {
      metric: 'm² per litre',
      us: 'ft² per gallon',
    } satisfies Record<UnitSystem, string>,
    /** On a phone each figure stands behind its heading. */
    label: (heading: string) => `${heading}:`,
    /** “2.3 (1.9–3.0)” days. */
    range: (median: string, shortest: string, longest: string) =>
      `${median} (${shortest}–${longest})`,
    foot: 'The median, with the shortest and the longest: when the job became as likely as not to be possible, by the model as it has learned by now. A dash: no coat got that far before the next one went on.',
  },
  model: {
    title: 'The model against your thumb',
    noTest: 'No touch test yet: there is nothing to set it against.',
    gave: 'The model gave',
    average: 'on average',
    tests: 'Tests',
    passed: 'of them passed',
    fromTo: (from: string, to: string) => `${from} to ${to}`,
    /** `error`: 0 is perfect, `coin` is a coin toss. */
    foot: (error: string, coin: string) =>
      `A good model passes as often as it said. Each test is set against what was believed without it. Mean squared error ${error}; a coin toss has ${coin}.`,
  },
};
