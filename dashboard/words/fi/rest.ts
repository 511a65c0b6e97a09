import type { RestWords } from '../words.ts';
import { access } from './access.ts';
import { actions } from './actions.ts';
import { ahead } from './ahead.ts';
import { apiPage } from './api-page.ts';
import { batch } from './batch.ts';
import { brush } from './brush.ts';
import { cautionsPage } from './cautions-page.ts';
import { chart } from './chart.ts';
import { copying } from './copying.ts';
import { firstRun } from './first-run.ts';
import { forms } from './forms.ts';
import { lockUp } from './lock-up.ts';
import { more } from './more.ts';
import { notices } from './notices.ts';
import { offline } from './offline.ts';
import { pot } from './pot.ts';
import { print } from './print.ts';
import { records } from './records.ts';
import { report, season } from './report.ts';
import { screen } from './screen.ts';
import { settings } from './settings.ts';
import { setup } from './setup.ts';
import { things } from './things.ts';
import { topics } from './topics.ts';
import { trade } from './trade.ts';
import { trust } from './trust.ts';

/** All that only other pages than the wall need, in Finnish. */
export const rest: RestWords = {
  access,
  actions,
  ahead,
  apiPage,
  batch,
  brush,
  cautionsPage,
  chart,
  copying,
  firstRun,
  forms,
  lockUp,
  more,
  notices,
  offline,
  pot,
  print,
  records,
  report,
  screen,
  season,
  settings,
  setup,
  things,
  topics,
  trade,
  trust,
};
