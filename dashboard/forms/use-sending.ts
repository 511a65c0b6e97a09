import { useRef, useState } from 'preact/hooks';
import type { Problem } from '../../daemon/contract/problem.ts';
import type { RouteReply } from '../../daemon/contract/routes.ts';
import type { Given, Outcome } from '../api.ts';
import { newId } from '../new-id.ts';
import type { NewEntry, Recordable } from '../offline/entry.ts';
import { useShed } from '../shed-context.ts';

/** What became of something that was recorded here. */
export type Recorded<T> = { readonly kind: 'sent'; readonly reply: T } | { readonly kind: 'waits' };

export interface Sending {
  readonly busy: boolean;
  readonly problem: Problem | null;
  /**
   * Sends what a form holds. The id stays the same until it was taken, so that pressing again
   * after a lost answer records nothing twice.
   *
   * @returns the reply; null when there was a problem, which is then shown, or when it is on its way already
   */
  send<T>(call: (id: string) => Promise<Outcome<T>>): Promise<T | null>;
  /**
   * Records what a form holds, also without a network: it is kept on this device and sent later.
   *
   * @param given - makes what the route wants out of an id
   * @returns null when there was a problem, which is then shown, or when it is on its way already
   */
  record<N extends Recordable>(
    name: N,
    about: Pick<NewEntry, 'batchIds' | 'batchName'>,
    given: (id: string) => Given<N>,
  ): Promise<Recorded<RouteReply<N>> | null>;
}

/** Holds whether a form is being sent and what the daemon found wrong with it. */
export function useSending(): Sending {
  const { outbox } = useShed();
  const [busy, setBusy] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  const id = useRef<string | null>(null);
  // A second press while it is on its way sends nothing.
  const isOut = useRef(false);

  function done(found: Problem | null): void {
    isOut.current = false;
    setBusy(false);
    setProblem(found);
    if (found === null || found.code === 'BC_ID_TAKEN') id.current = null;
  }

  return {
    busy,
    problem,
    async send(call) {
      if (isOut.current) return null;
      isOut.current = true;
      id.current ??= newId();
      setBusy(true);
      const outcome = await call(id.current);
      if (outcome.kind === 'problem') {
        done(outcome.problem);
        return null;
      }
      done(null);
      return outcome.reply;
    },
    async record<N extends Recordable>(
      name: N,
      about: Pick<NewEntry, 'batchIds' | 'batchName'>,
      given: (id: string) => Given<N>,
    ) {
      if (isOut.current) return null;
      isOut.current = true;
      id.current ??= newId();
      setBusy(true);
      const entry = { ...about, id: id.current, name, given: given(id.current) };
      const ticket = await outbox.record(entry as unknown as NewEntry);
      const became = await ticket.became;
      switch (became.kind) {
        case 'sent':
          done(null);
          return { kind: 'sent', reply: became.reply as RouteReply<N> };
        case 'refused':
          // It stands in the form that is still open, so it need not wait elsewhere.
          await outbox.takeBack(ticket.id);
          done(became.problem);
          return null;
        case 'not-kept':
          done(became.problem);
          return null;
        default:
          done(null);
          return { kind: 'waits' };
      }
    },
  };
}
