import type { Phrases } from '../phrase.ts';
import type { TextSentences } from '../subject/text.ts';

export const text: Phrases<TextSentences> = { 'as-written': (told) => told.text };
