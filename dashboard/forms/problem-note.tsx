import type { Problem } from '../../daemon/contract/problem.ts';
import { useReader } from '../reader.ts';
import { problemWords } from './problem-words.ts';

/** What went wrong and what to do about it. */
export function ProblemNote({ problem }: { problem: Problem | null }) {
  const { words } = useReader();
  if (problem === null) return null;
  const { title, detail, doThis } = problemWords(problem, words.forms);
  return (
    <div class="problem" role="alert">
      <p class="problem-title">{title}</p>
      <p>{detail}</p>
      <p class="problem-do">{doThis}</p>
    </div>
  );
}
