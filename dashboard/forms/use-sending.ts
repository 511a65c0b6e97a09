import { useRef, useState } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { Outcome } from '../api.ts';
import { newId } from '../new-id.ts';

export interface Sending {
  readonly busy: boolean;
  readonly problem: Problem | null;
  /**
   * Sends what a form holds. The id stays the same until it was taken, so that pressing again
   * after a lost answer records nothing twice.
   *
   * @returns the reply, or null when there was a problem, which is then shown
   */
  send<T>(call: (id: string) => Promise<Outcome<T>>): Promise<T | null>;
}

/** Holds whether a form is being sent and what the daemon found wrong with it. */
export function useSending(): Sending {
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  const id = useRef<string | null>(null);
  return {
    busy,
    problem,
    async send(call) {
      id.current ??= newId();
      setBusy(true);
      const outcome = await call(id.current);
      setBusy(false);
      if (outcome.kind === 'problem') {
        setProblem(outcome.problem);
        return null;
      }
      setProblem(null);
      id.current = null;
      return outcome.reply;
    },
  };
}
