import type { Gate } from '../../../daemon/contract/gate.ts';

export interface JobWords {
  /** On a kerf and on a button: “turn”. */
  readonly noun: string;
  /** After “Ready”: “to turn”. */
  readonly infinitive: string;
  /** The question of the job. */
  readonly question: string;
  /** Where to touch and what it should feel like. Common practice, no source. */
  readonly test: string;
  readonly passed: string;
  readonly failed: string;
}

/** Stacking and mounting ask the same of a coat. */
const palm = {
  test: 'Press the palm down firmly and count to five. It must lift off clean.',
  passed: 'It lifts clean',
  failed: 'It sticks',
};

/** The jobs of a rack in a painter’s words. */
export const jobs = {
  turn: {
    noun: 'turn',
    infinitive: 'to turn',
    question: 'May the boards be turned over?',
    test: 'Lay the back of a finger on the paint. Nothing may come off on it, and it may leave no print.',
    passed: 'Nothing on my finger',
    failed: 'It prints',
  },
  stack: {
    noun: 'stack',
    infinitive: 'to stack',
    question: 'May they be stacked close?',
    ...palm,
  },
  mount: {
    noun: 'mount',
    infinitive: 'to mount',
    question: 'May they be put up?',
    ...palm,
  },
  sand: {
    noun: 'sand',
    infinitive: 'to sand',
    question: 'May they be sanded?',
    test: 'Sand a spot that will not show. The paper must dust; it may not roll the paint or clog.',
    passed: 'It dusts',
    failed: 'It rolls or clogs',
  },
  recoat: {
    noun: 'recoat',
    infinitive: 'to coat again',
    question: 'May the next coat go on?',
    test: 'Press with a thumbnail: it must leave no mark. Rub with a clean cloth: it must take no colour.',
    passed: 'No mark, no colour',
    failed: 'It marks or colours',
  },
} satisfies Record<Gate, JobWords>;
