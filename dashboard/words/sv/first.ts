import type { FirstWords } from '../words.ts';
import { air } from './air.ts';
import { cautions } from './cautions.ts';
import { firstSteps } from './first-steps.ts';
import { frame } from './frame.ts';
import { jobs } from './jobs.ts';
import { pin } from './pin.ts';
import { signs } from './signs.ts';
import { stages } from './stages.ts';
import { times } from './times.ts';
import { unsent } from './unsent.ts';
import { wall } from './wall.ts';

/** What the first screen needs, in Swedish. */
export const first: FirstWords = {
  air,
  cautions,
  firstSteps,
  frame,
  jobs,
  pin,
  signs,
  stages,
  times,
  unsent,
  wall,
};
