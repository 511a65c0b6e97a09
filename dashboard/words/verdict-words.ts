import { signs as words } from './en/signs.ts';
import type { SignWords as Said, Sign as Shown } from './sign.ts';

export type Sign = Shown;
export type SignWords = Said;
export const signs: Readonly<Record<Sign, SignWords>> = words;
