import type { VerdictWord } from '../../daemon/contract/gate.ts';

/** What can stand on a board: a verdict, or why there is none. */
export type Sign = VerdictWord | 'bare' | 'done' | 'empty' | 'no-data';

/** How a sign is said. */
export interface SignWords {
  /** Capitals for the plank letters. */
  readonly laid: string;
  /** The same as it is spoken and written. */
  readonly spoken: string;
  readonly meaning: string;
}
