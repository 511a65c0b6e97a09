import { ahead } from './ahead.ts';
import { brush } from './brush.ts';
import { lockUp } from './lock-up.ts';
import { pot } from './pot.ts';
import { print } from './print.ts';

/** All that only other pages than the wall need: fetched with the first of them. */
export const rest = { ahead, brush, lockUp, pot, print };
