import type { Problem } from '../../daemon/contract/problem.ts';
import { type Told, useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { problemWords } from './problem-words.ts';

interface ProblemNoteProps {
  problem: Problem | null;
  /** Whether what is wrong stands with fields already, without the names that programs know them by. */
  areFieldsMarked?: boolean;
}

/** What went wrong and what to do about it. */
export function ProblemNote({ problem, areFieldsMarked = false }: ProblemNoteProps) {
  const { words } = useReader();
  if (problem === null) return null;
  if (areFieldsMarked && problem.code === 'BC_REQUEST_INVALID') {
    const { title, look } = words.forms.besideFields;
    return (
      <div class="problem" role="alert">
        <p class="problem-title">{title}</p>
        <p>{look}</p>
      </div>
    );
  }
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
