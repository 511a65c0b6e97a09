import { fault } from './en/fault.ts';
import { notice } from './en/notice.ts';
import { site } from './en/site.ts';
import { text } from './en/text.ts';
import { verdict } from './en/verdict.ts';
import { work } from './en/work.ts';
import type { WallWording } from './wall-wording.ts';

/** What a wall says, in English. */
export const wall: WallWording = { ...fault, ...notice, ...site, ...text, ...verdict, ...work };
