import type { Sign, SignWords } from '../sign.ts';

/** The words on the wall. */
export const signs = {
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
} satisfies Record<Sign, SignWords>;
