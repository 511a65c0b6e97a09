import { ProblemNote } from '../forms/problem-note.tsx';
import type { Replied } from '../use-reply.ts';

interface AwaitedSheetProps {
  replied: Exclude<Replied<unknown>, { kind: 'there' }>;
  notDrawn: string;
}

/** Stands for a sheet whose figures are not there: nothing yet, or why they cannot be had. */
export function AwaitedSheet({ replied, notDrawn }: AwaitedSheetProps) {
  if (replied.kind === 'loading') return <main class="page" aria-busy="true" />;
  return (
    <main class="page">
      <h1>{notDrawn}</h1>
      <ProblemNote problem={replied.problem} />
    </main>
  );
}
