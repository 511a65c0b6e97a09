import type { Nothing } from '../phrase.ts';

/** What a plan ahead rests on, and what it leaves out. */
export interface AheadSentences {
  'rate-outlook': Nothing;
  'rate-own-record': Nothing;
  'rate-typed-months': Nothing;
  'rate-last-days': Nothing;
  'place-unknown': { placeName: string };
  'capacity-unknown': Nothing;
  'in-parts': Nothing;
  'no-wall': Nothing;
  /** What hands do in an hour. */
  pace: { brushedM2: number; mountedBoards: number };
  paint: Nothing;
}
