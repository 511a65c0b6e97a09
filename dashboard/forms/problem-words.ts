import type { Problem } from '../../daemon/contract/problem.ts';
import type { Told } from '../reader.ts';
import type { Words } from '../words/words.ts';

type Part = 'title' | 'detail' | 'doThis';

/** What went wrong and what to do about it: the daemon’s own sentences, or those of the page. */
export function problemWords(
  problem: Problem,
  { problems }: Words['forms'],
): Readonly<Record<Part, Told | string>> {
  if (Object.hasOwn(problems, problem.code)) {
    return problems[problem.code as keyof typeof problems];
  }
  const { title, titleSaid, detail, detailSaid, doThis, doThisSaid } = problem;
  return {
    title: titleSaid ?? asWritten(title),
    detail: detailSaid ?? asWritten(detail),
    doThis: doThisSaid ?? asWritten(doThis),
  };
}

/** Of an answer without sentences nothing but its English text is known. */
function asWritten(text: string): Told {
  return { code: 'as-written', text };
}
