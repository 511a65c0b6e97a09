import { z } from 'zod';

const figure = z.union([z.number(), z.string(), z.boolean()]).nullable();
const plain = z.union([figure, z.array(figure)]);

/** A sentence that stands within another one; it holds none itself. */
export const InnerSentence = z.object({ code: z.string(), values: z.record(z.string(), plain) });
export type InnerSentence = z.infer<typeof InnerSentence>;

/** What a sentence tells besides its words: figures with their unit in the name, names, moments. */
export const SentenceValues = z
  .record(z.string(), z.union([plain, InnerSentence, z.array(InnerSentence)]))
  .describe('figures and names in the sentence, to phrase it in another language or other units');
export type SentenceValues = z.infer<typeof SentenceValues>;

/**
 * A sentence: a stable code, what it tells, and the same as English text. Where one code has several
 * sentences, `values.variant` tells which.
 */
export const Sentence = z.object({
  code: z.string(),
  text: z.string(),
  values: SentenceValues.optional(),
});
export type Sentence = z.infer<typeof Sentence>;
