import { plural } from '../plural.ts';

/** The line on every page while something waits to be sent; short. */
export const unsent = {
  waits: (count: number) => `Waits to be sent (${plural('en', count, { one: '#', other: '#' })})`,
  refused: (count: number) =>
    plural('en', count, {
      one: '# entry was not taken: look at it',
      other: '# entries were not taken: look at them',
    }),
  needsPin: 'Waits for the PIN',
  keepsNothing: 'This browser keeps nothing: what you enter without a network would be lost.',
};
