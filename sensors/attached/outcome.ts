/** What came of looking at a channel: a number, or why there is none, in a person's words. */
export type Outcome =
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'no-value'; readonly because: string };

export const value = (number: number): Outcome => ({ kind: 'value', value: number });
export const noValue = (because: string): Outcome => ({ kind: 'no-value', because });
