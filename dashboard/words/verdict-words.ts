import type { VerdictWord } from '../../daemon/contract/gate.ts';

/** What can stand on a board: a verdict, or why there is none. */
export type Sign = VerdictWord | 'bare' | 'done' | 'empty' | 'no-data';

export interface SignWords {
  /** Capitals for the plank letters. */
  readonly laid: string;
  /** The same as it is spoken and written. */
  readonly spoken: string;
  readonly meaning: string;
}

/** The words on the wall. */
export const signs: Readonly<Record<Sign, SignWords>> = {
  wait: { laid: 'WAIT', spoken: 'Wait', meaning: 'Not yet.' },
  test: {
    laid: 'FEEL IT',
    spoken: 'Feel it',
    meaning: 'Likely enough that feeling it is worth the walk.',
  },
  ready: {
    laid: 'READY',
    spoken: 'Ready',
    meaning: 'Nine in ten that it has cured enough. Feel it before you go on.',
  },
  hold: { laid: 'HELD', spoken: 'Held', meaning: 'Cured enough, but something else forbids it.' },
  bare: { laid: 'BARE', spoken: 'Bare', meaning: 'No coat recorded yet.' },
  done: { laid: 'DONE', spoken: 'Done', meaning: 'All coats are on and nothing is waited for.' },
  empty: { laid: 'EMPTY', spoken: 'Empty', meaning: 'No batch lies here.' },
  'no-data': { laid: 'NO DATA', spoken: 'No data', meaning: 'Nothing tells how the air is here.' },
};
