import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Problem } from '../daemon/contract/problem.ts';
import type { Outcome } from './api.ts';

export type Replied<T> =
  | { readonly kind: 'loading' }
  /** `oldSince`: what was last heard, while the daemon is away; this device’s clock, ms. */
  | { readonly kind: 'there'; readonly reply: T; readonly oldSince: number | null }
  | { readonly kind: 'failed'; readonly problem: Problem };

/** How long after a failure it is asked again. */
const AGAIN_MS = 3000;

/**
 * Asks once, and again whenever `again` is called or `ask` changes; keeps the last good answer.
 *
 * @param ask - must stay the same function between renders
 */
export function useReply<T>(ask: () => Promise<Outcome<T>>): {
  replied: Replied<T>;
  again: () => void;
} {
  const [replied, setReplied] = useState<Replied<T>>({ kind: 'loading' });
  const asked = useRef(0);
  const taken = useRef(0);
  const read = useCallback(async () => {
    const turn = ++asked.current;
    const outcome = await ask();
    // Asked twice, the earlier answer can come last: it is of before.
    if (turn < taken.current) return;
    if (outcome.kind === 'done') taken.current = turn;
    setReplied((before) => {
      if (outcome.kind === 'done') {
        const { reply, oldSince = null } = outcome;
        // What this page has heard itself is newer than what was kept.
        if (oldSince !== null && before.kind === 'there') return before;
        return { kind: 'there', reply, oldSince };
      }
      return before.kind === 'there' ? before : { kind: 'failed', problem: outcome.problem };
    });
  }, [ask]);
  useEffect(() => void read(), [read]);
  // A daemon that was away answers some time: nobody has to load the page again for it.
  useEffect(() => {
    if (replied.kind === 'loading') return;
    if (replied.kind === 'there' && replied.oldSince === null) return;
    const timer = setTimeout(() => void read(), AGAIN_MS);
    return () => clearTimeout(timer);
  }, [replied, read]);
  return { replied, again: () => void read() };
}
