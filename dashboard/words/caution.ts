/** One caution: what it is about, and what to do. */
export interface Caution {
  readonly title: string;
  readonly lines: readonly string[];
}
