import type { Surface } from '../../contract/plan.ts';
import type { Nothing } from '../phrase.ts';

/** Names that come with the program, as long as nobody writes another. */
export interface NameSentences {
  'coat-name/primer': Nothing;
  'coat-name/second': Nothing;
  'coat-name/last': Nothing;
  'coat-name/number': { number: number };
  'plan-name/usual': { surface: Surface };
  'plan-name/without-turpentine': { surface: Surface };
  'plan-name/resinous': { surface: Surface };
}
