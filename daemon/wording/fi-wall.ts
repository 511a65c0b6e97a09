import { fault } from './fi/fault.ts';
import { notice } from './fi/notice.ts';
import { site } from './fi/site.ts';
import { text } from './fi/text.ts';
import { verdict } from './fi/verdict.ts';
import { work } from './fi/work.ts';
import type { WallWording } from './wall-wording.ts';

/** What a wall says, in Finnish. */
export const wall: WallWording = { ...fault, ...notice, ...site, ...text, ...verdict, ...work };
