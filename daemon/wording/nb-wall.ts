import { fault } from './nb/fault.ts';
import { notice } from './nb/notice.ts';
import { site } from './nb/site.ts';
import { text } from './nb/text.ts';
import { verdict } from './nb/verdict.ts';
import { work } from './nb/work.ts';
import type { WallWording } from './wall-wording.ts';

/** What a wall says, in Norwegian. */
export const wall: WallWording = { ...fault, ...notice, ...site, ...text, ...verdict, ...work };
