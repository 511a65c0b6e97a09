import { plural } from '../plural.ts';

/** What an empty wall says: the door to the guided set-up. */
export const firstSteps = {
  title: 'The wall is bare',
  says: 'From here it takes about five minutes to the first verdict: a room, a rack, a sensor, the boards, the first coat. You can leave at any time and go on later.',
  waiting: (count: number) =>
    plural('en', count, {
      one: '# sensor sends already and waits to be placed.',
      other: '# sensors send already and wait to be placed.',
    }),
  begin: 'Begin',
  goOn: 'Go on with the set-up',
  allAtOnce: 'Set up',
};
