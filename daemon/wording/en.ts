import { verdict } from './en/verdict.ts';
import type { Wording } from './sentence.ts';

/** Every sentence in English. */
export const en: Wording = { ...verdict };
