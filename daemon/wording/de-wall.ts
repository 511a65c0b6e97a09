import { fault } from './de/fault.ts';
import { notice } from './de/notice.ts';
import { site } from './de/site.ts';
import { text } from './de/text.ts';
import { verdict } from './de/verdict.ts';
import { work } from './de/work.ts';
import type { WallWording } from './wall-wording.ts';

/** What a wall says, in German. */
export const wall: WallWording = { ...fault, ...notice, ...site, ...text, ...verdict, ...work };
