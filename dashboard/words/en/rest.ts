import { access } from './access.ts';
import { ahead } from './ahead.ts';
import { apiPage } from './api-page.ts';
import { brush } from './brush.ts';
import { cautionsPage } from './cautions-page.ts';
import { lockUp } from './lock-up.ts';
import { notices } from './notices.ts';
import { pot } from './pot.ts';
import { print } from './print.ts';
import { topics } from './topics.ts';
import { trust } from './trust.ts';

/** All that only other pages than the wall need: fetched with the first of them. */
export const rest = {
  access,
  ahead,
  apiPage,
  brush,
  cautionsPage,
  lockUp,
  notices,
  pot,
  print,
  topics,
  trust,
};
