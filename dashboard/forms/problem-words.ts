import type { Problem } from '../../daemon/contract/problem.ts';
import type { Words } from '../words/catalogue.ts';

/** What went wrong and what to do about it: the daemon’s own sentences, or those of the page. */
export function problemWords(
  problem: Problem,
  { problems }: Words['forms'],
): Pick<Problem, 'title' | 'detail' | 'doThis'> {
  return Object.hasOwn(problems, problem.code)
    ? problems[problem.code as keyof typeof problems]
    : problem;
}
