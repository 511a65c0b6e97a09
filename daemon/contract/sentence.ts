import { z } from 'zod';

const figure = z.union([z.number(), z.string(), z.boolean()]).nullable();
const plain = z.union([figure, z.array(figure)]);

const innermost = z.object({ code: z.string(), values: z.record(z.string(), plain) });

/** A sentence that stands within another one; at most one more stands within it. */
export const InnerSentence = z.object({
  code: z.string(),
  values: z.record(z.string(), z.union([plain, innermost, z.array(innermost)])),
});
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

/** A sentence with all there is of it, as a rule makes it. */
export interface Said extends Told {
  text: string;
}

/** A sentence without its text, as it is kept. */
export interface Told {
  code: string;
  values: SentenceValues;
}
