import type { Overview } from '../../../daemon/contract/overview.ts';

type Airflow = Overview['places'][number]['airflow'];

/** The air of a place in a word or a line. */
export const air = {
  flows: {
    good: 'good',
    poor: 'poor',
    'cannot-tell': 'can’t tell',
  } satisfies Record<Airflow, string>,
  /** Why the air is poor, short enough for the wall. */
  poor: {
    few: 'Stale air: open up, unless it is wetter outside.',
    stagnant: 'Still air between the boards: let air through.',
    damp: 'Damp for hours: change the air when it is drier outside.',
    other: 'Poor air here. Change it; no fan on wet film.',
  },
};
