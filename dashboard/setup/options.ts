/** A table of words as the options of a choice, in the order it is written in. */
export const optionsOf = <T extends string>(
  words: Readonly<Record<T, string>>,
): { value: T; words: string }[] =>
  (Object.entries(words) as [T, string][]).map(([value, text]) => ({ value, words: text }));
