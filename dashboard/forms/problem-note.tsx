import type { Problem } from '../../daemon/contract/problem.ts';
import { type Told, useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { problemWords } from './problem-words.ts';

/** What went wrong and what to do about it. */
export function ProblemNote({ problem }: { problem: Problem | null }) {
  const { words } = useReader();
  if (problem === null) return null;
  const { title, detail, doThis } = problemWords(problem, words.forms);
  return (
    <div class="problem" role="alert">
      <p class="problem-title">
        <Line line={title} />
      </p>
      <p>
        <Line line={detail} />
      </p>
      <p class="problem-do">
        <Line line={doThis} />
      </p>
    </div>
  );
}

function Line({ line }: { line: Told | string }) {
  return typeof line === 'string' ? line : <Said sentence={line} />;
}
