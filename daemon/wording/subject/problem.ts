import type { ProblemCode } from '../../contract/problem.ts';
import type { Nothing } from '../phrase.ts';

type Titles = { [Code in ProblemCode as `problem-title/${Code}`]: Nothing };
type ToDos = { [Code in ProblemCode as `problem-to-do/${Code}`]: Nothing };

/** What is called wrong with a request, and what to do about it. */
export interface ProblemSentences extends Titles, ToDos {}
