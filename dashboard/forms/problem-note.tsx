import type { Problem } from '../../daemon/contract/problem.ts';

/** What went wrong and what to do about it. */
export function ProblemNote({ problem }: { problem: Problem | null }) {
  if (problem === null) return null;
  return (
    <div class="problem" role="alert">
      <p class="problem-title">{problem.title}</p>
      <p>{problem.detail}</p>
      <p class="problem-do">{problem.doThis}</p>
    </div>
  );
}
