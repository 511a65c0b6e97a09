import { fault } from './sv/fault.ts';
import { notice } from './sv/notice.ts';
import { site } from './sv/site.ts';
import { text } from './sv/text.ts';
import { verdict } from './sv/verdict.ts';
import { work } from './sv/work.ts';
import type { WallWording } from './wall-wording.ts';

/** What a wall says, in Swedish. */
export const wall: WallWording = { ...fault, ...notice, ...site, ...text, ...verdict, ...work };
