/** What is said as it was written: of it nothing but the English text is known. */
export interface TextSentences {
  'as-written': { text: string };
}
